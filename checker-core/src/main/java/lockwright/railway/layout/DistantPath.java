package lockwright.railway.layout;

import java.util.List;

/**
 * The path that a distant speaks for; `docs/meaning.md` 1.7.
 *
 * @param posts for each post it speaks for, in order: the stop arms there that admit the path;
 *     where there are none, or no posts, the distant is never to be off
 * @param facing the points passed facing before the last of these posts, as they must lie
 */
public record DistantPath(String distant, List<List<String>> posts, List<PointsOnRoute> facing) {}
