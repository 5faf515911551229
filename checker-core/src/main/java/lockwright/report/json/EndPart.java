package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.TrackEnd;

/**
 * One of the two ends of a track.
 *
 * @param limitOfShunt whether one stands there, for trains leaving the track
 */
record EndPart(At attachedTo, boolean limitOfShunt) {

  /**
   * @param end 0 or 1, the index in the ends of the track
   */
  record Name(String track, int end) {
    static Name of(TrackEnd end) {
      return new Name(end.track(), end.end());
    }
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  sealed interface At {}

  @JsonTypeName("joint")
  record Joint(Name with) implements At {}

  @JsonTypeName("points")
  record Points(String points, String end) implements At {}

  @JsonTypeName("crossing")
  record Crossing(String crossing, Name across) implements At {}

  @JsonTypeName("limit")
  record Limit(String limit) implements At {}

  @JsonTypeName("section")
  record Section(String section) implements At {}

  static EndPart of(Layout layout, TrackEnd end) {
    return new EndPart(at(layout.at(end)), layout.limitsOfShunt().contains(end));
  }

  private static At at(Attachment attachment) {
    if (attachment instanceof Attachment.Joint a) {
      return new Joint(Name.of(a.other()));
    } else if (attachment instanceof Attachment.AtPoints a) {
      return new Points(a.points(), Words.of(a.leg()));
    } else if (attachment instanceof Attachment.AtCrossing a) {
      return new Crossing(a.crossing(), Name.of(a.across()));
    } else if (attachment instanceof Attachment.AtLimit a) {
      return new Limit(a.limit().words());
    }
    return new Section(((Attachment.InSection) attachment).section());
  }
}
