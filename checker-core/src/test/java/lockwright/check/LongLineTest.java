package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lockwright.railway.Box;
import lockwright.report.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A frame with many levers is read and proved. Here it has few, to spare the build; with {@code
 * -Dtest.jvm.options=-Djunctions=32} it has 192, the largest frame that a reference names.
 */
class LongLineTest {
  private static final int JUNCTIONS = Integer.getInteger("junctions", 3);

  @Test
  void a_line_of_junctions_is_proved_with_nothing_empty(@TempDir Path folder) throws Exception {
    Box box = Boxes.read(LongLine.write(folder, JUNCTIONS));
    assertThat(box.frame().levers()).hasSize(6 * JUNCTIONS);
    Findings findings = Boxes.check(box);
    System.out.println(box.frame().levers().size() + " levers: " + findings.tally());
    assertThat(findings.passes()).isTrue();
    assertThat(findings.tally().proved()).isGreaterThan(15 * JUNCTIONS);
  }
}
