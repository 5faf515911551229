package lockwright.report.testsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import lockwright.railway.Box;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Lever;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.report.MovementWords;
import lockwright.testsheet.PullingOrder;
import lockwright.testsheet.RuleLines;
import lockwright.testsheet.TestSheet;
import lockwright.walk.Outcome;

/** What the papers say, whatever their form. */
final class SheetWords {
  static final List<String> RULES =
      List.of(
          "Begin with all levers normal. Do the lines in order: each begins where the one before"
              + " it ended.",
          "Make the movements of the set-up first. Each of them has to be free: if one is held, that"
              + " is a failure of the line.",
          "Held: the lever has to stay locked when it is pulled firmly, and is left where it stands."
              + " Free: the lever is moved fully over, and stays so.",
          "Tick a line only if it went as it says. After a failure put the frame back to the state"
              + " of the next line before going on.",
          "Each line was played on the box as its files say it is. A set-up is the shortest found"
              + " from the line before; that no other order of the lines needs fewer movements is not"
              + " said.",
          "What a set-up has from outside, such as a track circuit or another box's release, is"
              + " brought about as a competent person decides.",
          "The sheet tries the entries of the locking table with levers at their ends, one at a"
              + " time, then what else holds levers: token locks, lever locks, detectors, gates and ground"
              + " frames; and the controls of arms. A lock too many is found only where it hinders"
              + " a line.");

  private final TestSheet sheet;
  private final SortedMap<String, String> digests;
  private final Box box;
  private final MovementWords movements;

  SheetWords(TestSheet sheet, SortedMap<String, String> digests) {
    this.sheet = sheet;
    this.digests = digests;
    this.box = sheet.box();
    this.movements = new MovementWords(box, box.sections().size() > 1);
  }

  /** The files that the box was read from. */
  List<String> files() {
    return digests.entrySet().stream().map(f -> f.getKey() + ", SHA-256 " + f.getValue()).toList();
  }

  /** The coverage figures. */
  List<String> coverage() {
    int trials = sheet.shown() + sheet.notTried().size();
    List<String> all = new ArrayList<>();
    all.add(
        sheet.covered().size()
            + " of "
            + box.locking().size()
            + " entries of the table are covered both ways: a line in which the entry alone holds,"
            + " and one in which its levers stand as it wants and the lever is free");
    all.add(
        sheet.shown()
            + " of "
            + trials
            + " things to be tried are tried for themselves; the others are named at the end, with"
            + " the reason");
    RuleLines rules = sheet.rules();
    long things = rules.triedWanting() + rules.notTriedWanting();
    if (things > 0) {
      all.add(
          rules.triedWanting()
              + " of "
              + things
              + " things that hold a lever besides the table, or an arm on, are each tried, all else"
              + " being as it is to be");
    }
    int lines = sheet.lines().size() + rules.lines().size();
    all.add(lines + " lines, " + sheet.movements() + " movements");
    all.add(
        sheet.all()
            ? "all that the levers can come to by whole strokes was looked at"
            : "a limit was met: only the states nearest to all levers normal were looked at");
    return all;
  }

  /** Entries that no line tries alone, or that no line shows free; empty, if there are none. */
  List<String> notCovered() {
    List<String> all = new ArrayList<>();
    for (Entry entry : box.locking()) {
      boolean held = sheet.coversHeld(entry);
      if (!held || !sheet.coversFree(entry)) {
        all.add(
            entry.words()
                + " ("
                + entry.at()
                + "): "
                + (held ? "no line in which the lever is free with it" : "not tried alone"));
      }
    }
    return all;
  }

  /** Where the tokens are taken to be at first. */
  List<String> tokens() {
    List<String> all = new ArrayList<>();
    Map<String, String> values = sheet.beginning().values();
    for (Section s : box.sections()) {
      List<String> in = new ArrayList<>();
      for (Section.Instrument e : s.instruments()) {
        in.add(
            values.get(Quantity.tokensIn(s.name(), e.name(), s.tokens()).key())
                + " in "
                + e.name());
      }
      all.add(
          "at first, section "
              + s.name()
              + ": "
              + s.token().name().toLowerCase(Locale.ROOT)
              + "s "
              + String.join(", ", in));
    }
    for (OutsideCondition c : box.controls().conditions()) {
      boolean met = values.get(Quantity.condition(c.name()).key()).equals("met");
      all.add("at first, from outside: " + c.name() + (met ? ", met" : ", not met"));
    }
    return all;
  }

  String route(PullingOrder order) {
    return "route " + order.route().name();
  }

  /** The movements in order; or why there are none. */
  List<String> movements(PullingOrder order) {
    if (order.outcome() instanceof Outcome.Found found) {
      return found.walk().events().stream().map(movements::of).toList();
    } else if (order.outcome() instanceof Outcome.NotWithin limit) {
      return List.of("not found within " + limit.movements() + " movements");
    }
    return List.of("cannot be cleared by whole strokes");
  }

  /** The plates of the levers that give the arm for the route. */
  String plate(PullingOrder order) {
    if (!(order.outcome() instanceof Outcome.Found found)) {
      return "";
    }
    List<Event> events = found.walk().events();
    List<String> plates = new ArrayList<>();
    for (Lever giving : box.giving(order.route())) {
      String lever = giving.id();
      if (events.stream()
          .anyMatch(e -> e instanceof Event.LeverMoves m && m.lever().equals(lever))) {
        List<String> plate = order.plate(lever);
        plates.add(lever + ": " + (plate.isEmpty() ? "none" : String.join(", ", plate)));
      }
    }
    return String.join("; ", plates);
  }
}
