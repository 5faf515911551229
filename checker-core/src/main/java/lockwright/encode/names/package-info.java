/**
 * The way back: what a search found in a transition system, in the words of the spec. Contains no
 * movement. Start at {@link lockwright.encode.names.Names}. May import {@code railway}, {@code
 * system} and {@code verdict}.
 */
package lockwright.encode.names;
