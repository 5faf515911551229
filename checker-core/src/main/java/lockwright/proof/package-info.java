/**
 * The search for a certificate or a trace, one target or many at once. Start at {@link
 * lockwright.proof.Search}; each engine has a room below, which nothing here imports. May import
 * {@code system}, {@code solver} and {@code verdict}.
 */
package lockwright.proof;
