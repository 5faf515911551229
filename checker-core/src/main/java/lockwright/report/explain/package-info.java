/**
 * An explanation of a state in words, for the console: {@link
 * lockwright.report.explain.ExplanationText}. May import {@code report}, {@code explain}, {@code
 * walk}, {@code working}, {@code railway} and {@code spec}.
 */
package lockwright.report.explain;
