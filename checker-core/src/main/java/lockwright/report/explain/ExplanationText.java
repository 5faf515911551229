package lockwright.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import lockwright.explain.Arrival;
import lockwright.explain.Asked;
import lockwright.explain.Collars;
import lockwright.explain.Explanation;
import lockwright.explain.Held;
import lockwright.explain.Way;
import lockwright.railway.Box;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Position;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.report.Cautions;
import lockwright.report.MovementWords;
import lockwright.report.Shown;
import lockwright.walk.Outcome;
import lockwright.walk.Walk;

/** An explanation as lines of text. */
public final class ExplanationText {
  private final Explanation explanation;
  private final Box box;
  private final String folder;
  private final MovementWords words;
  private final List<String> text = new ArrayList<>();

  private ExplanationText(Explanation explanation, String folder) {
    this.explanation = explanation;
    this.box = explanation.box();
    this.folder = folder;
    this.words = new MovementWords(box, box.sections().size() > 1);
  }

  /**
   * The lines.
   *
   * @param folder the path of the spec's folder as it is to be shown, ended by a slash
   */
  public static List<String> lines(Explanation explanation, String folder) {
    ExplanationText text = new ExplanationText(explanation, folder);
    text.state();
    text.arrival();
    explanation.ways().forEach(text::way);
    explanation.freeing().ifPresent(text::freeing);
    text.text.addAll(Cautions.ALL);
    return Shown.lines(text.text);
  }

  /** What can still be cleared with collars on; the cautions stand with the explanation. */
  public static List<String> lines(Explanation explanation, Collars collars) {
    List<String> text = new ArrayList<>();
    MovementWords words =
        new MovementWords(explanation.box(), explanation.box().sections().size() > 1);
    if (collars.routes().isEmpty()) {
      return List.of("what collars leave is not looked for: no route, or a state that cannot be");
    }
    text.add(
        "with collars on "
            + String.join(", ", explanation.asked().collars())
            + ", by whole strokes from this state (a collar reminds; nothing is proved of it):");
    for (Collars.Cleared cleared : collars.routes()) {
      String route = "  route " + cleared.route().name() + ": ";
      if (cleared.outcome() instanceof Outcome.Found found) {
        List<String> movements = found.walk().events().stream().map(words::of).toList();
        text.add(
            route + (movements.isEmpty() ? "is cleared" : "by " + String.join(", ", movements)));
      } else if (cleared.outcome() instanceof Outcome.NotWithin limit) {
        text.add(route + "not found within " + limit.movements() + " movements");
      } else {
        text.add(route + "cannot be cleared");
      }
    }
    return Shown.lines(text);
  }

  /** What is wrong with what was asked. */
  public static List<String> faults(List<Asked.Fault> faults) {
    List<String> lines = new ArrayList<>();
    for (Asked.Fault fault : faults) {
      lines.add(fault.setting());
      lines.add("  what: " + fault.what());
      lines.add("  fix:  " + fault.fix());
    }
    return Shown.lines(lines);
  }

  private void state() {
    Asked asked = explanation.asked();
    List<String> stand = new ArrayList<>();
    if (!asked.reversed().isEmpty()) {
      stand.add(String.join(", ", asked.reversed()) + " reversed");
    }
    if (!asked.partWay().isEmpty()) {
      stand.add(String.join(", ", asked.partWay()) + " part-way");
    }
    String collars =
        asked.collars().isEmpty() ? "" : "; collars on " + String.join(", ", asked.collars());
    text.add(
        box.name()
            + ": lever "
            + lever(asked.lever())
            + ", with "
            + (stand.isEmpty()
                ? "all levers normal"
                : String.join("; ", stand) + "; all others normal")
            + collars);
    box.sections().forEach(this::section);
    for (OutsideCondition c : box.controls().conditions()) {
      String value = explanation.state().values().get(Quantity.condition(c.name()).key());
      text.add("  taken from outside: " + c.name() + (value.equals("met") ? ", met" : ", not met"));
    }
  }

  private String lever(String id) {
    String label = box.frame().lever(id).label();
    return label.isEmpty() ? id : id + " " + label;
  }

  private void section(Section s) {
    Map<String, String> values = explanation.state().values();
    String instruments =
        s.instruments().stream()
            .map(
                e ->
                    values.get(Quantity.tokensIn(s.name(), e.name(), s.tokens()).key())
                        + " in "
                        + e.name())
            .collect(Collectors.joining(", "));
    String out = values.get(Quantity.tokensOut(s.name(), s.tokens()).key());
    String release = values.get(Quantity.release(s.name()).key());
    text.add(
        "  taken for section "
            + s.name()
            + ": "
            + s.token().name().toLowerCase(Locale.ROOT)
            + "s "
            + instruments
            + ", "
            + out
            + " out"
            + (release == null ? "" : ", release " + release));
  }

  private void arrival() {
    Arrival arrival = explanation.arrival();
    if (arrival instanceof Arrival.AsGiven a) {
      reached("this state is reached from all levers normal", a.walk());
    } else if (arrival instanceof Arrival.Otherwise a) {
      reached(
          "this state is reached from all levers normal, though not by these pulls in the order"
              + " given alone",
          a.walk());
    } else if (arrival instanceof Arrival.ByParts a) {
      reached(
          "this state is not reached by whole strokes with every conditional piece holding, but by"
              + " half-strokes as safety reads the table",
          a.walk());
    } else if (arrival instanceof Arrival.Forbidden a) {
      text.add("this state cannot be reached: the locking forbids it");
      a.by().forEach(e -> text.add("  " + folder + e.at() + "  " + e.words()));
    } else if (arrival instanceof Arrival.Never) {
      text.add(
          "this state cannot be reached: no entry forbids it in itself, but no sequence of"
              + " half-strokes leads to it from all levers normal (all were tried)");
    } else if (arrival instanceof Arrival.NotWithin a) {
      text.add(
          "whether this state can be reached is not known: no sequence of up to "
              + a.movements()
              + " movements leads to it, and the limit of states was met");
    }
  }

  private void reached(String how, Walk walk) {
    if (walk.events().isEmpty()) {
      return;
    }
    text.add(how + ":");
    movements(walk);
  }

  private void movements(Walk walk) {
    for (int i = 0; i < walk.events().size(); i++) {
      text.add("  " + (i + 1) + ". " + words.of(walk.events().get(i)));
    }
  }

  private void way(Way way) {
    String stroke =
        words.of(new Event.LeverMoves(explanation.asked().lever(), way.from(), way.to()));
    text.add("to " + stroke + ": " + way.words());
    List<Held> surely = way.heldBy().stream().filter(h -> !h.unmarked()).toList();
    List<Held> unmarked = way.heldBy().stream().filter(Held::unmarked).toList();
    surely.forEach(this::held);
    if (!unmarked.isEmpty()) {
      text.add("  held too, if pieces with conditions hold levers though not marked (holds: yes):");
      unmarked.forEach(this::held);
    }
  }

  private void held(Held held) {
    String at = held.entry().map(e -> folder + e.at() + "  ").orElse("");
    text.add("  held by " + at + held.rule());
    if (!held.seen().isEmpty()) {
      text.add("    " + held.seen());
    }
  }

  private void freeing(Outcome freeing) {
    String lever = explanation.asked().lever();
    if (freeing instanceof Outcome.Found found) {
      int count = found.walk().events().size();
      text.add(
          "it is free after "
              + (count == 1 ? "1 movement" : count + " movements")
              + ", and not after fewer, by whole strokes:");
      movements(found.walk());
      Position stands = explanation.stands();
      Position to = stands == Position.N ? Position.R : Position.N;
      text.add("  then " + words.of(new Event.LeverMoves(lever, stands, to)));
    } else if (freeing instanceof Outcome.Never never) {
      text.add(
          "no sequence of whole strokes ever frees it from this state (all that can come of it was"
              + " tried, "
              + never.states()
              + " positions of the levers)");
    } else if (freeing instanceof Outcome.NotWithin limit) {
      text.add(
          "not found within "
              + limit.movements()
              + " movements what would free it; longer sequences were not tried"
              + " (lockwright.states sets the limit)");
    }
  }
}
