/**
 * The words for the console and the log. Pure: what was found goes in, lines come out, each with
 * everything escaped that could move the cursor or forge a line. Start at {@link
 * lockwright.report.text.Summary}. May import what {@code report} may.
 */
package lockwright.report.text;
