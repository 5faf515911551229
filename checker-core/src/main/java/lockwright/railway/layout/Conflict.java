package lockwright.railway.layout;

/**
 * Two routes of different arms that must not be signalled together, and why; `docs/meaning.md` 1.4.
 *
 * @param first the route of the arm that stands earlier in the plan
 * @param reason the shared things, in words: "track loop, points 5 (N and R)"
 * @param possible whether all points that both need are needed in one position, so that both routes
 *     can lie at once
 * @param opposed whether they can lie at once and pass all that they share in opposite directions,
 *     and sprung points by one leg
 */
public record Conflict(
    Route first, Route second, String reason, boolean possible, boolean opposed) {}
