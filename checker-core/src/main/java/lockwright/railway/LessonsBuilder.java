package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lockwright.railway.frame.Lever;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.teaching.InLesson;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.teaching.WhyNot;
import lockwright.railway.teaching.Words;
import lockwright.spec.LessonsFile;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.Written;

/**
 * Makes what the trainer has written for the lessons: requirements and levers must be those of the
 * box. Whether a lesson has such a step, and a lever is held, is seen when the lessons are made.
 */
final class LessonsBuilder {
  private static final Pattern OF_LEVER = Pattern.compile("(pull|replace) +(.*)");
  private static final Pattern NUMBERED = Pattern.compile("(.*) \\(([1-9])\\)");

  private final Map<String, Requirement> requirements = new LinkedHashMap<>();
  private final Map<String, Lever> levers = new LinkedHashMap<>();
  private final Problems problems;

  private LessonsBuilder(Box box, Problems problems) {
    box.requirements().forEach(r -> requirements.put(r.id(), r));
    box.frame().levers().forEach(l -> levers.put(l.id(), l));
    this.problems = problems;
  }

  /** Only worth having if no problem was told. */
  static Teaching build(LessonsFile file, String digest, Box box, Problems problems) {
    LessonsBuilder builder = new LessonsBuilder(box, problems);
    return new Teaching(
        text(file.introduction()),
        text(file.closing()),
        file.lessons().stream().map(builder::inLesson).toList(),
        file.whyNots().stream().map(builder::whyNot).toList(),
        digest);
  }

  private static String text(Optional<Written> written) {
    return written.map(Written::text).orElse("");
  }

  private InLesson inLesson(LessonsFile.InLesson item) {
    Written id = item.id();
    Requirement requirement = requirements.get(id.text());
    if (requirement == null) {
      problems.add(
          Message.LESSON_UNKNOWN_INSTANCE,
          id.at(),
          "the box has no requirement " + id.quoted(),
          Problems.didYouMean(
              id.text(),
              requirements.keySet(),
              "write a name just as the list of lessons or check.txt has it"));
    } else if (requirement.possibility()
        && !(requirement instanceof Requirement.RouteCanBeCleared)) {
      problems.add(
          Message.LESSON_OF_NO_KIND,
          id.at(),
          "no lesson is ever made of " + id.quoted(),
          "write the words in the lesson of a requirement of safety or of 'route can be cleared',"
              + " or ask under 'why not'");
    }
    return new InLesson(id.text(), words(item.words()), id.at());
  }

  private Words words(LessonsFile.Words words) {
    return new Words(
        text(words.introduction()),
        text(words.closing()),
        words.steps().stream().map(this::beside).toList());
  }

  private Words.Beside beside(LessonsFile.Beside beside) {
    String step = beside.step().text();
    Matcher numbered = NUMBERED.matcher(step);
    int time = numbered.matches() ? Integer.parseInt(numbered.group(2)) : 1;
    String movement = numbered.matches() ? numbered.group(1) : step;
    Matcher ofLever = OF_LEVER.matcher(movement);
    if (ofLever.matches()) {
      lever(beside.step(), ofLever.group(2));
      movement = ofLever.group(1) + " " + ofLever.group(2);
    }
    return new Words.Beside(movement, time, beside.words().text(), beside.step().at());
  }

  private WhyNot whyNot(LessonsFile.WhyNot asked) {
    List<WhyNot.First> first = new ArrayList<>();
    asked.first().forEach(f -> first(f).ifPresent(first::add));
    asked.reversed().forEach(l -> lever(l, l.text()));
    Written lever = asked.lever();
    boolean reversed = asked.reversed().stream().anyMatch(l -> l.text().equals(lever.text()));
    if (lever(lever, lever.text()) && asked.pulled() == reversed) {
      problems.add(
          Message.WHY_NOT_STANDS_THERE,
          lever.at(),
          "lever "
              + lever.text()
              + (reversed
                  ? " stands reversed, and cannot be pulled"
                  : " stands normal, and cannot be replaced"),
          reversed
              ? "ask why it cannot be replaced, or take it out of 'reversed'"
              : "ask why it cannot be pulled, or name it among 'reversed'");
    }
    return new WhyNot(
        asked.title().text(),
        first,
        asked.reversed().stream().map(Written::text).toList(),
        lever.text(),
        words(asked.words()),
        asked.title().at(),
        lever.at());
  }

  private Optional<WhyNot.First> first(Written movement) {
    Matcher ofLever = OF_LEVER.matcher(movement.text());
    if (!ofLever.matches()) {
      problems.add(
          Message.WHY_NOT_FIRST,
          movement.at(),
          movement.quoted() + " is no movement of a lever",
          "write pull or replace and the number of the lever: pull 2");
      return Optional.empty();
    }
    lever(movement, ofLever.group(2));
    return Optional.of(
        new WhyNot.First(ofLever.group(2), ofLever.group(1).equals("pull"), movement.at()));
  }

  /** Whether the frame has the lever, and it moves; else it is told. */
  private boolean lever(Written at, String id) {
    Lever lever = levers.get(id);
    if (lever == null) {
      problems.add(
          Message.LESSON_LEVER,
          at.at(),
          "the frame has no lever " + new Written(id, at.at(), false).quoted(),
          Problems.didYouMean(id, levers.keySet(), "write the number of a lever alone"));
    } else if (!lever.work().moves()) {
      problems.add(
          Message.LESSON_LEVER,
          at.at(),
          "lever " + id + " is spare or out of use, and never moves",
          "name another lever");
    }
    return lever != null && lever.work().moves();
  }
}
