package lockwright.report;

import java.util.Locale;
import lockwright.railway.Box;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Position;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;

/** What is done, in words: "pull 5 West points", "Sedgeholm plunges". */
public final class MovementWords {
  private final Box box;
  private final boolean namingSections;

  /**
   * @param namingSections whether it must be said in which section a man works his instrument
   */
  public MovementWords(Box box, boolean namingSections) {
    this.box = box;
    this.namingSections = namingSections;
  }

  /**
   * One or two half-strokes of a lever, points or gates as one movement; any other event as it is.
   */
  public String of(Event event) {
    if (event instanceof Event.LeverMoves move) {
      return lever(move);
    }
    if (event instanceof Event.PointsMove move) {
      return points(move);
    }
    if (event instanceof Event.GatesMove move) {
      boolean open = move.from().compareTo(move.to()) < 0;
      return (open
              ? "open the gates of " + move.levelCrossing() + " to the road"
              : "close the gates of " + move.levelCrossing() + " to the road")
          + howFar(move.from(), move.to());
    }
    if (event instanceof Event.RodBreaks broken) {
      return "the rod of points " + broken.points() + " breaks";
    }
    if (event instanceof Event.AtLock lock) {
      return atLock(lock);
    }
    if (event instanceof Event.ConditionChanges change) {
      OutsideCondition c = box.controls().condition(change.condition());
      return ConditionWords.change(c.name(), c.kind().words(), c.of(), change.met());
    }
    return atInstrument((Event.AtInstrument) event);
  }

  private String atLock(Event.AtLock event) {
    Section section = section(event.section());
    String token = section.token().name().toLowerCase(Locale.ROOT);
    String in = namingSections ? "section " + section.name() + ": " : "";
    return in
        + switch (event.deed()) {
          case PUT_FRESH_IN ->
              "a " + token + ", withdrawn and not used, is put in the lock of ground frame ";
          case PUT_OTHER_IN -> "a " + token + " is put in the lock of ground frame ";
          case TAKE_OUT -> "the " + token + " is taken out of the lock of ground frame ";
        }
        + event.groundFrame();
  }

  private String lever(Event.LeverMoves move) {
    String label = box.frame().lever(move.lever()).label();
    return LeverWords.of(move.lever(), label, move.from().name(), move.to().name());
  }

  private String points(Event.PointsMove move) {
    boolean reverse = move.from().compareTo(move.to()) < 0;
    if (box.frame().electrically(move.points())) {
      return driven(move, reverse);
    }
    if (box.layout().byHand(move.points())) {
      return (reverse ? "by hand: reverse points " : "by hand: restore points ")
          + move.points()
          + howFar(move.from(), move.to());
    }
    String groundFrame = box.layout().pointsOfGroundFrames().get(move.points()).id();
    return "at ground frame "
        + groundFrame
        + (reverse ? ": reverse points " : ": restore points ")
        + move.points()
        + howFar(move.from(), move.to());
  }

  /** The current moves them. */
  private static String driven(Event.PointsMove move, boolean reverse) {
    String points = "points " + move.points();
    if (move.to() == Position.M) {
      return points + " begin to move to " + (reverse ? "reverse" : "normal");
    }
    return points
        + (move.from() == Position.M ? " come to lie " : " move to ")
        + (reverse ? "reverse" : "normal");
  }

  private static String howFar(Position from, Position to) {
    if (to == Position.M) {
      return " part-way";
    }
    return from == Position.M ? " the rest of the way" : "";
  }

  private String atInstrument(Event.AtInstrument event) {
    Section section = section(event.section());
    String token = section.token().name().toLowerCase(Locale.ROOT);
    String at = event.instrument();
    String in = namingSections ? "section " + section.name() + ": " : "";
    return in
        + switch (event.deed()) {
          case PLUNGE -> at + " plunges";
          case STOP_PLUNGING -> at + " stops plunging";
          case START_WITHDRAWAL -> at + " starts to withdraw a " + token;
          case FINISH_WITHDRAWAL -> at + " finishes the withdrawal of the " + token;
          case GIVE_UP_WITHDRAWAL -> at + " gives up the withdrawal";
          case PUT_FRESH_IN -> "a " + token + ", withdrawn and not used, is put in at " + at;
          case PUT_OTHER_IN -> "a " + token + " is put in at " + at;
          case IRREGULAR_WITHDRAWAL -> "a " + token + " is withdrawn irregularly at " + at;
        };
  }

  private Section section(String name) {
    return box.sections().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }
}
