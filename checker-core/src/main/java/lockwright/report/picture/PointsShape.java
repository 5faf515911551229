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
   * @param legs +1 if the legs are on the right
   * @param above whether the words stand above the line
   */
  void draw(Node node, double y, int legs, boolean above) {
    JsonNode points = node.thing;
    String lie =
        switch (state.points(node.name)) {
          case NORMAL -> "N";
          case PART_WAY -> "-";
          case REVERSED -> "R";
        };
    double line = above ? y - 9 : y + 18;
    double step = above ? -13 : 13;
    svg.text("number", node.x, line, "middle", PointsLabel.points(points, lie));
    if (points.has("boltLever")) {
      String where = state.bolt(points.get("boltLever"));
      bar(node.x - legs * 9, y, where);
      line += step;
      svg.text("own", node.x, line, "middle", PointsLabel.bolt(points, where));
    }
    String frame = PointsLabel.groundFrame(points);
    if (!frame.isEmpty()) {
      line += step + (above ? -2 : 2);
      double width = Text.width(frame, PointsLabel.SIZE) + 6;
      svg.text("own", node.x, line, "middle", frame);
      svg.shape(
          "rect",
          "class",
          "member",
          "x",
          Svg.number(node.x - width / 2),
          "y",
          Svg.number(line - 11),
          "width",
          Svg.number(width),
          "height",
          "15");
    }
  }

  /** The bolt: a bar across the toe. */
  private void bar(double x, double y, String where) {
    svg.open("g", "class", "bolt " + where);
    if (where.equals("neither")) {
      svg.rect("bar", x - 3, y - 11, 6, 7);
      svg.rect("bar", x - 3, y + 4, 6, 7);
    } else {
      svg.rect("bar", x - 3, y - 8, 6, 16);
    }
    svg.close();
  }
}
