package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lockwright.report.lesson.LessonProblems;
import lockwright.report.picture.PictureProblems;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What `docs/spec.md` shows is what the reader takes. */
class SpecPageTest {
  private static final Path PAGE = Path.of("..", "docs", "spec.md");

  @TempDir private Path folder;

  @Test
  void the_junction_on_the_page_is_the_published_one() throws IOException {
    for (String file : new String[] {"plan.yaml", "frame.yaml", "locking.csv"}) {
      SpecsOnDisk.write(folder, file, shown("`" + file + "`\n"));
    }
    Box shown = BoxBuilder.read(folder).box().orElseThrow();
    Box published = BoxBuilder.read(SpecsOnDisk.JUNCTION).box().orElseThrow();
    assertThat(shown.locking().stream().map(e -> e.words()))
        .isEqualTo(published.locking().stream().map(e -> e.words()).toList());
    assertThat(shown.frame().levers().stream().map(l -> l.work()))
        .isEqualTo(published.frame().levers().stream().map(l -> l.work()).toList());
    assertThat(shown.routes()).isEqualTo(published.routes());
  }

  @Test
  void the_section_on_the_page_fits_the_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.change(folder, "plan.yaml", ", branch: block}", "}");
    SpecsOnDisk.write(folder, "sections.yaml", shown("## `sections.yaml`\n"));
    assertThat(BoxBuilder.read(folder).problems()).isEmpty();
  }

  @Test
  void the_table_in_yaml_on_the_page_can_be_read() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    Files.delete(folder.resolve("locking.csv"));
    SpecsOnDisk.write(folder, "locking.yaml", shown("## `locking.yaml`\n"));
    assertThat(BoxBuilder.read(folder).problems())
        .as("only levers 5, 6 and 7 are not of the junction")
        .allMatch(p -> p.code().equals("LOCK-104") && p.span().line() == 5)
        .hasSize(3);
  }

  @Test
  void the_controls_on_the_page_fit_the_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.write(folder, "controls.yaml", shown("## `controls.yaml`\n"));
    assertThat(BoxBuilder.read(folder).problems()).isEmpty();
  }

  @Test
  void the_waivers_on_the_page_fit_the_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.write(folder, "waivers.yaml", shown("## `waivers.yaml`\n"));
    assertThat(BoxBuilder.read(folder).problems()).isEmpty();
    assertThat(BoxBuilder.read(folder).expectations()).hasSize(2);
  }

  @Test
  void the_drawing_on_the_page_fits_the_junction_and_has_room() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.write(folder, "drawing.yaml", shown("## `drawing.yaml`\n"));
    BoxBuilder.Built built = BoxBuilder.read(folder);
    assertThat(built.problems()).isEmpty();
    assertThat(built.box().orElseThrow().drawing().spots()).hasSize(4);
    assertThat(PictureProblems.of(built.box().orElseThrow())).isEmpty();
  }

  /** Both questions of the page are about levers that are held. */
  @Test
  void the_lessons_on_the_page_fit_the_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.write(folder, "lessons.yaml", shown("## `lessons.yaml`\n"));
    BoxBuilder.Built built = BoxBuilder.read(folder);
    assertThat(built.problems()).isEmpty();
    assertThat(built.teaching().whyNots()).hasSize(2);
    assertThat(SpecsOnDisk.places(LessonProblems.of(built)))
        .containsExactly("LESSON-201 lessons.yaml:4:4");
  }

  /** The first block of code after a heading. */
  private static String shown(String heading) throws IOException {
    String page = Files.readString(PAGE);
    Matcher block = Pattern.compile("```\\w*\n(.*?)```", Pattern.DOTALL).matcher(page);
    return Optional.of(page.indexOf(heading))
        .filter(from -> from >= 0 && block.find(from))
        .map(from -> block.group(1))
        .orElseThrow(() -> new AssertionError("nothing shown under " + heading));
  }
}
