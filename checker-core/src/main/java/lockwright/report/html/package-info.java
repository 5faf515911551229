/**
 * What the pages of HTML share: the frame of a page with its content policy, markup that escapes
 * all that goes into it, tables, the parts of a result by what names them, and a run as lines in
 * words. May import {@code report} and {@code report.picture}.
 */
package lockwright.report.html;
