/**
 * Why a lever is free or held in one state of a box, and what would free it: all from {@code
 * lockwright.working}, so the explanation is the box's own. Start reading at {@link
 * lockwright.explain.Explanation}. May import {@code railway}, {@code spec}, {@code working} and
 * {@code walk}.
 */
package lockwright.explain;
