/**
 * The proof report: one page of HTML a box, made from {@code result.json} alone. Start at {@link
 * lockwright.report.page.ProofReport}. Everything goes through {@link
 * lockwright.report.page.Markup}, which escapes it. May import {@code report} and {@code
 * report.picture}.
 */
package lockwright.report.page;
