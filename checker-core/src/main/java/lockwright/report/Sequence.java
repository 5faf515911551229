package lockwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeSet;
import lockwright.audit.Played;
import lockwright.railway.Box;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/**
 * A played run as numbered lever movements: the two half-strokes of one pull, if nothing comes
 * between them, are one line.
 */
public final class Sequence {
  private static final int WIDEST = 60;

  private final Box box;
  private final Played played;
  private final List<Line> lines = new ArrayList<>();

  /**
   * @param last the number of the line's last movement, from 1
   */
  private record Line(
      Event event, SortedMap<String, String> before, SortedMap<String, String> after, int last) {}

  /**
   * A line in words.
   *
   * @param event the movement; a whole stroke, if the line is of its two halves
   * @param done what is done: "pull 5 West points"
   * @param moved what that moves outside the frame; empty, if nothing
   * @param last the number of its last movement, from 1
   * @param after the value of each quantity then, by its key
   */
  public record Told(
      Event event, String done, String moved, int last, SortedMap<String, String> after) {}

  private Sequence(Box box, Played played) {
    this.box = box;
    this.played = played;
    int number = 0;
    for (Played.Step step : played.steps()) {
      number++;
      Line line = lines.isEmpty() ? null : lines.get(lines.size() - 1);
      Event joined = line == null ? null : joined(line.event(), step.event());
      if (joined == null) {
        lines.add(new Line(step.event(), step.before(), step.after(), number));
      } else {
        lines.set(lines.size() - 1, new Line(joined, line.before(), step.after(), number));
      }
    }
  }

  /** The run of a box. */
  public static Sequence of(Box box, Played played) {
    return new Sequence(box, played);
  }

  /** Whole strokes and events in words, one after another: "pull 3 Bolt, replace 2 Points". */
  public static String words(Box box, List<Event> events) {
    MovementWords words = new MovementWords(box, box.sections().size() > 1);
    return String.join(", ", events.stream().map(words::of).toList());
  }

  /** Both half-strokes as one, if they are the two of one stroke; else null. */
  private static Event joined(Event first, Event then) {
    if (first instanceof Event.LeverMoves a
        && then instanceof Event.LeverMoves b
        && a.lever().equals(b.lever())
        && whole(a.from(), a.to(), b.to())) {
      return new Event.LeverMoves(a.lever(), a.from(), b.to());
    }
    if (first instanceof Event.PointsMove a
        && then instanceof Event.PointsMove b
        && a.points().equals(b.points())
        && whole(a.from(), a.to(), b.to())) {
      return new Event.PointsMove(a.points(), a.from(), b.to());
    }
    if (first instanceof Event.GatesMove a
        && then instanceof Event.GatesMove b
        && a.levelCrossing().equals(b.levelCrossing())
        && whole(a.from(), a.to(), b.to())) {
      return new Event.GatesMove(a.levelCrossing(), a.from(), b.to());
    }
    return null;
  }

  private static boolean whole(Position from, Position by, Position to) {
    return from != to && by == Position.M;
  }

  /** The beginning, and a numbered line for each movement with what it moves. */
  public List<String> text() {
    List<Told> told = told();
    List<String> done = told.stream().map(Told::done).toList();
    int width = done.stream().mapToInt(String::length).filter(w -> w <= WIDEST).max().orElse(0);
    int digits = Integer.toString(done.size()).length();
    List<String> text = new ArrayList<>();
    beginning().forEach(b -> text.add("  beginning: " + b));
    for (int i = 0; i < done.size(); i++) {
      String moved = told.get(i).moved();
      String number = String.format(Locale.ROOT, "%" + (digits + 2) + "d. ", i + 1);
      String padded = done.get(i) + " ".repeat(Math.max(0, width - done.get(i).length()));
      text.add((number + padded + (moved.isEmpty() ? "" : "  " + moved)).stripTrailing());
    }
    return text;
  }

  /** The lines. */
  public List<Told> told() {
    boolean severalSections = box.sections().stream().filter(this::touched).count() > 1;
    MovementWords words = new MovementWords(box, severalSections);
    Outside outside = new Outside(box);
    return lines.stream()
        .map(
            l ->
                new Told(
                    l.event(),
                    words.of(l.event()),
                    outside.of(l.event(), l.before(), l.after()),
                    l.last(),
                    l.after()))
        .toList();
  }

  /** The number of the line in which this movement, from 1, is made. */
  public int line(int movement) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).last() >= movement) {
        return i + 1;
      }
    }
    return lines.size();
  }

  /** How things stand before: what the run does not touch is left out. */
  public List<String> beginning() {
    SortedMap<String, String> first = played.beginning();
    List<String> text = new ArrayList<>();
    text.add("all levers normal");
    for (String points : new TreeSet<>(box.layout().pointsBesideLevers())) {
      String lie = first.get(Quantity.points(points).key());
      if (!lie.equals("N")) {
        text.add("points " + points + (lie.equals("R") ? " lie reverse" : " lie neither way"));
      }
    }
    for (LevelCrossing crossing : box.layout().levelCrossings()) {
      String stand = first.get(Quantity.gates(crossing.id()).key());
      if (stand != null) {
        text.add(
            "gates of "
                + crossing.id()
                + (stand.equals("N")
                    ? " across the road"
                    : stand.equals("R") ? " across the line" : " part-way"));
      }
    }
    box.sections().stream().filter(this::touched).forEach(s -> text.add(section(s, first)));
    for (OutsideCondition condition : box.controls().conditions()) {
      boolean met = first.get(Quantity.condition(condition.name()).key()).equals("met");
      text.add(condition.name() + (met ? ": met" : ": not met"));
    }
    return text;
  }

  private boolean touched(Section section) {
    return played.steps().stream().anyMatch(s -> touches(s, section));
  }

  private static boolean touches(Played.Step step, Section section) {
    return step.event() instanceof Event.AtInstrument e && e.section().equals(section.name())
        || step.event() instanceof Event.AtLock l && l.section().equals(section.name())
        || step.event() instanceof Event.LeverMoves m
            && section.release().filter(r -> r.levers().contains(m.lever())).isPresent();
  }

  private static String section(Section s, SortedMap<String, String> first) {
    String token = s.token().name().toLowerCase(Locale.ROOT);
    List<String> in = new ArrayList<>();
    for (Section.Instrument e : s.instruments()) {
      String number = first.get(Quantity.tokensIn(s.name(), e.name(), s.tokens()).key());
      in.add(Outside.counted(number, token) + " in " + e.name());
    }
    String release = first.getOrDefault(Quantity.release(s.name()).key(), "");
    return "section "
        + s.name()
        + ": "
        + String.join(", ", in)
        + (release.isEmpty() ? "" : ", release " + release);
  }
}
