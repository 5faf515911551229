/**
 * The proof report: one page of HTML a box, made from {@code result.json} alone. Start at {@link
 * lockwright.report.page.ProofReport}. Everything goes through {@link
 * lockwright.report.html.Markup}, which escapes it. May import {@code report}, {@code report.html}
 * and {@code report.picture}.
 */
package lockwright.report.page;
