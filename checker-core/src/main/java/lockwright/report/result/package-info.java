/**
 * What a {@code result.json} says, read back for the formats that are made from its bytes. Start at
 * {@link lockwright.report.result.CheckedBox}. May import {@code report}.
 */
package lockwright.report.result;
