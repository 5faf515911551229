package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lockwright.railway.teaching.InLesson;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.teaching.WhyNot;
import lockwright.railway.teaching.Words;
import lockwright.spec.Span;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What `lessons.yaml` may say of a box. The form is our own: `docs/spec.md`. */
class LessonsFileTest {
  @TempDir private Path folder;

  @BeforeEach
  void a_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
  }

  private BoxBuilder.Built with(String lessons) throws IOException {
    SpecsOnDisk.write(folder, "lessons.yaml", lessons);
    return BoxBuilder.read(folder);
  }

  private static Span at(int line, int column) {
    return new Span("lessons.yaml", line, column);
  }

  @Test
  void a_box_without_the_file_has_nothing_from_a_trainer() {
    assertThat(BoxBuilder.read(folder).teaching()).isEqualTo(Teaching.NONE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"{}", "lessons: {}", "why not: {}"})
  void so_does_an_empty_list(String empty) throws IOException {
    BoxBuilder.Built built = with(empty + "\n");
    assertThat(built.problems()).isEmpty();
    assertThat(built.teaching().lessons()).isEmpty();
    assertThat(built.teaching().whyNots()).isEmpty();
  }

  /** A check rests on none of it, so a result stands while the words change. */
  @Test
  void the_file_is_none_of_those_that_a_check_rests_on() throws IOException {
    BoxBuilder.Built without = BoxBuilder.read(folder);
    BoxBuilder.Built one = with("introduction: One.\n");
    BoxBuilder.Built other = with("introduction: Another.\n");
    assertThat(one.digests()).isEqualTo(without.digests()).isEqualTo(other.digests());
    assertThat(one.teaching().digest()).hasSize(64).isNotEqualTo(other.teaching().digest());
  }

  @Test
  void all_forms_are_read() {
    Teaching teaching = BoxBuilder.read(SpecsOnDisk.EVERY_FORM).teaching();
    Words words =
        new Words(
            "What the lesson is on.",
            "What was learnt.",
            List.of(
                new Words.Beside("the beginning", 1, "Look at the frame.", at(8, 7)),
                new Words.Beside("pull 3", 1, "This is the one.", at(9, 7)),
                new Words.Beside("pull 3", 2, "And again.", at(10, 7))));
    assertThat(teaching)
        .isEqualTo(
            new Teaching(
                "Words before all lessons.",
                "Words after them.",
                List.of(new InLesson("points set: signal 3", words, at(4, 4))),
                List.of(
                    new WhyNot(
                        "Twice for one withdrawal",
                        List.of(
                            new WhyNot.First("2", true, at(13, 13)),
                            new WhyNot.First("2", false, at(13, 21))),
                        List.of(),
                        "2",
                        Words.NONE,
                        at(12, 3),
                        at(14, 11)),
                    new WhyNot(
                        "Under the signal",
                        List.of(),
                        List.of("8", "2"),
                        "8",
                        new Words(
                            "",
                            "",
                            List.of(new Words.Beside("replace 8", 1, "It is held.", at(18, 13)))),
                        at(15, 3),
                        at(17, 14))),
                teaching.digest()));
  }

  /** The box is whole but for what is said of it, so both kinds of fault are told at once. */
  @Test
  void a_fault_of_form_hides_no_unknown_name() throws IOException {
    BoxBuilder.Built built =
        with(
            """
            introduktion: x
            lessons:
              'points set: signal 9': {steps: {pull 9: '', pull 8: y}}
              'points set: signal 1': [x]
            why not:
              One: {reversed: [3, 3], pull: 7}
              Two: {reversed: 3}
              Three: {first: pull 3, pull: 1}
              Four: {replace: 9}
            """);
    assertThat(SpecsOnDisk.places(built.problems()))
        .containsExactly(
            "YAML-106 lessons.yaml:1:1",
            "LESSON-101 lessons.yaml:3:4",
            "YAML-110 lessons.yaml:3:45",
            "LESSON-104 lessons.yaml:3:48",
            "YAML-108 lessons.yaml:4:27",
            "YAML-112 lessons.yaml:6:23",
            "LESSON-104 lessons.yaml:6:33",
            "LESSON-103 lessons.yaml:7:3",
            "YAML-108 lessons.yaml:8:18",
            "LESSON-104 lessons.yaml:9:19");
    assertThat(built.box()).isEmpty();
    assertThat(built.teaching()).isEqualTo(Teaching.NONE);
  }

  @Test
  void the_nearest_name_is_offered() throws IOException {
    assertThat(with("lessons: {'point set: signal 1': {closing: c}}\n").problems())
        .singleElement()
        .matches(p -> p.fix().startsWith("did you mean 'points set: signal 1'?"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lesson.yaml", "lessons.yml", "Lessons.yaml"})
  void a_misspelt_file_name_is_told(String name) throws IOException {
    SpecsOnDisk.write(folder, name, "{}\n");
    assertThat(SpecsOnDisk.places(BoxBuilder.read(folder).problems()))
        .containsExactly("FILE-107 " + name + ":1:1");
  }
}
