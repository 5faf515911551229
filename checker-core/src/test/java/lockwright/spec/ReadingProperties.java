package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lockwright.railway.BoxBuilder;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever the files hold, the outcome is a box or problems, never an exception. */
class ReadingProperties {
  private static final List<String> FILES =
      List.of(
          "plan.yaml",
          "frame.yaml",
          "locking.csv",
          "locking.yaml",
          "sections.yaml",
          "controls.yaml",
          "waivers.yaml",
          "drawing.yaml",
          "lessons.yaml");
  private static Path folder;

  @BeforeContainer
  static void make_a_folder() throws IOException {
    folder = Files.createTempDirectory("spec");
  }

  @AfterContainer
  static void remove_it() throws IOException {
    empty();
    Files.delete(folder);
  }

  @Property(tries = 100)
  void random_bytes_give_only_problems(@ForAll("file") String file, @ForAll byte[] bytes)
      throws IOException {
    fill(SpecsOnDisk.EVERY_FORM);
    Files.write(folder.resolve(file), bytes);
    assertThat(BoxBuilder.read(folder)).isNotNull();
  }

  @Property(tries = 300)
  void random_changes_give_a_box_or_problems(
      @ForAll("file") String file, @ForAll("changes") List<Change> changes) throws IOException {
    fill(file.equals("locking.csv") ? SpecsOnDisk.JUNCTION : SpecsOnDisk.EVERY_FORM);
    String text = Files.readString(folder.resolve(file));
    for (Change change : changes) {
      text = change.in(text);
    }
    SpecsOnDisk.write(folder, file, text);
    assertThat(BoxBuilder.read(folder)).isNotNull();
  }

  /** Takes some characters out at a place, and puts a piece in. */
  private record Change(int place, int out, String in) {
    String in(String text) {
      int from = Math.floorMod(place, text.length() + 1);
      int to = Math.min(text.length(), from + out);
      return text.substring(0, from) + in + text.substring(to);
    }
  }

  @Provide
  Arbitrary<String> file() {
    return Arbitraries.of(FILES);
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "",
            "",
            "x",
            "9",
            "\"",
            "'",
            "{",
            "}",
            "[",
            "]",
            ",",
            ";",
            ":",
            ": ",
            "\n",
            "\r",
            "  ",
            "-",
            "- ",
            "#",
            "&a ",
            "*a",
            "!!int ",
            "---\n",
            "trap",
            "yes",
            "approach",
            "Holm",
            "4",
            " or ",
            " and ",
            " + ",
            " > ",
            "\t",
            "\u0000",
            "\u202e",
            "\uD83D\uDE82",
            "?",
            "|",
            ">\n",
            "%");
    return Combinators.combine(
            Arbitraries.integers(), Arbitraries.integers().between(0, 12), pieces)
        .as(Change::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  private static void fill(Path spec) throws IOException {
    empty();
    SpecsOnDisk.copy(spec, folder);
  }

  private static void empty() throws IOException {
    for (Path file : SpecsOnDisk.children(folder)) {
      Files.delete(file);
    }
  }
}
