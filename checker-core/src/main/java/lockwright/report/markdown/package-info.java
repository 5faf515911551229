/**
 * A summary for a pull request, in Markdown, made from {@code result.json} alone. Start at {@link
 * lockwright.report.markdown.MarkdownSummary}. May import {@code report} and {@code report.result}.
 */
package lockwright.report.markdown;
