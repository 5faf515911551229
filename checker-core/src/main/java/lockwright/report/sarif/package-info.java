/**
 * Findings for code hosts and editors, as SARIF 2.1.0 (OASIS), made from {@code result.json} alone.
 * Start at {@link lockwright.report.sarif.Sarif}. May import {@code report} and {@code
 * report.result}.
 */
package lockwright.report.sarif;
