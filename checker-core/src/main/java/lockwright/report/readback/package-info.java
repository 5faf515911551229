/**
 * The read-back: what the files of a spec say of a box, written for the person who compares them
 * with the plan on paper. Start at {@link lockwright.report.readback.ReadBack}. Both forms show the
 * same {@link lockwright.report.readback.Item}s. May import {@code railway}.
 */
package lockwright.report.readback;
