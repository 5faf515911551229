/**
 * What a search says of a target of a transition system: never, reached, unknown. Start at {@link
 * lockwright.verdict.Verdict}. May import {@code system}.
 */
package lockwright.verdict;
