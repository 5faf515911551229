package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Converses beside the published table of {@link JunctionSpecTest}. That a lock stands under both
 * of its levers in many tables: common practice, no source.
 */
class ConversesTest {
  private static final String PUBLISHED =
      """
      lever;released by;locks;locks both ways;releases;locked by
      1;3;4;;;
      2;3, 4;;;;
      3;;;4;1, 2;
      4;;;;2;1
      """;

  @TempDir Path folder;

  @BeforeEach
  void the_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
  }

  private BoxBuilder.Built read(String table) throws IOException {
    SpecsOnDisk.write(folder, "locking.csv", table);
    return BoxBuilder.read(folder);
  }

  private List<String> problems(String table) throws IOException {
    return read(table).problems().stream().map(p -> p.code() + " " + p.span()).toList();
  }

  @Test
  void right_ones_add_nothing() throws IOException {
    Box with = read(PUBLISHED).box().orElseThrow();
    Box without = BoxBuilder.read(SpecsOnDisk.JUNCTION).box().orElseThrow();
    assertThat(with.locking().stream().map(e -> e.words()))
        .isEqualTo(without.locking().stream().map(e -> e.words()).toList());
  }

  @Test
  void a_wrong_lever_in_either_row_is_found_from_both() throws IOException {
    assertThat(problems(PUBLISHED.replace("1, 2;\n", "1;\n")))
        .containsExactly("LOCK-117 locking.csv:3:3");
    assertThat(problems(PUBLISHED.replace("2;3, 4;;", "2;3;4;")))
        .containsExactly("LOCK-117 locking.csv:3:5", "LOCK-116 locking.csv:5:6");
    assertThat(problems(PUBLISHED.replace("4;;;;2;1", "4;;;;2;3")))
        .containsExactly("LOCK-117 locking.csv:2:5", "LOCK-116 locking.csv:5:8");
  }

  @Test
  void either_of_two_that_release_has_it() throws IOException {
    String table = PUBLISHED.replace("2;3, 4;;;;", "2;3 or 4;;;;");
    assertThat(problems(table)).isEmpty();
    assertThat(problems(table.replace("3;;;4;1, 2;", "3;;;4;1;")))
        .containsExactly("LOCK-117 locking.csv:3:3");
  }

  @Test
  void conditions_are_not_compared_and_a_column_that_is_not_used_neither() throws IOException {
    String table = PUBLISHED.replace("4;;;;2;1", "4;;;;2;");
    assertThat(problems(table)).isEmpty();
    assertThat(Files.readString(folder.resolve("locking.csv"))).contains("locked by");
    assertThat(
            problems(
                """
                lever;released by;locks;releases;when
                1;3;4;;2 N
                2;3, 4;;;
                3;;;1, 2;
                4;;;2;
                """))
        .isEmpty();
  }
}
