package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.report.LeverWords;

/**
 * The frame as the signaller stands before it: a lever that is reversed has come towards him, so it
 * is drawn lower. Each says by colour and by word what it works.
 */
final class FramePicture {
  private static final int MOST_IN_A_ROW = 24;
  private static final double WIDTH = 46;
  private static final double MARGIN = 12;
  private static final double TOP = 6;
  private static final double HANDLE = 34;
  private static final double STROKE = 44;
  private static final double QUADRANT = TOP + HANDLE + STROKE;
  private static final double PLACE = QUADRANT + 16;
  private static final double PLATE = PLACE + 8;
  private static final double WORK = PLATE + 34;
  private static final double LABEL = WORK + 22;
  private static final double LABEL_LENGTH = 130;
  private static final double ROW = LABEL + LABEL_LENGTH + 14;

  private final BoxState state;
  private final Svg svg;

  private FramePicture(Svg svg, BoxState state) {
    this.state = state;
    this.svg = svg;
  }

  static String of(JsonNode result, BoxState state) {
    JsonNode levers = result.path("levers");
    int rows = Math.max(1, (levers.size() + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW);
    int inARow = Math.max(1, (levers.size() + rows - 1) / rows);
    String title = "Lever frame of " + result.path("box").asText();
    double width = 2 * MARGIN + inARow * WIDTH;
    Svg svg = new Svg("img", "lever-frame", width, rows * ROW, title, words(result, state));
    FramePicture picture = new FramePicture(svg, state);
    for (int row = 0; row < rows; row++) {
      double y = row * ROW;
      int levered = Math.min(inARow, levers.size() - row * inARow);
      picture.svg.rect("floor", MARGIN, y + QUADRANT - 2, Math.max(1, levered) * WIDTH, 4);
      for (int i = 0; i < levered; i++) {
        picture.lever(levers.get(row * inARow + i), MARGIN + i * WIDTH, y);
      }
    }
    return picture.svg.end();
  }

  /** Each lever in all its places at once, a picture of its own, by {@link Variants}. */
  static List<String> moving(JsonNode result) {
    List<String> levers = new ArrayList<>();
    for (JsonNode lever : result.path("levers")) {
      String title = "Lever " + lever.get("id").asText();
      Svg svg = new Svg("img", "lever-frame", WIDTH, ROW, title, words(result, lever));
      svg.rect("floor", 0, QUADRANT - 2, WIDTH, 4);
      svg.written(
          Variants.of(result, (on, state) -> new FramePicture(on, state).lever(lever, 0, 0)));
      levers.add(svg.end());
    }
    return levers;
  }

  /** What a lever works, and its label: "stop signal 2, Down home". */
  static String words(JsonNode result, JsonNode lever) {
    String label = lever.get("label").asText();
    String words = Handle.of(lever, new BoxState(result, Map.of()).armOf(lever)).words();
    return words + (label.isEmpty() ? "" : ", " + label);
  }

  private void lever(JsonNode lever, double left, double top) {
    String id = lever.get("id").asText();
    String label = lever.get("label").asText();
    Handle handle = Handle.of(lever, state.armOf(lever));
    BoxState.Place place = state.lever(id);
    double middle = left + WIDTH / 2;
    double down = down(id, place);
    String where =
        switch (place) {
          case NORMAL -> "N";
          case PART_WAY -> "part";
          case REVERSED -> "R";
        };
    svg.open("g", "class", "lever " + handle.kind() + " " + Said.place(place), "data-lever", id);
    svg.title("Lever " + id + ", " + handle.words() + (label.isEmpty() ? "" : ", " + label));
    svg.rect("slot", middle - 3, top + TOP + 4, 6, HANDLE + STROKE - 4);
    svg.rect("handle", middle - 7, top + TOP + down, 14, HANDLE);
    if (handle.halved()) {
      svg.rect("handle-half", middle - 7, top + TOP + down + HANDLE / 2, 14, HANDLE / 2);
    }
    svg.rect("catch", middle - 9, top + TOP + down, 18, 5);
    svg.text("place", middle, top + PLACE, "middle", way(id, place, where));
    svg.rect("plate", left + 4, top + PLATE, WIDTH - 8, 18);
    svg.text("number", middle, top + PLATE + 14, "middle", LeverWords.number(id));
    double y = top + WORK;
    for (String line : handle.lines()) {
      svg.text("work", middle, y, "middle", line);
      y += 11;
    }
    label(label, middle, top + LABEL);
    svg.close();
  }

  /** Of a push-pull lever its way in place of N, and "pulled" or "pushed" in place of R. */
  private static String way(String id, BoxState.Place place, String where) {
    if (!LeverWords.isWay(id) || place == BoxState.Place.PART_WAY) {
      return where;
    }
    return LeverWords.verb(id, true) + (place == BoxState.Place.REVERSED ? "ed" : "");
  }

  /** How far towards the signaller; a push-pull lever stands in the middle. */
  private static double down(String id, BoxState.Place place) {
    double stroke = STROKE * place.ordinal() / 2;
    if (!LeverWords.isWay(id)) {
      return stroke;
    }
    boolean pushed = LeverWords.verb(id, true).equals("push");
    return STROKE / 2 + (pushed ? -stroke : stroke) / 2;
  }

  /** The label reads upwards, as there is no room for it beside its neighbours. */
  private void label(String label, double middle, double top) {
    List<String> lines = Text.wrapped(label, 11, LABEL_LENGTH, 3);
    double x = middle - 13 * (lines.size() - 1) / 2.0 + 4;
    for (String line : lines) {
      String at = Svg.number(x) + " " + Svg.number(top);
      svg.leaf(
          "text",
          line,
          "class",
          "label",
          "text-anchor",
          "end",
          "transform",
          "translate(" + at + ") rotate(-90)");
      x += 13;
    }
  }

  private static String words(JsonNode result, BoxState state) {
    StringBuilder words = new StringBuilder(StateWords.ofLevers(result, state)).append(" Levers: ");
    String between = "";
    for (JsonNode lever : result.path("levers")) {
      words.append(between).append(lever.get("id").asText()).append(' ');
      words.append(Handle.of(lever, state.armOf(lever)).words());
      between = "; ";
    }
    return words.append('.').toString();
  }
}
