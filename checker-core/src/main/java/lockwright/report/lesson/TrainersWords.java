package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.Box;
import lockwright.railway.teaching.Words;
import lockwright.report.html.Markup;
import lockwright.spec.Message;
import lockwright.spec.Problem;
import lockwright.spec.Problems;

/**
 * The trainer's own words in one lesson, each beside the step that it names.
 *
 * @param beside by the numbers of the steps
 */
record TrainersWords(Words words, SortedMap<Integer, List<String>> beside) {
  private static final int MOST_TOLD = 24;
  private static final String WHOSE = "From the trainer";

  /** Finds the steps; words that have none are told. */
  static TrainersWords of(
      String lesson, Words words, Box box, List<Moment> moments, Problems problems) {
    StepNames names = new StepNames(box);
    SortedMap<Integer, List<String>> beside = new TreeMap<>();
    for (Words.Beside one : words.steps()) {
      List<Moment> fitting =
          moments.stream().filter(m -> names.of(m).contains(one.movement())).toList();
      if (fitting.size() < one.time()) {
        problems.add(
            Message.LESSON_NO_SUCH_STEP,
            one.at(),
            missing(lesson, one, fitting.size()),
            "write the words beside another step, or take them away; its steps are: "
                + told(names.all(moments)));
      } else {
        int number = fitting.get(one.time() - 1).number();
        beside.computeIfAbsent(number, n -> new ArrayList<>()).add(one.words());
      }
    }
    return new TrainersWords(words, beside);
  }

  private static String missing(String lesson, Words.Beside one, int fitting) {
    return "the lesson "
        + Problem.quote(lesson)
        + " has "
        + (fitting == 0 ? "no step " : "not so often a step ")
        + Problem.quote(one.movement());
  }

  private static String told(List<String> names) {
    return names.size() <= MOST_TOLD
        ? String.join("; ", names)
        : String.join("; ", names.subList(0, MOST_TOLD)) + "; and " + (names.size() - MOST_TOLD);
  }

  /** Whether he has written anything. */
  boolean any() {
    return !words.equals(Words.NONE);
  }

  void introduction(Markup m) {
    block(m, words.introduction());
  }

  void closing(Markup m) {
    block(m, words.closing());
  }

  void beside(Moment moment, Markup m) {
    beside.getOrDefault(moment.number(), List.of()).forEach(text -> block(m, text));
  }

  /**
   * A paragraph for each line that is not empty, which are those of YAML: folded, or as written.
   */
  static void block(Markup m, String text) {
    if (text.isEmpty()) {
      return;
    }
    m.open("div", "class", "trainer", "role", "note", "aria-label", WHOSE);
    m.element("p", WHOSE, "class", "whose");
    text.lines()
        .map(l -> l.replace('\t', ' ').strip())
        .filter(l -> !l.isEmpty())
        .forEach(line -> m.element("p", line));
    m.close();
  }
}
