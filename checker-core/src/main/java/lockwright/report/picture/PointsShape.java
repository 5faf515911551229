package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/** The words at points, their bolt, and their ground frame. */
final class PointsShape {
  private final Svg svg;
  private final BoxState state;

  PointsShape(Svg svg, BoxState state) {
    this.svg = svg;
    this.state = state;
  }

  /**
   * @param plan where the ground frame is found, if there is one
   * @param x the middle of the words
   * @param legs +1 if the legs are on the right
   * @param above whether the words stand above the line
   */
  void draw(Node node, Plan plan, double x, double y, int legs, boolean above) {
    JsonNode points = node.thing;
    String frame = plan.groundFrame(points);
    String lie =
        switch (state.points(node.name)) {
          case NORMAL -> "N";
          case PART_WAY -> "-";
          case REVERSED -> "R";
        };
    double line = above ? y - 12 : y + 20;
    double step = above ? -13 : 13;
    svg.text("number", x, line, "middle", PointsLabel.points(points, lie));
    if (points.has("boltLever")) {
      String where = state.bolt(points.get("boltLever"));
      bar(svg, node.x - legs * 9, y, where);
      line += step;
      svg.text("own", x, line, "middle", PointsLabel.bolt(points, where));
    }
    if (!frame.isEmpty()) {
      JsonNode released = plan.groundFrame(points.get("groundFrame").asText());
      line += step + (above ? -2 : 2);
      double width = Text.bold(frame, PointsLabel.SIZE) + 6;
      svg.open("g", "class", "ground-frame " + Said.place(state.release(released)));
      svg.rect("member", x - width / 2, line - 11, width, 15);
      svg.text("own", x, line, "middle", frame);
      svg.close();
    }
  }

  /** The bolt: a bar across the toe. */
  static void bar(Svg svg, double x, double y, String where) {
    svg.open("g", "class", "bolt " + where);
    if (where.equals("neither")) {
      svg.rect("bar", x - 3, y - 9, 6, 6);
      svg.rect("bar", x - 3, y + 3, 6, 6);
    } else {
      svg.rect("bar", x - 3, y - 8, 6, 16);
    }
    svg.close();
  }
}
