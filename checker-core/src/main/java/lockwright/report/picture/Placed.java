package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Where everything in the diagram is, in any state. Places that the author gives are kept; the rest
 * is laid out around them.
 *
 * @param tight where his places leave no room
 */
record Placed(JsonNode result, Plan plan, List<Line> lines, Spacing spacing, List<Tight> tight) {
  private static final int ROUNDS = 2;

  static Placed of(JsonNode result) {
    if (!result.has("drawing")) {
      return of(result, 0, 0);
    }
    ObjectNode bare = ((ObjectNode) result).objectNode();
    bare.setAll((ObjectNode) result);
    bare.remove("drawing");
    Placed usual = of(bare, 0, 0);
    return of(result, Along.width(usual.plan()), usual.spacing().height());
  }

  private static Placed of(JsonNode result, double width, double height) {
    Plan plan = new Plan(result);
    List<Line> lines = Lines.of(plan);
    List<Tight> wrongWayRound =
        Along.roughly(plan, lines, new Spacing(plan, lines), width).stream()
            .filter(t -> t.second().across() <= t.first().across())
            .toList();
    Rows.place(lines, Along::beyond);
    Spacing spacing = new Spacing(plan, lines, height);
    List<Tight> tight = Along.exactly(plan, lines, spacing, width);
    for (int round = 1; round < ROUNDS && height > 0; round++) {
      spacing = new Spacing(plan, lines, height);
      tight = Along.exactly(plan, lines, spacing, width);
    }
    tight = new ArrayList<>(tight);
    tight.addAll(wrongWayRound);
    if (spacing.scale != null) {
      for (Scale.Pair pair : spacing.scale.tight()) {
        Given upper = spacing.given(pair.first());
        tight.add(new Tight(upper, spacing.given(pair.second()), false, pair.least()));
      }
    }
    onOneAnother(lines, tight);
    return new Placed(result, plan, lines, spacing, tight);
  }

  /** Lines that the author has on one height and that do not follow each other there. */
  private static void onOneAnother(List<Line> lines, List<Tight> tight) {
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < i; j++) {
        Line a = lines.get(j);
        Line b = lines.get(i);
        boolean overlap =
            a.end(Side.LEFT).x < b.end(Side.RIGHT).x && b.end(Side.LEFT).x < a.end(Side.RIGHT).x;
        if (a.row == b.row && a.given != null && b.given != null && overlap) {
          tight.add(new Tight(a.given, b.given, false, 0));
        }
      }
    }
  }
}
