package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import lockwright.audit.Audited;
import lockwright.audit.Played;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.report.Findings;
import lockwright.report.learner.LearnersFrame;
import lockwright.report.picture.Pictures;
import lockwright.report.result.Parts;
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
      Working parted,
      Working whole,
      Function<Map<String, String>, String> diagram) {}

  /**
   * The pages by their file names, with {@link #INDEX} among them, even where there is no lesson;
   * and {@link LearnersFrame#FILE}, if everything of the box is proved or shown.
   *
   * @param findings what was found, or stands when checked again
   * @param result the bytes of {@code result.json}, which are of these findings
   * @throws IllegalArgumentException if they are of others
   */
  public static SortedMap<String, String> of(Findings findings, byte[] result) {
    JsonNode json = read(result);
    Box box = findings.box();
    Made made =
        new Made(
            json,
            new Parts(json),
            box,
            Working.parted(box),
            Working.whole(box),
            Pictures.diagrams(json));
    SortedMap<String, String> pages = new TreeMap<>();
    List<Lesson> lessons = new ArrayList<>();
    for (Audited audited : findings.audited()) {
      Lesson lesson = lesson(made, audited);
      if (lesson != null) {
        lessons.add(lesson);
        if (pages.put(lesson.file(), lesson.page()) != null) {
          throw new IllegalArgumentException("two lessons of one name: " + lesson.file());
        }
      }
    }
    boolean frame = LearnersFrame.isFor(result);
    if (frame) {
      pages.put(LearnersFrame.FILE, LearnersFrame.of(result));
    }
    pages.put(INDEX, new Index(json, lessons, frame).page());
    return pages;
  }

  /** A lesson on what is broken, or on how a route is cleared; null on anything else. */
  private static Lesson lesson(Made made, Audited audited) {
    if (audited instanceof Audited.Broken broken) {
      return new Lesson(made, broken.requirement(), broken.played(), true, List.of());
    } else if (audited instanceof Audited.Stranded stranded) {
      List<Event> goOn =
          stranded.helped().map(Played::steps).orElse(List.of()).stream()
              .skip(stranded.played().steps().size())
              .map(Played.Step::event)
              .toList();
      return new Lesson(made, stranded.requirement(), stranded.played(), true, goOn);
    } else if (audited instanceof Audited.Shown shown
        && shown.requirement() instanceof Requirement.RouteCanBeCleared) {
      return new Lesson(made, shown.requirement(), shown.played(), false, List.of());
    }
    return null;
  }

  private static JsonNode read(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON: " + e.getMessage(), e);
    }
  }
}
