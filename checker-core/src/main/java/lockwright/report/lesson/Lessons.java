package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import lockwright.audit.Audited;
import lockwright.audit.Played;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.teaching.InLesson;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.teaching.Words;
import lockwright.railway.words.Event;
import lockwright.report.Findings;
import lockwright.report.learner.LearnersFrame;
import lockwright.report.picture.Pictures;
import lockwright.report.result.Parts;
import lockwright.spec.Message;
import lockwright.spec.Problem;
import lockwright.spec.Problems;
import lockwright.walk.Walks;
import lockwright.working.Working;

/**
 * The lessons of a box, each one page of HTML that needs nothing else. The same result gives the
 * same characters.
 */
public final class Lessons {
  /** The page that leads to the others. */
  public static final String INDEX = "index.html";

  private Lessons() {}

  /** What all lessons of one box are made of. */
  record Made(
      JsonNode result,
      Parts anchors,
      Box box,
      Teaching teaching,
      Working parted,
      Working whole,
      Function<Map<String, String>, String> diagram) {}

  /**
   * What came of it.
   *
   * @param pages by their file names, with {@link #INDEX} among them, even where there is no
   *     lesson, and {@link LearnersFrame#FILE}, if everything of the box is proved or shown; none,
   *     if there are problems
   * @param problems of what the trainer has written, by place: it does not fit the lessons
   * @param unused of what he has written for lessons that are not made of this result, which is no
   *     fault
   */
  public record Outcome(
      SortedMap<String, String> pages, List<Problem> problems, List<Problem> unused) {
    public Outcome {
      pages = Collections.unmodifiableSortedMap(new TreeMap<>(pages));
      problems = List.copyOf(problems);
      unused = List.copyOf(unused);
      if (pages.isEmpty() == problems.isEmpty()) {
        throw new IllegalArgumentException("pages, or problems");
      }
    }
  }

  /**
   * The lessons.
   *
   * @param findings what was found, or stands when checked again
   * @param result the bytes of {@code result.json}, which are of these findings
   * @param teaching what the trainer has written for them
   * @throws IllegalArgumentException if the result is of other findings
   */
  public static Outcome of(Findings findings, byte[] result, Teaching teaching) {
    JsonNode json = read(result);
    Box box = findings.box();
    Made made =
        new Made(
            json,
            new Parts(json),
            box,
            teaching,
            Working.parted(box),
            Working.whole(box),
            Pictures.diagrams(json));
    Problems problems = new Problems();
    List<Lesson> lessons = new ArrayList<>();
    findings.audited().forEach(a -> lesson(made, a, problems).ifPresent(lessons::add));
    List<Problem> unused = unused(made, lessons);
    teaching
        .whyNots()
        .forEach(w -> WhyNotLesson.of(made, w, Walks.USUAL, problems).ifPresent(lessons::add));
    if (!problems.isEmpty()) {
      return new Outcome(new TreeMap<>(), problems.sorted(), unused);
    }
    SortedMap<String, String> pages = new TreeMap<>();
    for (Lesson lesson : lessons) {
      if (pages.put(lesson.file(), lesson.page()) != null) {
        throw new IllegalArgumentException("two lessons of one name: " + lesson.file());
      }
    }
    boolean frame = LearnersFrame.isFor(result);
    if (frame) {
      pages.put(LearnersFrame.FILE, LearnersFrame.of(result));
    }
    pages.put(INDEX, new Index(made, lessons, unused, frame).page());
    return new Outcome(pages, List.of(), unused);
  }

  /** A lesson on what is broken, or on how a route is cleared; nothing on anything else. */
  private static Optional<Lesson> lesson(Made made, Audited audited, Problems problems) {
    Requirement requirement = audited.requirement();
    Words words =
        made.teaching().lessons().stream()
            .filter(l -> l.requirement().equals(requirement.id()))
            .map(InLesson::words)
            .findFirst()
            .orElse(Words.NONE);
    if (audited instanceof Audited.Broken broken) {
      return Optional.of(
          RequirementLesson.of(
              made, requirement, broken.played(), true, List.of(), words, problems));
    } else if (audited instanceof Audited.Stranded stranded) {
      List<Event> goOn =
          stranded.helped().map(Played::steps).orElse(List.of()).stream()
              .skip(stranded.played().steps().size())
              .map(Played.Step::event)
              .toList();
      return Optional.of(
          RequirementLesson.of(made, requirement, stranded.played(), true, goOn, words, problems));
    } else if (audited instanceof Audited.Shown shown
        && requirement instanceof Requirement.RouteCanBeCleared) {
      return Optional.of(
          RequirementLesson.of(
              made, requirement, shown.played(), false, List.of(), words, problems));
    }
    return Optional.empty();
  }

  /** Words for lessons that there are not, so that none goes missing without a word. */
  private static List<Problem> unused(Made made, List<Lesson> lessons) {
    Problems unused = new Problems();
    List<String> names = lessons.stream().map(Lesson::name).toList();
    for (InLesson words : made.teaching().lessons()) {
      if (!names.contains(words.requirement())) {
        JsonNode instance = made.anchors().part("requirement", words.requirement());
        unused.add(
            Message.LESSON_NOT_MADE,
            words.at(),
            "there is no lesson "
                + Problem.quote(words.requirement())
                + " to put these words in: the requirement is "
                + instance.required("verdict").asText(),
            "keep them for when there is one again, or take them away");
      }
    }
    return unused.sorted();
  }

  private static JsonNode read(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON: " + e.getMessage(), e);
    }
  }
}
