package lockwright.railway.layout;

import java.util.Collections;
import java.util.List;

/**
 * The path that a distant speaks for; `docs/meaning.md` 1.7.
 *
 * @param posts for each post it speaks for, in order: the stop arms there that admit the path;
 *     where there are none, or no posts, the distant is never to be off
 * @param facing the points passed facing before the last of these posts, as they must lie
 * @param beyond for each post, the tracks that the path passes beyond it, no farther than the next
 *     post with a stop arm
 */
public record DistantPath(
    String distant,
    List<List<String>> posts,
    List<PointsOnRoute> facing,
    List<List<String>> beyond) {
  /** One of whose posts no arm is given by several levers. */
  public DistantPath(String distant, List<List<String>> posts, List<PointsOnRoute> facing) {
    this(distant, posts, facing, Collections.nCopies(posts.size(), List.of()));
  }
}
