/**
 * The bridge: a box becomes a transition system, by `docs/meaning.md`. Start at {@link
 * lockwright.encode.Encoder}. May import {@code railway}, {@code system} and {@code encode.names}.
 */
package lockwright.encode;
