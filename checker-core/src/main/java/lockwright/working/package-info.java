/**
 * The second reading of {@code docs/meaning.md}: a plain interpreter of frame, locking and
 * instruments. It plays movements by hand, says why one is not free, and gives each of its rules as
 * a plain condition that can also be put to a solver. Written from the page alone, so that it can
 * check what the encoding and the search claim; it shares no code with them and never will.
 *
 * <p>Start reading at {@link lockwright.working.Working}. May import {@code lockwright.railway} and
 * the packages inside it, and nothing else of ours.
 */
package lockwright.working;
