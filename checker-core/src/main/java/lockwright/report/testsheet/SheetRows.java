package lockwright.report.testsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.report.MovementWords;
import lockwright.testsheet.Line;
import lockwright.testsheet.NotTried;
import lockwright.testsheet.RuleLine;
import lockwright.testsheet.RuleLines;
import lockwright.testsheet.RuleTrial;
import lockwright.testsheet.TestSheet;
import lockwright.testsheet.Trial;
import lockwright.working.Hold;
import lockwright.working.State;

/** The lines of the sheet in words, whatever the form of the papers, and what no line tries. */
final class SheetRows {
  private final TestSheet sheet;
  private final Box box;
  private final MovementWords movements;

  SheetRows(TestSheet sheet) {
    this.sheet = sheet;
    this.box = sheet.box();
    this.movements = new MovementWords(box, box.sections().size() > 1);
  }

  /**
   * One line, in words.
   *
   * @param under the lever or the arm under which it stands; empty for those with all levers normal
   * @param reversed the levers that stand so before it
   * @param tried whether the lever is only tried, since it is to be held
   */
  record Row(
      String number,
      String under,
      List<String> setUp,
      String reversed,
      String deed,
      boolean tried,
      String expected,
      List<String> why) {}

  /** The lines by the headings under which they stand, in order. */
  Map<String, List<Row>> groups() {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    for (Line line : sheet.lines()) {
      String heading =
          line.group().isEmpty()
              ? "All levers normal: every lever"
              : "Entries under lever " + lever(line.group());
      groups.computeIfAbsent(heading, h -> new ArrayList<>()).add(row(line));
    }
    for (RuleLine line : sheet.rules().lines()) {
      groups.computeIfAbsent(heading(line.trial().tried()), h -> new ArrayList<>()).add(row(line));
    }
    return groups;
  }

  private Row row(Line line) {
    return new Row(
        Integer.toString(line.number()),
        line.group(),
        movements(line.setUp()),
        reversed(line.at()),
        movements.of(line.stroke()),
        !line.free(),
        expected(line.free(), line.from()),
        why(line));
  }

  private Row row(RuleLine line) {
    if (line.trial().tried() instanceof RuleTrial.AtLever at) {
      return new Row(
          Integer.toString(line.number()),
          at.lever(),
          movements(line.setUp()),
          reversed(line.at()),
          movements.of(at.stroke()),
          !line.free(),
          expected(line.free(), at.from()),
          List.of(
              line.trial()
                  .wanting()
                  .map(w -> "held by " + w)
                  .orElse("nothing wanting of what holds it besides the table")));
    }
    RuleTrial.AtArm at = (RuleTrial.AtArm) line.trial().tried();
    String arm = at.control().signal();
    return new Row(
        Integer.toString(line.number()),
        "arm " + arm,
        movements(line.setUp()),
        reversed(line.at()),
        "look at arm " + arm,
        false,
        line.free() ? "off" : "on",
        List.of(
            line.trial().wanting().map(w -> "without " + w).orElse("with all that it needs")
                + ", given by "
                + levers(at)
                + " ("
                + at.control().at()
                + ")"));
  }

  private String heading(RuleTrial.Tried tried) {
    return tried instanceof RuleTrial.AtLever at
        ? "What holds lever " + lever(at.lever()) + " besides the table"
        : "Control of arm " + ((RuleTrial.AtArm) tried).control().signal();
  }

  private String lever(String id) {
    String label = box.frame().lever(id).label();
    return label.isEmpty() ? id : id + " " + label;
  }

  private List<String> movements(List<Event> events) {
    return events.stream().map(movements::of).toList();
  }

  private String reversed(State at) {
    List<String> reversed = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      if (at.values().get(Quantity.lever(lever.id()).key()).equals("R")) {
        reversed.add(lever.id());
      }
    }
    return reversed.isEmpty() ? "none" : String.join(", ", reversed);
  }

  private static String expected(boolean free, Position from) {
    return free ? "free" : from == Position.N ? "held normal" : "held reversed";
  }

  /** What holds, or what of which entries is tried. */
  private static List<String> why(Line line) {
    List<String> why = new ArrayList<>();
    for (Hold hold : line.heldBy()) {
      why.add(
          "held by " + hold.entry().map(e -> e.words() + " (" + e.at() + ")").orElse(hold.words()));
    }
    for (Trial trial : line.covers()) {
      boolean hidden = trial.aspect().held() && !line.alone();
      why.add(
          trial.aspect().words() + (hidden ? " (not alone)" : "") + ": " + trial.entry().words());
    }
    return why;
  }

  private static String levers(RuleTrial.AtArm at) {
    return "lever" + (at.levers().size() > 1 ? "s " : " ") + String.join(" and ", at.levers());
  }

  private static String notTried(RuleLines.NotTried not) {
    RuleTrial trial = not.trial();
    if (trial.tried() instanceof RuleTrial.AtLever at) {
      return "lever "
          + at.lever()
          + (at.from() == Position.N ? " from normal, " : " from reverse, ")
          + trial.wanting().orElse("with nothing wanting besides the table")
          + ": "
          + not.why();
    }
    RuleTrial.AtArm at = (RuleTrial.AtArm) trial.tried();
    return "arm "
        + at.control().signal()
        + ", given by "
        + levers(at)
        + ", "
        + trial.wanting().map(w -> "without " + w).orElse("with all that it needs")
        + ": "
        + not.why();
  }

  /** All that is not tried, or not alone, with the reason. */
  List<String> notTried() {
    List<String> all = new ArrayList<>();
    sheet.notTried().forEach(n -> all.add(notTried(n)));
    sheet.rules().notTried().forEach(n -> all.add(notTried(n)));
    return all;
  }

  private static String notTried(NotTried not) {
    Trial trial = not.trial();
    return trial.entry().words()
        + " ("
        + trial.entry().at()
        + "), "
        + trial.aspect().words()
        + ", lever "
        + trial.lever()
        + ": "
        + not.why();
  }
}
