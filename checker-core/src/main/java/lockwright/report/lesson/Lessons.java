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
import lockwright.railway.Box;
import lockwright.report.html.Anchors;
import lockwright.report.html.Movements;
import lockwright.report.picture.Pictures;
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
      Anchors anchors,
      Movements movements,
      Box box,
      Working parted,
      Working whole,
      Function<Map<String, String>, String> diagram) {}

  /**
   * The pages by their file names, with {@link #INDEX} among them, even where there is no lesson.
   *
   * @param result the bytes of {@code result.json}, which stands; its checking is the caller's
   * @param box the box that it is of
   * @throws IllegalArgumentException if the result does not hang together, or is of another box
   */
  public static SortedMap<String, String> of(byte[] result, Box box) {
    JsonNode json = read(result);
    Anchors anchors = new Anchors(json);
    Made made =
        new Made(
            json,
            anchors,
            new Movements(anchors),
            box,
            Working.parted(box),
            Working.whole(box),
            Pictures.diagrams(json));
    SortedMap<String, String> pages = new TreeMap<>();
    List<Lesson> lessons = new ArrayList<>();
    for (JsonNode instance : json.required("requirements")) {
      if (taught(instance)) {
        Lesson lesson = new Lesson(made, instance);
        lessons.add(lesson);
        if (pages.put(lesson.file(), lesson.page()) != null) {
          throw new IllegalArgumentException("two lessons of one name: " + lesson.file());
        }
      }
    }
    pages.put(INDEX, new Index(json, lessons).page());
    return pages;
  }

  /** Whether a lesson is made of it: what is broken, and how a route is cleared. */
  private static boolean taught(JsonNode instance) {
    return Lesson.breach(instance)
        || instance.required("verdict").asText().equals("shown")
            && instance.required("name").asText().equals("route can be cleared");
  }

  private static JsonNode read(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON: " + e.getMessage(), e);
    }
  }
}
