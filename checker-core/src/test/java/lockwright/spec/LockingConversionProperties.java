package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** A table goes from CSV to YAML and back, and nothing in it changes. */
class LockingConversionProperties {
  private static final Path SCHEMA = Path.of("..", "specs", "locking.schema.json");
  private static Path folder;
  private static Schema schema;

  @BeforeContainer
  static void make_a_folder_and_read_the_schema() throws IOException {
    folder = Files.createTempDirectory("table");
    schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(new ObjectMapper().readTree(SCHEMA.toFile()));
  }

  @AfterContainer
  static void remove_it() throws IOException {
    for (Path file : SpecsOnDisk.children(folder)) {
      Files.delete(file);
    }
    Files.delete(folder);
  }

  @Property(tries = 200, seed = "20261125")
  void there_and_back_the_entries_are_the_same_and_the_bytes_too(@ForAll("tables") List<Row> table)
      throws IOException {
    List<String> entries = table.stream().flatMap(Row::entries).toList();
    Files.deleteIfExists(folder.resolve("locking.yaml"));
    String csv = LockingWriter.csv(new LockingFile(span(), table.stream().map(Row::read).toList()));
    Files.writeString(folder.resolve("locking.csv"), csv);
    assertThat(WrittenTable.csv(csv)).isEqualTo(entries);

    String yaml = converted("locking.yaml");
    assertThat(WrittenTable.yaml(yaml)).isEqualTo(entries);
    assertThat(schema.validate(WrittenTable.YAML.readTree(yaml))).isEmpty();

    assertThat(converted("locking.csv")).isEqualTo(csv);
    assertThat(converted("locking.yaml")).isEqualTo(yaml);
  }

  private static String converted(String to) throws IOException {
    LockingConversion.Done done = LockingConversion.convert(folder, SpecFolder.read(folder));
    assertThat(SpecsOnDisk.children(folder)).containsExactly(folder.resolve(to));
    assertThat(done.to()).isEqualTo(to);
    assertThat(done.lost()).isEmpty();
    return Files.readString(folder.resolve(to));
  }

  /** A row; each lock is one lever, or several with "or" between them. */
  private record Row(
      String lever,
      Map<String, List<String>> locks,
      List<String> when,
      boolean holds,
      String note) {

    private Stream<String> each() {
      return LockingCells.LOCKS.stream()
          .flatMap(column -> locks.get(column).stream().map(lock -> column + "|" + lock));
    }

    Stream<String> entries() {
      String rest =
          String.join(" and ", when) + "|" + (holds && !when.isEmpty() ? "holds" : "") + "|" + note;
      return each().map(lock -> lever + "|" + lock + "|" + rest);
    }

    LockingFile.Row read() {
      return new LockingFile.Row(
          written(lever),
          each().map(lock -> lock.split("\\|")).map(two -> lock(two[0], two[1])).toList(),
          when.stream().map(w -> w.split(" ")).map(Row::condition).toList(),
          holds && !when.isEmpty(),
          note);
    }

    private static LockingFile.Lock lock(String column, String levers) {
      return new LockingFile.Lock(
          column, Stream.of(levers.split(" or ")).map(Row::written).toList());
    }

    private static LockingFile.Condition condition(String[] two) {
      return new LockingFile.Condition(written(two[0]), two[1].charAt(0));
    }

    private static Written written(String text) {
      return new Written(text, span(), true);
    }
  }

  private static Span span() {
    return new Span("table", 1, 1);
  }

  @Provide
  Arbitrary<List<Row>> tables() {
    return Combinators.combine(
            levers(), locks(), conditions(), Arbitraries.of(true, false), notes())
        .as(Row::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6);
  }

  private static Arbitrary<String> levers() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(1, 12).map(String::valueOf),
        Arbitraries.of("9999", "12A", "1E", "7N"));
  }

  private static Arbitrary<Map<String, List<String>>> locks() {
    Arbitrary<List<String>> releases =
        Arbitraries.frequencyOf(
                Tuple.of(4, levers()),
                Tuple.of(
                    1, levers().list().ofMinSize(2).ofMaxSize(3).map(l -> String.join(" or ", l))))
            .list()
            .ofMinSize(1)
            .ofMaxSize(4);
    Arbitrary<List<String>> others = levers().list().ofMaxSize(3);
    return Combinators.combine(releases, others.list().ofSize(LockingCells.LOCKS.size() - 1))
        .as(
            (first, rest) -> {
              Map<String, List<String>> locks = new HashMap<>();
              locks.put(LockingCells.LOCKS.get(0), first);
              for (int i = 0; i < rest.size(); i++) {
                locks.put(LockingCells.LOCKS.get(i + 1), rest.get(i));
              }
              return locks;
            });
  }

  private static Arbitrary<List<String>> conditions() {
    return Combinators.combine(levers(), Arbitraries.of(" N", " R"))
        .as((lever, position) -> lever + position)
        .list()
        .ofMaxSize(2);
  }

  /** Any text, without blanks at its ends, which no reading keeps. */
  private static Arbitrary<String> notes() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "\"",
            "'",
            ";",
            ",",
            "#",
            " #",
            ": ",
            ":",
            "=1+2",
            "- ",
            "\\",
            "\\n",
            "\n",
            "\r\n",
            "\r",
            "\t",
            " ",
            "  ",
            "{",
            "}",
            "[",
            "]",
            "&a",
            "*a",
            "!x",
            "%",
            "@",
            "|",
            ">",
            "?",
            "~",
            "yes",
            "null",
            "010",
            "x",
            "sheet 2",
            "\u00e4\u00f6\u00fc\u00df",
            "\u00a0",
            "\u3000",
            "\uD83D\uDE82");
    return pieces
        .list()
        .ofMaxSize(8)
        .map(
            list ->
                list.stream()
                    .collect(Collectors.joining())
                    .replaceAll("^[ \t\r\n]+|[ \t\r\n]+$", ""))
        .map(note -> note.isBlank() ? "" : note);
  }
}
