package lockwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;

/**
 * How arms stand in a state: as their levers, but for those whose control holds them on; 2.2 and
 * 2.9 of {@code docs/meaning.md}. Of the quantities of a run it needs the levers and the
 * conditions; a lever that is not told is normal, a condition that is not told is met.
 */
public final class Arms {
  private static final String ARM = "arm ";
  private static final String AT_DANGER = " at danger";
  private static final String OFF = " off";

  private final Map<String, String> levers = new LinkedHashMap<>();
  private final Map<String, List<Contact>> controls = new LinkedHashMap<>();

  /** Of a box. */
  public static Arms of(Box box) {
    Arms arms = new Arms();
    for (ArmControl control : box.controls().armControls()) {
      arms.control(control.signal(), control.needs().stream().map(Contact::words).toList());
    }
    box.layout()
        .signals()
        .forEach(s -> box.frame().ofSignal(s.id()).ifPresent(l -> arms.lever(s.id(), l.id())));
    return arms;
  }

  /** Tells which lever works an arm. */
  public void lever(String signal, String lever) {
    levers.put(signal, lever);
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

  /** The arms that have a control. */
  public List<String> controlled() {
    return List.copyOf(controls.keySet());
  }

  /**
   * N for an arm that is on, M for one that is taken as off, R for one that is off.
   *
   * @param state the value of each quantity, by its key; null, if it is not told
   */
  public String place(String signal, UnaryOperator<String> state) {
    String stands = lever(signal, state);
    return stands.equals("N") || lacking(signal, state).isEmpty() ? stands : "N";
  }

  private String lever(String signal, UnaryOperator<String> state) {
    String lever = levers.get(signal);
    return lever == null ? "N" : told(state.apply("lever " + lever), "N");
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

  /** "signal 3 off"; "signal 3 on, held by its control: Platform clear". */
  private String words(String signal, Map<String, String> state) {
    String place = place(signal, state::get);
    boolean held = place.equals("N") && !lever(signal, state::get).equals("N");
    return "signal "
        + signal
        + (place.equals("R") ? " off" : place.equals("M") ? " part-way, taken as off" : " on")
        + (held ? ", held by its control: " + String.join(", ", lacking(signal, state::get)) : "");
  }

  /**
   * The controlled arms that a movement changes, and one that it should have and did not, in words.
   *
   * @param own the arm that the lever works which is moved; null if none
   */
  public List<String> changes(String own, Map<String, String> before, Map<String, String> after) {
    List<String> changes = new ArrayList<>();
    for (String signal : controls.keySet()) {
      if (signal.equals(own) || !place(signal, before::get).equals(place(signal, after::get))) {
        changes.add(words(signal, after));
      }
    }
    return changes;
  }
}
