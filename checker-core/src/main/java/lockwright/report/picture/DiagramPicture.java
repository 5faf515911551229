package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * The track diagram. What is drawn for what, and after which convention, is in {@code
 * docs/decisions/0006-what-each-part-of-a-picture-is-for.md}.
 */
final class DiagramPicture {
  /** How far from points the leg begins that does not lie. */
  private static final double PARTED = 13;

  private final BoxState state;
  private final Plan plan;
  private final Spacing spacing;
  private final Svg svg;

  /** Where everything is, in any state. */
  private DiagramPicture(Placed placed, Svg svg, BoxState state) {
    this.state = state;
    this.svg = svg;
    plan = placed.plan();
    spacing = placed.spacing();
  }

  /** Draws the box in any state, without placing everything again. */
  static Function<BoxState, String> of(JsonNode result) {
    Placed placed = Placed.of(result);
    return state -> {
      Svg svg = begun(placed, StateWords.ofRailway(result, state) + " ");
      parts(placed).forEach(part -> part.accept(svg, state));
      return svg.end();
    };
  }

  /** The box in every state at once, by {@link Variants}. */
  static String moving(JsonNode result) {
    Placed placed = Placed.of(result);
    Svg svg = begun(placed, "");
    parts(placed).forEach(part -> svg.written(Variants.of(result, part)));
    return svg.end();
  }

  private static Svg begun(Placed placed, String stateWords) {
    return new Svg(
        "img",
        "diagram",
        Along.width(placed.plan()),
        placed.spacing().height(),
        "Track diagram of " + placed.result().path("box").asText(),
        stateWords + DiagramWords.of(placed.plan(), placed.lines()));
  }

  /** The parts in the order in which they are drawn, so that the later lie upon the earlier. */
  private static List<BiConsumer<Svg, BoxState>> parts(Placed placed) {
    List<BiConsumer<Svg, BoxState>> parts = new ArrayList<>();
    for (JsonNode route : placed.result().path("routes")) {
      parts.add((svg, state) -> new DiagramPicture(placed, svg, state).route(route));
    }
    for (JsonNode track : placed.plan().layout.get("tracks")) {
      parts.add((svg, state) -> new DiagramPicture(placed, svg, state).track(track));
    }
    for (Node node : placed.plan().nodes()) {
      parts.add((svg, state) -> new DiagramPicture(placed, svg, state).node(node));
    }
    for (Spot spot : placed.spacing().spots) {
      parts.addAll(new DiagramPicture(placed, null, null).spot(spot));
    }
    return parts;
  }

  // Tracks and routes.

  private void track(JsonNode track) {
    String id = track.get("id").asText();
    boolean passenger = track.get("passenger").asBoolean();
    svg.open("g", "class", "track" + (passenger ? " passenger" : ""), "data-track", id);
    svg.title(Said.of("track " + id, track));
    for (Piece piece : plan.pieces) {
      if (piece.id().equals(id)) {
        svg.path("rail", path(run(piece, true)));
        name(piece);
      }
    }
    svg.close();
  }

  private void name(Piece piece) {
    List<String> lines = Spacing.name(piece);
    double first = spacing.nameAbove(piece) ? -10 - Spacing.LEADING * (lines.size() - 1) : 19;
    for (int i = 0; i < lines.size(); i++) {
      double y = spacing.rowOf(piece) + first + i * Spacing.LEADING;
      svg.text("name", clear(piece), y, "middle", lines.get(i));
    }
  }

  /** The middle of what is free between the things at both ends of a piece. */
  private double clear(Piece piece) {
    boolean up = spacing.nameAbove(piece);
    double left = level(piece, Side.LEFT) + spacing.used(piece, up, Side.LEFT);
    double right = level(piece, Side.RIGHT) - spacing.used(piece, up, Side.RIGHT);
    return (left + right) / 2;
  }

  /** Where the level part of a piece ends. */
  private double level(Piece piece, Side side) {
    return piece.at(side).x - (straight(piece) ? 0 : side.sign() * spacing.aslant(piece, side));
  }

  /** Whether places given leave no room for it to be level anywhere. */
  private boolean straight(Piece piece) {
    double aslant = spacing.aslant(piece, Side.LEFT) + spacing.aslant(piece, Side.RIGHT);
    return piece.right().x - piece.left().x < aslant;
  }

  /**
   * The way of a piece: x and y of each bend; perhaps parted from points that do not lie for it.
   */
  private List<double[]> run(Piece piece, boolean parted) {
    double y = spacing.rowOf(piece);
    List<double[]> run = new ArrayList<>();
    run.add(new double[] {piece.left().x, spacing.yOf(piece.left())});
    for (Side side : Side.values()) {
      if (spacing.aslant(piece, side) > 0 && !straight(piece)) {
        run.add(new double[] {level(piece, side), y});
      }
    }
    run.add(new double[] {piece.right().x, spacing.yOf(piece.right())});
    for (Side side : Side.values()) {
      if (parted && !lies(piece.at(side), piece.port(side))) {
        int at = side == Side.LEFT ? 0 : run.size() - 1;
        run.set(at, towards(run.get(at), run.get(side == Side.LEFT ? 1 : at - 1), PARTED));
      }
    }
    return run;
  }

  private boolean lies(Node node, String port) {
    if (node.kind != Node.Kind.POINTS || port.equals("toe")) {
      return true;
    }
    return state.points(node.name)
        == (port.equals("normal") ? BoxState.Place.NORMAL : BoxState.Place.REVERSED);
  }

  private static double[] towards(double[] from, double[] to, double by) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double length = Math.hypot(dx, dy);
    return new double[] {from[0] + dx * by / length, from[1] + dy * by / length};
  }

  private static String path(List<double[]> run) {
    StringBuilder path = new StringBuilder();
    for (double[] point : run) {
      path.append(path.length() == 0 ? "M" : "L");
      path.append(Svg.number(point[0])).append(' ').append(Svg.number(point[1]));
    }
    return path.toString();
  }

  private void route(JsonNode route) {
    if (!state.set(route)) {
      return;
    }
    String signal = route.get("signal").asText();
    boolean partWay = state.armOfRoute(route) == BoxState.Place.PART_WAY;
    svg.open("g", "class", "route" + (partWay ? " part-way" : ""), "data-route", signal);
    svg.title("Route " + route.get("name").asText() + (partWay ? ", arm part-way" : " set"));
    Node at = null;
    for (JsonNode s : plan.layout.get("signals")) {
      if (s.get("id").asText().equals(signal)) {
        Plan.End end = Plan.End.of(s.get("stands"));
        at = plan.pieceAt.get(end).at(plan.side(end));
      }
    }
    for (JsonNode track : route.get("tracks")) {
      for (Piece piece : plan.pieces) {
        if (!piece.id().equals(track.asText())) {
          continue;
        }
        svg.path("band", path(run(piece, false)));
        if (piece.left() == at || piece.right() == at) {
          boolean right = piece.left() == at;
          arrow(piece, right ? 1 : -1);
          at = right ? piece.right() : piece.left();
        }
      }
    }
    svg.close();
  }

  private void arrow(Piece piece, int way) {
    double x = clear(piece);
    double y = spacing.rowOf(piece);
    svg.path(
        "arrow",
        path(
            List.of(
                new double[] {x - way * 5, y - 6},
                new double[] {x + way * 5, y},
                new double[] {x - way * 5, y + 6})));
  }

  // Places.

  private void node(Node node) {
    double y = spacing.yOf(node);
    switch (node.kind) {
      case JOINT -> svg.line("joint", node.x, y - 5, node.x, y + 5);
      case POINTS -> points(node, y);
      case CROSSING -> {
        svg.open("g", "class", "crossing", "data-crossing", node.name);
        svg.title(Said.of("crossing " + node.name, node.thing));
        svg.circle("dot", node.x, y, 3);
        svg.close();
      }
      default -> new EndShape(svg, state).draw(node, onLeft(node) ? Side.LEFT : Side.RIGHT, y);
    }
  }

  private boolean onLeft(Node node) {
    return plan.pieces.stream().anyMatch(p -> p.left() == node);
  }

  private void points(Node node, double y) {
    BoxState.Place place = state.points(node.name);
    boolean up = spacing.leavesUp(node);
    int legs = spacing.legs(node).sign();
    svg.open("g", "class", "points " + Said.place(place), "data-points", node.name);
    svg.title(Said.of("points " + node.name, node.thing));
    svg.circle("dot", node.x, y, 3);
    if (node.thing.has("trap")) {
      boolean lies = lies(node, node.thing.get("trap").asText());
      double[] from = {node.x, y};
      double[] to = {node.x + legs * 20, y + (up ? -20 : 20)};
      svg.path("rail", path(List.of(lies ? from : towards(from, to, PARTED), to)));
      svg.line(
          "trap", to[0] - 5, to[1] + (up ? -5 : 5) * legs, to[0] + 5, to[1] + (up ? 5 : -5) * legs);
    }
    double words = node.x - legs * spacing.wordsOverToe(node);
    new PointsShape(svg, state).draw(node, plan, words, y, legs, !up);
    svg.close();
  }

  private List<BiConsumer<Svg, BoxState>> spot(Spot spot) {
    double near = level(spot.piece(), spot.near()) - spot.near().sign() * spot.from();
    double far = near - spot.near().sign() * spot.width();
    double left = Math.min(near, far);
    double right = Math.max(near, far);
    double y = spacing.rowOf(spot.piece());
    if (spot.what() instanceof Posts posts) {
      return PostShape.parts(posts, spot.above(), left + 2, right - 2, y);
    } else if (spot.what() instanceof LevelCrossing crossing) {
      return List.of((on, in) -> GatesShape.draw(on, in, crossing, (left + right) / 2, y));
    } else if (spot.what() instanceof Node node && node.kind == Node.Kind.CROSSING) {
      double below = y + (spot.above() ? -8 : 18);
      return List.of((on, in) -> on.text("own", (left + right) / 2, below, "middle", node.name));
    }
    return List.of();
  }
}
