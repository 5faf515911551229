package lockwright.report.picture;

/** A road over a track, and its gates as they stand. */
final class GatesShape {
  private static final double HALF = 9;
  private static final double ROAD = LevelCrossing.ROAD;

  private GatesShape() {}

  /**
   * Two gates, one on each side.
   *
   * @param stand normal across the road, reversed across the line, null if that is not known
   */
  static void gates(Svg svg, double x, double y, BoxState.Place stand) {
    for (int way : new int[] {-1, 1}) {
      double edge = x + way * HALF;
      svg.line("road", edge, y - ROAD, edge, y - 4).line("road", edge, y + 4, edge, y + ROAD);
      if (stand == null) {
        continue;
      }
      double[] end =
          switch (stand) {
            case NORMAL -> new double[] {x - way * HALF, y + way * 11};
            case PART_WAY -> new double[] {x - way * 3, y - way * 1};
            case REVERSED -> new double[] {edge, y - way * 11};
          };
      svg.line("gate", edge, y + way * 11, end[0], end[1]);
    }
  }

  /** The crossing with its words below the line. */
  static void draw(Svg svg, BoxState state, LevelCrossing crossing, double x, double y) {
    BoxState.Place stand = state.gates(crossing).orElse(null);
    String words = StateWords.gates(crossing, state);
    svg.open("g", "class", kind(stand), "data-level-crossing", crossing.id());
    svg.title(Said.of("level crossing " + crossing.id(), crossing.thing()) + ", " + words);
    gates(svg, x, y, stand);
    double line = y + ROAD + 11;
    for (String text : crossing.lines(state.gateLock(crossing))) {
      svg.text("own", x, line, "middle", text);
      line += Spacing.LEADING;
    }
    svg.close();
  }

  static String kind(BoxState.Place stand) {
    return "level-crossing " + (stand == null ? "not-known" : Said.place(stand));
  }
}
