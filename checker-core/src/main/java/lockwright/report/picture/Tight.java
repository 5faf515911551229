package lockwright.report.picture;

/**
 * Two places given that leave no room for what stands between or beside them.
 *
 * @param along whether from left to right, rather than from the top
 * @param least how far apart they should be, in the author's units; nothing if he has them on one
 *     spot of one line
 */
record Tight(Given first, Given second, boolean along, double least) {}
