package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lockwright.report.lesson.LessonProblems;
import lockwright.report.picture.PictureProblems;
import lockwright.spec.Message;
import lockwright.spec.Problem;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every message has an example that gives it at the place where it should, and a page. */
class RejectedExamplesTest {
  private static final Path PAGES = Path.of("..", "docs", "messages");

  @Test
  void every_message_has_an_example_that_gives_it(@TempDir Path large) throws IOException {
    Set<String> given = new TreeSet<>();
    for (Path example : SpecsOnDisk.children(SpecsOnDisk.REJECTED)) {
      List<Problem> problems = problems(example);
      assertThat(SpecsOnDisk.places(problems))
          .as(example.getFileName().toString())
          .isEqualTo(Files.readAllLines(example.resolve("expected.txt")));
      String code = codeOf(example);
      assertThat(problems).as(code).anyMatch(p -> p.code().equals(code));
      given.add(code);
    }
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, large); // too large an example to keep
    SpecsOnDisk.write(large, "frame.yaml", "#".repeat(1_000_001));
    assertThat(SpecsOnDisk.places(BoxBuilder.read(large).problems()))
        .containsExactly("FILE-104 frame.yaml:1:1");
    given.add(Message.FILE_TOO_LARGE.code());
    assertThat(given).isEqualTo(codes());
  }

  /** Of the files; or, if these can be read, of the lessons and the diagram made of them. */
  private static List<Problem> problems(Path example) {
    BoxBuilder.Built built = BoxBuilder.read(example);
    if (built.box().isEmpty()) {
      return built.problems();
    }
    List<Problem> problems = new ArrayList<>(LessonProblems.of(built));
    problems.addAll(PictureProblems.of(built.box().get()));
    return problems;
  }

  @Test
  void every_message_has_a_page_and_every_page_a_message() throws IOException {
    Set<String> pages = new TreeSet<>();
    for (Path page : SpecsOnDisk.children(PAGES)) {
      String code = page.getFileName().toString().replaceFirst("\\.md$", "");
      assertThat(Files.readAllLines(page).get(0)).startsWith("# " + code + ": ");
      pages.add(code);
    }
    assertThat(pages).isEqualTo(codes());
  }

  @Test
  void a_page_links_to_the_examples_of_its_message() throws IOException {
    for (Path example : SpecsOnDisk.children(SpecsOnDisk.REJECTED)) {
      assertThat(PAGES.resolve(codeOf(example) + ".md"))
          .content()
          .contains("(../../examples/rejected/" + example.getFileName() + ")");
    }
  }

  private static String codeOf(Path example) {
    return Arrays.stream(Message.values())
        .map(Message::code)
        .filter(
            code ->
                example.getFileName().toString().toUpperCase(Locale.ROOT).startsWith(code + "-"))
        .findFirst()
        .orElseThrow(() -> new AssertionError(example + " names no message"));
  }

  private static Set<String> codes() {
    return Arrays.stream(Message.values())
        .map(Message::code)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
