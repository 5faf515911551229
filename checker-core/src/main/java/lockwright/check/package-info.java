/** The main flow, on one page: {@link lockwright.check.Check}. May import everything. */
package lockwright.check;
