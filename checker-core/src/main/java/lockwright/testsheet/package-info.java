/**
 * The papers of a box that are tried on its frame: the locking test sheet and the pulling orders.
 * All from {@code lockwright.working}, and each line is played on it before it is given. Start
 * reading at {@link lockwright.testsheet.TestSheet}. May import {@code railway}, {@code working}
 * and {@code walk}.
 */
package lockwright.testsheet;
