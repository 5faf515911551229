/**
 * The engine that keeps, of the clauses written down with a system, those that are invariants. See
 * {@link lockwright.proof.written.WrittenInvariants}.
 */
package lockwright.proof.written;
