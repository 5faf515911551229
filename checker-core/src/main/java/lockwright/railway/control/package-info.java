/**
 * What acts on levers and arms from outside the frame: lever locks and arm controls, and the
 * conditions that they need; {@code docs/meaning.md} 2.9. Start at {@link
 * lockwright.railway.control.Controls}. Imports {@code spec} for places only.
 */
package lockwright.railway.control;
