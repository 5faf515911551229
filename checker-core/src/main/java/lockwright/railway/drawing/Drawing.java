package lockwright.railway.drawing;

import java.util.List;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.Span;

/**
 * Where the author wants things in the track diagram: `drawing.yaml`. Only pictures are made of it;
 * no rule of the meaning reads it. Across is from the left and down from the top, in units of the
 * author's own, 0 to 9999.99.
 *
 * @param spots places of points, crossings, joints and ends; of each kind in the order of the file
 * @param levels how far down tracks run, in the order of the file
 */
public record Drawing(List<Spot> spots, List<Level> levels) {
  /** Everything is placed by the layout alone. */
  public static final Drawing NONE = new Drawing(List.of(), List.of());

  public Drawing {
    spots = List.copyOf(spots);
    levels = List.copyOf(levels);
  }

  /** A thing that has a place. */
  public sealed interface Thing {}

  public record OfPoints(String id) implements Thing {}

  public record OfCrossing(String id) implements Thing {}

  /** The end of a track at a plain joint, at a limit or in a section. */
  public record OfEnd(TrackEnd end) implements Thing {}

  /** The place of a thing. */
  public record Spot(Thing thing, double across, double down, Span at) {}

  /** How far down the level part of a track runs. */
  public record Level(String track, double down, Span at) {}
}
