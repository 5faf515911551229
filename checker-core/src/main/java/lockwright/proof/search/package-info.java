/**
 * The engine that looks for traces, the shortest first. See {@link
 * lockwright.proof.search.ShortestTraces}.
 */
package lockwright.proof.search;
