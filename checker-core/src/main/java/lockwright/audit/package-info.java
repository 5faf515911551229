/**
 * Where a claim of the search becomes a verdict, or is refused. A run is replayed, movement by
 * movement, on {@code lockwright.working}; a certificate is checked against the movements that
 * {@code lockwright.working} gives, by trying all combinations while these are few, else by a
 * solver of another make. Nothing of the search or of its encoding is used but the names of things,
 * so a fault there shows as a disagreement here.
 *
 * <p>Start reading at {@link lockwright.audit.Auditor}. May import {@code lockwright.railway},
 * {@code lockwright.working}, {@code lockwright.verdict}, {@code lockwright.encode.names} and
 * {@code lockwright.audit.sat}; never {@code lockwright.proof}, nor {@code lockwright.encode}
 * itself.
 */
package lockwright.audit;
