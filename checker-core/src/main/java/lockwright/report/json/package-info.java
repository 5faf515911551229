/**
 * The findings as data, {@code result.json}: all that another report may show, so that each can be
 * made from this file alone. Start at {@link lockwright.report.json.ResultJson}, and at {@link
 * lockwright.report.json.Result} for what is in it; {@code specs/result.schema.json} is its schema
 * and {@code docs/result.md} its description. The records here have the shape of the file. May
 * import {@code report} and what it shows.
 */
package lockwright.report.json;
