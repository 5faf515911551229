/**
 * Shortest sequences of movements over a working: from states to a state in which something holds.
 * All movements are those of {@code lockwright.working}; what is told as found has been played.
 * Start reading at {@link lockwright.walk.Walks}. May import {@code railway} and {@code working}.
 */
package lockwright.walk;
