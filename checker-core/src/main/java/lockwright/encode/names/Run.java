package lockwright.encode.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/**
 * A sequence of movements, offered as a breach or as a witness: the value of every quantity in the
 * beginning, and the events in order. For a movement breach the last event is the forbidden one.
 */
public record Run(SortedMap<String, String> beginning, List<Event> events) {
  public Run {
    beginning = new TreeMap<>(beginning);
    events = List.copyOf(events);
  }

  public Run(Map<String, String> beginning, List<Event> events) {
    this(new TreeMap<>(beginning), events);
  }

  /**
   * The same with every whole stroke of a lever, of points or of gates, as its two half-strokes;
   * between those of a lever that works points electrically, those of its points.
   */
  public Run parted(Frame frame) {
    List<Event> parted = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Event.LeverMoves e && e.from() != Position.M && e.to() != Position.M) {
        parted.add(new Event.LeverMoves(e.lever(), e.from(), Position.M));
        for (String points : frame.answering(e.lever())) {
          parted.add(new Event.PointsMove(points, e.from(), Position.M));
          parted.add(new Event.PointsMove(points, Position.M, e.to()));
        }
        parted.add(new Event.LeverMoves(e.lever(), Position.M, e.to()));
      } else if (event instanceof Event.PointsMove e
          && e.from() != Position.M
          && e.to() != Position.M) {
        parted.add(new Event.PointsMove(e.points(), e.from(), Position.M));
        parted.add(new Event.PointsMove(e.points(), Position.M, e.to()));
      } else if (event instanceof Event.GatesMove e
          && e.from() != Position.M
          && e.to() != Position.M) {
        parted.add(new Event.GatesMove(e.levelCrossing(), e.from(), Position.M));
        parted.add(new Event.GatesMove(e.levelCrossing(), Position.M, e.to()));
      } else {
        parted.add(event);
      }
    }
    return new Run(beginning, parted);
  }
}
