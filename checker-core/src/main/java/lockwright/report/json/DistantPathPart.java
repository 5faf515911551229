package lockwright.report.json;

import java.util.List;
import lockwright.railway.layout.DistantPath;

/**
 * What a distant speaks for.
 *
 * @param posts for each post, in order, the stop arms that admit the path
 * @param beyond for each post, the tracks that the path passes beyond it, up to the next
 */
record DistantPathPart(
    String distant,
    List<List<String>> posts,
    List<RoutePart.Passed> facing,
    List<List<String>> beyond) {
  static DistantPathPart of(DistantPath path) {
    return new DistantPathPart(
        path.distant(), path.posts(), RoutePart.Passed.all(path.facing()), path.beyond());
  }
}
