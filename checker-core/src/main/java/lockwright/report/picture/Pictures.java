package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lockwright.spec.Problem;

/**
 * The pictures of a box. Each is one {@code svg} element as text, to stand in an HTML page or
 * alone: without script, style attributes or ids, so that several may stand in one page under a
 * strict content policy; the look comes from {@link #stylesheet()}. Its size is given in {@code em}
 * and grows with the text of the page; it may be wider than the page, so put it into an element of
 * class {@code picture-frame} with {@code tabindex="0"}, which scrolls it.
 *
 * <p>A state maps the quantities of a run to their values, by {@code docs/result.md} ("lever 3" to
 * "R"); what it leaves out is normal, and where there is no normal, not shown. Where a thing is
 * drawn does not depend on the state. A lever or points at anything but N, M or R is an {@link
 * IllegalArgumentException}. The same input gives the same text.
 */
public final class Pictures {
  private Pictures() {}

  /**
   * The track diagram, with points, bolts, arms, set routes and tokens as they are in the state.
   */
  public static String diagram(JsonNode result, Map<String, String> state) {
    return diagrams(result).apply(state);
  }

  /**
   * Where the places that the author gives in {@code drawing.yaml} leave no room, so that something
   * may lie on something else in the diagram. It is drawn all the same.
   */
  public static List<Problem> withoutRoom(JsonNode result) {
    return result.has("drawing") ? Room.problems(Placed.of(result).tight()) : List.of();
  }

  /**
   * The same of the bytes of {@code result.json}.
   *
   * @throws IllegalArgumentException if they are no JSON
   */
  public static List<Problem> withoutRoom(byte[] result) {
    try {
      return withoutRoom(new JsonMapper().readTree(result));
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON", e);
    }
  }

  /** The track diagram for many states of one box, which is quicker than one by one. */
  public static Function<Map<String, String>, String> diagrams(JsonNode result) {
    Function<BoxState, String> diagram = DiagramPicture.of(result);
    return state -> diagram.apply(new BoxState(result, state));
  }

  /** What stands otherwise than normal outside the frame, in words: arms, points, bolts, routes. */
  public static List<String> outside(JsonNode result, Map<String, String> state) {
    return StateWords.outside(result, new BoxState(result, state));
  }

  /** What stands otherwise than normal in the frame, in one sentence. */
  public static String levers(JsonNode result, Map<String, String> state) {
    return StateWords.ofLevers(result, new BoxState(result, state));
  }

  /** What the shapes of the track diagram mean; once a page is enough. */
  public static String key() {
    return KeyPicture.of();
  }

  /** The levers in a row, or in several, each in its place in the state. */
  public static String frame(JsonNode result, Map<String, String> state) {
    return FramePicture.of(result, new BoxState(result, state));
  }

  /**
   * The track diagram for a page whose script moves it: each part that moves stands in it in every
   * shape, as a {@code g} of class {@code variant}. Its {@code data-when} says when it is to be
   * seen, as JSON: quantities, each with the values of which it has one, for all of them. What
   * sections hold is not in it.
   */
  public static String movingDiagram(JsonNode result) {
    return DiagramPicture.moving(result);
  }

  /** Each lever of the frame in the same manner, a picture of its own. */
  public static List<String> movingLevers(JsonNode result) {
    return FramePicture.moving(result);
  }

  /** What each lever works, with its label: "stop signal 2, Down home". */
  public static List<String> leversInWords(JsonNode result) {
    List<String> words = new ArrayList<>();
    result.path("levers").forEach(lever -> words.add(FramePicture.words(result, lever)));
    return words;
  }

  /**
   * The locking, lever by lever. Each entry is a link to {@code #entry-N}, N being its index, from
   * 0, in {@code locking} of the result.
   */
  public static String matrix(JsonNode result) {
    return MatrixPicture.of(result);
  }

  /** The style of all pictures, for light and dark pages and print. */
  public static String stylesheet() {
    try (InputStream in = Pictures.class.getResourceAsStream("pictures.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
