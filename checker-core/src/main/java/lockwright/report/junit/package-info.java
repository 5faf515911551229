/**
 * Verdicts for build servers, as JUnit XML, made from {@code result.json} alone. Start at {@link
 * lockwright.report.junit.JunitXml}. May import {@code report} and {@code report.result}.
 */
package lockwright.report.junit;
