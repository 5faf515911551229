/**
 * The complete engine: property directed reachability. Start at {@link
 * lockwright.proof.pdr.PropertyDirected}.
 */
package lockwright.proof.pdr;
