/**
 * The second solver, of another make than the one that searches: Sat4j, put to questions that are
 * written as conditions of {@code lockwright.working}. Start reading at {@link
 * lockwright.audit.sat.SecondSolver}. The only room that imports Sat4j; may import {@code
 * lockwright.working}, {@code lockwright.railway} and {@code lockwright.encode.names}.
 */
package lockwright.audit.sat;
