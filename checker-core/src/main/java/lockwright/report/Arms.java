package lockwright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;

/**
 * How arms stand in a state: as their levers, but for those whose control holds them on; 2.2, 2.7
 * and 2.9 of {@code docs/meaning.md}. Of the quantities of a run it needs the levers and the
 * conditions; a lever that is not told is normal, a condition that is not told is met.
 */
public final class Arms {
  private static final String ARM = "arm ";
  private static final String AT_DANGER = " at danger";
  private static final String OFF = " off";

  private final Map<String, List<Given>> levers = new LinkedHashMap<>();
  private final Set<String> slotted = new HashSet<>();
  private final Map<String, List<Contact>> controls = new LinkedHashMap<>();

  private record Given(String lever, List<String> ways) {
    boolean over(List<String> tracks) {
      return ways.isEmpty() || !Collections.disjoint(ways, tracks);
    }
  }

  /** Of a box. */
  public static Arms of(Box box) {
    Arms arms = new Arms();
    for (ArmControl control : box.controls().armControls()) {
      arms.control(control.signal(), control.needs().stream().map(Contact::words).toList());
    }
    for (Lever lever : box.frame().levers()) {
      if (lever.work() instanceof Work.OfSignal work) {
        arms.lever(work.signal(), lever.id(), work.ways(), work.slotted());
      }
    }
    return arms;
  }

  /**
   * Tells of a lever that works an arm.
   *
   * @param ways the tracks that it is for, of several levers; empty: it is for all routes
   * @param with whether the arm is off only while its other levers are over too
   */
  public void lever(String signal, String lever, List<String> ways, boolean with) {
    levers.computeIfAbsent(signal, s -> new ArrayList<>()).add(new Given(lever, ways));
    if (with) {
      slotted.add(signal);
    }
  }

  /** Tells what the control of an arm needs, in the words of a spec: "arm 3 at danger". */
  public void control(String signal, List<String> needs) {
    controls.put(signal, needs.stream().map(Arms::contact).toList());
  }

  private static Contact contact(String words) {
    boolean arm = words.startsWith(ARM);
    if (arm && words.endsWith(AT_DANGER)) {
      return new Contact.ArmAtDanger(
          words.substring(ARM.length(), words.length() - AT_DANGER.length()));
    } else if (arm && words.endsWith(OFF)) {
      return new Contact.ArmOff(words.substring(ARM.length(), words.length() - OFF.length()));
    }
    return new Contact.Outside(words);
  }

  /** Whether an arm goes as its one lever does. */
  public boolean followsOneLever(String signal) {
    return levers.getOrDefault(signal, List.of()).size() < 2 && !controls.containsKey(signal);
  }

  /**
   * N for an arm that is on, M for one that is taken as off, R for one that is off.
   *
   * @param state the value of each quantity, by its key; null, if it is not told
   */
  public String place(String signal, UnaryOperator<String> state) {
    return held(signal, lever(signal, g -> true, state), state);
  }

  /** The same by those of its levers that are for a route over these tracks. */
  public String placeFor(String signal, List<String> tracks, UnaryOperator<String> state) {
    return held(signal, lever(signal, g -> g.over(tracks), state), state);
  }

  private String held(String signal, String stands, UnaryOperator<String> state) {
    return stands.equals("N") || lacking(signal, state).isEmpty() ? stands : "N";
  }

  /** The position of its lever; of slotted ones the least that is over, of several the most. */
  private String lever(String signal, Predicate<Given> which, UnaryOperator<String> state) {
    List<String> stand =
        levers.getOrDefault(signal, List.of()).stream()
            .filter(which)
            .map(g -> told(state.apply("lever " + g.lever()), "N"))
            .sorted(Comparator.comparing("NMR"::indexOf))
            .toList();
    return stand.isEmpty() ? "N" : stand.get(slotted.contains(signal) ? 0 : stand.size() - 1);
  }

  private static String told(String value, String otherwise) {
    return value == null ? otherwise : value;
  }

  /** What its control needs and has not. */
  private List<String> lacking(String signal, UnaryOperator<String> state) {
    List<String> lacking = new ArrayList<>();
    for (Contact contact : controls.getOrDefault(signal, List.of())) {
      if (!makes(contact, state)) {
        lacking.add(contact.words());
      }
    }
    return lacking;
  }

  private boolean makes(Contact contact, UnaryOperator<String> state) {
    if (contact instanceof Contact.ArmAtDanger arm) {
      return place(arm.signal(), state).equals("N");
    } else if (contact instanceof Contact.ArmOff arm) {
      return place(arm.signal(), state).equals("R");
    }
    String condition = ((Contact.Outside) contact).condition();
    return told(state.apply("condition " + condition), "met").equals("met");
  }

  /** "signal 3 off"; "signal 3 still on"; "signal 3 on, held by its control: Platform clear". */
  private String words(String signal, Map<String, String> before, Map<String, String> state) {
    String place = place(signal, state::get);
    boolean held = place.equals("N") && !lever(signal, g -> true, state::get).equals("N");
    boolean still = !held && place.equals(place(signal, before::get));
    return "signal "
        + signal
        + (still ? " still" : "")
        + (place.equals("R") ? " off" : place.equals("M") ? " part-way, taken as off" : " on")
        + (held ? ", held by its control: " + String.join(", ", lacking(signal, state::get)) : "");
  }

  /**
   * The arms that a movement changes, of those that do not just follow one lever, and one that it
   * should have and did not, in words.
   *
   * @param own such an arm, if the lever that is moved works one; null if none
   */
  public List<String> changes(String own, Map<String, String> before, Map<String, String> after) {
    List<String> changes = new ArrayList<>();
    Set<String> all = new LinkedHashSet<>(levers.keySet());
    all.removeIf(this::followsOneLever);
    for (String signal : all) {
      if (signal.equals(own) || !place(signal, before::get).equals(place(signal, after::get))) {
        changes.add(words(signal, before, after));
      }
    }
    return changes;
  }
}
