package lockwright.report.json;

import org.junit.jupiter.api.Nested;

/** All that looks at {@link Results}: together, since two processes would check each box twice. */
class ResultTest {
  @Nested
  class Json extends ResultJsonChecks {}

  @Nested
  class Schema extends ResultSchemaChecks {}

  @Nested
  class Assumptions extends AssumptionsChecks {}

  @Nested
  class HostileLabels extends HostileLabelsChecks {}
}
