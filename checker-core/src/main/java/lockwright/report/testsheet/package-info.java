/**
 * The locking test sheet and the pulling orders as text, as a table of commas, and as a page to be
 * printed: {@link lockwright.report.testsheet.Papers}. May import {@code report}, {@code
 * report.html}, {@code testsheet}, {@code walk}, {@code working}, {@code railway} and {@code spec}.
 */
package lockwright.report.testsheet;
