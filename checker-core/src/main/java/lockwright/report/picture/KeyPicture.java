package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the shapes of the track diagram mean, drawn by what draws them there. */
final class KeyPicture {
  private static final double COLUMN = 300;
  private static final double ROW = 46;
  private static final double SHAPE = 70;
  private static final int ROWS = 7;

  /** Signals of the key: kind, position of the lever, words. */
  private static final List<List<String>> ARMS =
      List.of(
          List.of("stop", "N", "stop signal, on; its lever"),
          List.of("stop", "R", "the same, off"),
          List.of("stop", "M", "the same, part-way"),
          List.of("distant", "N", "distant"),
          List.of("calling-on", "N", "calling-on arm"),
          List.of("shunting", "N", "shunting signal"));

  private static final List<String> LINES =
      List.of(
          "passenger line",
          "other line",
          "a route that lies for an arm that is off",
          "the same, the arm part-way",
          "points: the leg that lies is joined",
          "trap: the short leg leads off the road");

  private static final List<String> BOLTS = List.of("in", "out", "neither");

  private final Svg svg =
      new Svg(
          "img",
          "key",
          3 * COLUMN,
          ROWS * ROW + 10,
          "Key to the track diagram",
          "A signal stands on the left of the trains that it is for.");

  private KeyPicture() {}

  static String of() {
    KeyPicture key = new KeyPicture();
    key.arms();
    for (int i = 0; i < LINES.size(); i++) {
      key.line(i, COLUMN + 10, (i + 0.6) * ROW);
      key.words(1, i, LINES.get(i));
    }
    key.rest();
    key.gates();
    return key.svg.end();
  }

  private void words(int column, int row, String words) {
    svg.text("own", column * COLUMN + SHAPE + 20, (row + 0.6) * ROW + 4, "start", words);
  }

  private void arms() {
    JsonNodeFactory json = JsonNodeFactory.instance;
    ObjectNode result = json.objectNode();
    Map<String, String> state = new TreeMap<>();
    ObjectNode layout = result.putObject("layout");
    layout.putArray("points");
    for (int i = 0; i < ARMS.size(); i++) {
      String id = Integer.toString(i + 1);
      state.put("lever " + id, ARMS.get(i).get(1));
      ObjectNode signal = json.objectNode();
      signal.put("id", id).put("lever", id).put("arm", ARMS.get(i).get(0));
      layout.withArray("signals").add(signal);
    }
    BoxState arms = new BoxState(result, state);
    int row = 0;
    for (JsonNode signal : layout.get("signals")) {
      double y = (row + 0.95) * ROW;
      svg.open("g", "class", "track").line("rail", 10, y, 10 + SHAPE, y).close();
      PostShape.parts(new Posts(null, List.of(signal)), true, 24, SHAPE, y)
          .forEach(part -> part.accept(svg, arms));
      words(0, row, ARMS.get(row).get(2));
      row++;
    }
  }

  private void line(int row, double x, double y) {
    boolean route = row == 2 || row == 3;
    svg.open("g", "class", row == 3 ? "route part-way" : row == 1 ? "track" : "track passenger");
    if (route) {
      svg.path("band", "M" + at(x, y) + "L" + at(x + SHAPE, y));
      svg.path("arrow", "M" + at(x + 30, y - 6) + "L" + at(x + 40, y) + "L" + at(x + 30, y + 6));
    }
    svg.line("rail", x, y, x + SHAPE, y);
    if (row == 4) {
      svg.circle("dot", x + 20, y, 3);
      svg.line("rail", x + 28, y + 11, x + 36, y + 22);
    }
    if (row == 5) {
      svg.circle("dot", x + 20, y, 3);
      svg.line("rail", x + 28, y + 9, x + 38, y + 20);
      svg.line("trap", x + 33, y + 25, x + 43, y + 15);
    }
    svg.close();
  }

  private void rest() {
    double x = 2 * COLUMN + 10;
    for (int i = 0; i < BOLTS.size(); i++) {
      double y = (i + 0.6) * ROW;
      svg.open("g", "class", "track passenger").line("rail", x, y, x + SHAPE, y).close();
      PointsShape.bar(svg, x + 30, y, BOLTS.get(i));
      words(2, i, "bolt " + BOLTS.get(i));
    }
    int row = BOLTS.size();
    for (String place : List.of("normal", "reversed")) {
      double y = (row + 0.6) * ROW;
      svg.open("g", "class", "ground-frame " + place);
      svg.rect("member", x, y - 11, 62, 15);
      svg.text("own", x + 31, y, "middle", "Yard, 30").close();
      words(2, row, place.equals("normal") ? "ground frame, lever or token" : "the same, released");
      row++;
    }
    double y = (row + 0.95) * ROW;
    svg.open("g", "class", "track").line("rail", x, y, x + SHAPE, y).close();
    svg.line("stem", x + 10, y - 3, x + 10, y - 20);
    svg.rect("board", x + 6, y - 20, 8, 8);
    words(2, row, "limit of shunt");
  }

  private void gates() {
    List<String> words =
        List.of("gates across the road", "gates across the line", "gates part-way");
    List<BoxState.Place> stands =
        List.of(BoxState.Place.NORMAL, BoxState.Place.REVERSED, BoxState.Place.PART_WAY);
    int row = ROWS - 1;
    for (int column = 0; column < 3; column++) {
      double x = column * COLUMN + 10;
      double y = (row + 0.6) * ROW;
      svg.open("g", "class", "track").line("rail", x, y, x + SHAPE, y).close();
      svg.open("g", "class", GatesShape.kind(stands.get(column)));
      GatesShape.gates(svg, x + SHAPE / 2, y, stands.get(column));
      svg.close();
      words(column, row, words.get(column));
    }
  }

  private static String at(double x, double y) {
    return Svg.number(x) + " " + Svg.number(y);
  }
}
