package lockwright.report.json;

import java.util.List;
import lockwright.railway.layout.DistantPath;

/**
 * What a distant speaks for.
 *
 * @param posts for each post, in order, the stop arms that admit the path
 */
record DistantPathPart(String distant, List<List<String>> posts, List<RoutePart.Passed> facing) {
  static DistantPathPart of(DistantPath path) {
    return new DistantPathPart(path.distant(), path.posts(), RoutePart.Passed.all(path.facing()));
  }
}
