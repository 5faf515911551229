package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lockwright.railway.BoxBuilder;
import lockwright.report.Findings;
import lockwright.report.lesson.LessonProblems;
import lockwright.report.text.Summary;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/guide.md lets its reader write gives what it says that the build says. */
class GuideTest {
  private static final Pattern FILE =
      Pattern.compile("`([a-z]+\\.(?:yaml|csv))`\n```[a-z]*\n(.*?)```", Pattern.DOTALL);

  @Test
  void the_guide_leads_to_what_it_shows(@TempDir Path folder) throws IOException {
    String page = Files.readString(Path.of("..", "docs", "guide.md"));
    Matcher files = FILE.matcher(page);
    while (files.find()) {
      Files.writeString(folder.resolve(files.group(1)), files.group(2));
    }
    assertThat(folder.toFile().list()).hasSize(5);

    Findings asOnPaper = Boxes.check(Boxes.read(folder));
    assertThat(page)
        .contains("```\n" + String.join("\n", Summary.failing(asOnPaper)) + "\n```")
        .contains("\n2;;4, 5;\n");
    assertThat(SpecsOnDisk.places(LessonProblems.of(BoxBuilder.read(folder))))
        .as("lever 4 is free, as the page says")
        .containsExactly("LESSON-203 lessons.yaml:4:11");

    Path table = folder.resolve("locking.csv");
    Files.writeString(table, Files.readString(table).replace("\n2;;5;\n", "\n2;;4, 5;\n"));
    Findings mended = Boxes.check(Boxes.read(folder));
    assertThat(mended.passes()).isTrue();
    assertThat(LessonProblems.of(BoxBuilder.read(folder))).isEmpty();
    assertThat(page)
        .contains(
            "`Osier End: %d requirements of safety proved, %d possibilities shown`"
                .formatted(mended.tally().proved(), mended.tally().shown()));
  }
}
