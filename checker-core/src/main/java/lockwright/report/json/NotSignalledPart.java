package lockwright.report.json;

import java.util.List;
import lockwright.railway.layout.NotSignalled;

/** A path from a post that no arm of one kind there admits. */
record NotSignalledPart(List<String> signals, List<String> tracks, List<RoutePart.Passed> points) {
  static NotSignalledPart of(NotSignalled path) {
    return new NotSignalledPart(path.signals(), path.tracks(), RoutePart.Passed.all(path.points()));
  }
}
