/**
 * What a check found, and the formats that show it, one room each. Start at {@link
 * lockwright.report.Findings}. May import what it shows: {@code railway}, {@code audit}, {@code
 * verdict}, {@code spec} and {@code encode.names}; it imports no format.
 */
package lockwright.report;
