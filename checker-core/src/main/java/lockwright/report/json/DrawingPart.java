package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.drawing.Drawing;

/** Where the author wants things in the track diagram; in his units, from the left and the top. */
record DrawingPart(List<Spot> places, List<Level> tracks) {
  record Spot(Thing of, double across, double down, Place at) {}

  record Level(String track, double down, Place at) {}

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  sealed interface Thing {}

  @JsonTypeName("points")
  record Points(String points) implements Thing {}

  @JsonTypeName("crossing")
  record Crossing(String crossing) implements Thing {}

  /** Of a joint, the end of either of its tracks. */
  @JsonTypeName("end")
  record End(String track, int end) implements Thing {}

  /** Null where the author says nothing. */
  static DrawingPart of(Box box) {
    Drawing drawing = box.drawing();
    if (drawing.equals(Drawing.NONE)) {
      return null;
    }
    return new DrawingPart(
        drawing.spots().stream()
            .map(s -> new Spot(thing(s.thing()), s.across(), s.down(), Place.of(s.at())))
            .toList(),
        drawing.levels().stream()
            .map(l -> new Level(l.track(), l.down(), Place.of(l.at())))
            .toList());
  }

  private static Thing thing(Drawing.Thing thing) {
    if (thing instanceof Drawing.OfPoints points) {
      return new Points(points.id());
    } else if (thing instanceof Drawing.OfCrossing crossing) {
      return new Crossing(crossing.id());
    }
    Drawing.OfEnd end = (Drawing.OfEnd) thing;
    return new End(end.end().track(), end.end().end());
  }
}
