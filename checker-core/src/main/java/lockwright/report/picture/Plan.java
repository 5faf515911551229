package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The layout as a graph with a left and a right. Plan files say neither, so the first track written
 * that has an end of the line has it on its left, and the rest follows through joints, points and
 * crossings. A track that would run from right to right, as a loop that turns trains round, or that
 * closes a ring, is cut in two.
 */
final class Plan {
  /** One end of a track, as in the result. */
  record End(String track, int end) {
    static End of(JsonNode name) {
      return new End(name.get("track").asText(), name.get("end").asInt());
    }
  }

  /** Where an end is attached. The turn of a node, or of a way over a crossing, is one. */
  private record Port(Node node, String port, String turn, Side side) {}

  final JsonNode layout;
  final List<LevelCrossing> levelCrossings;
  final List<Piece> pieces = new ArrayList<>();
  final Map<End, Piece> pieceAt = new HashMap<>();

  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final Map<End, Port> ports = new LinkedHashMap<>();
  private final Map<String, List<End>> endsByTurn = new HashMap<>();
  private final Map<String, JsonNode> tracks = new LinkedHashMap<>();
  private final Map<String, Boolean> turned = new HashMap<>();

  /** How high the author wants tracks, by their names. */
  final Map<String, Given> levels = new HashMap<>();

  private int cuts;

  Plan(JsonNode result) {
    layout = result.get("layout");
    levelCrossings = LevelCrossing.of(result);
    Map<String, JsonNode> things = new HashMap<>();
    layout.get("points").forEach(p -> things.put("points " + p.get("id").asText(), p));
    layout.get("crossings").forEach(c -> things.put("crossing " + c.get("id").asText(), c));
    result.path("sections").forEach(s -> things.put("section " + s.get("name").asText(), s));
    for (JsonNode track : layout.get("tracks")) {
      tracks.put(track.get("id").asText(), track);
      for (int end = 0; end < 2; end++) {
        attach(new End(track.get("id").asText(), end), track.get("ends").get(end), things);
      }
    }
    given(result.path("drawing"));
    turn();
    pieces();
    breakRings();
    if (turnAsGiven()) {
      pieces.clear();
      cuts = 0;
      pieces();
      breakRings();
    }
    for (Piece piece : pieces) {
      for (int end = 0; end < 2; end++) {
        End name = new End(piece.id(), end);
        Port port = ports.get(name);
        Side side = onLeft(port) ? Side.LEFT : Side.RIGHT;
        if (piece.at(side) == port.node() && piece.port(side).equals(port.port())) {
          pieceAt.put(name, piece);
        }
      }
    }
  }

  /**
   * The ground frame of points and what releases it, a lever or "token"; empty if they have none.
   */
  String groundFrame(JsonNode points) {
    for (JsonNode frame : layout.get("groundFrames")) {
      if (frame.get("id").asText().equals(points.path("groundFrame").asText())) {
        boolean both = frame.has("releaseLever") && frame.has("releaseSection");
        return frame.get("id").asText()
            + ", "
            + frame.path("releaseLever").asText("token")
            + (both ? " and token" : "");
      }
    }
    return "";
  }

  /** The ground frame of that name. */
  JsonNode groundFrame(String id) {
    for (JsonNode frame : layout.get("groundFrames")) {
      if (frame.get("id").asText().equals(id)) {
        return frame;
      }
    }
    throw new IllegalArgumentException("no ground frame " + id);
  }

  Collection<Node> nodes() {
    Set<Node> all = new LinkedHashSet<>();
    pieces.forEach(p -> all.addAll(List.of(p.left(), p.right())));
    return all;
  }

  private void given(JsonNode drawing) {
    for (JsonNode spot : drawing.path("places")) {
      JsonNode of = spot.get("of");
      String kind = of.get("kind").asText();
      Node node =
          kind.equals("end")
              ? ports.get(End.of(of)).node()
              : nodes.get(kind + " " + of.get(kind).asText());
      String what = kind.equals("end") ? where(node, of) : kind + " " + of.get(kind).asText();
      double across = spot.get("across").asDouble();
      node.given = new Given(what, across, spot.get("down").asDouble(), spot.get("at"));
    }
    for (JsonNode level : drawing.path("tracks")) {
      String track = level.get("track").asText();
      double down = level.get("down").asDouble();
      levels.put(track, new Given("track " + track, Double.NaN, down, level.get("at")));
    }
  }

  private String where(Node node, JsonNode end) {
    String track = end.get("track").asText();
    if (node.kind != Node.Kind.JOINT) {
      return "the end of track " + track;
    }
    JsonNode with = tracks.get(track).get("ends").get(end.get("end").asInt()).get("attachedTo");
    return "the joint " + track + " + " + with.at("/with/track").asText();
  }

  /** Turns over, each by itself, parts of the plan that the places given have the other way. */
  private boolean turnAsGiven() {
    List<Set<Node>> parts = WayRound.wrong(pieces, nodes());
    for (Set<Node> part : parts) {
      ports.values().stream()
          .filter(p -> part.contains(p.node()))
          .map(Port::turn)
          .distinct()
          .forEach(t -> turned.put(t, !turned.get(t)));
    }
    return !parts.isEmpty();
  }

  /** Which side of its piece an end of a track is drawn on. */
  Side side(End end) {
    return onLeft(ports.get(end)) ? Side.LEFT : Side.RIGHT;
  }

  private void attach(End end, JsonNode written, Map<String, JsonNode> things) {
    JsonNode at = written.get("attachedTo");
    Port port =
        switch (at.get("kind").asText()) {
          case "joint" -> joint(end, End.of(at.get("with")));
          case "points" -> {
            String key = "points " + at.get("points").asText();
            String leg = at.get("end").asText();
            Node node = node(key, Node.Kind.POINTS, at.get("points").asText(), things.get(key));
            yield new Port(node, leg, key, leg.equals("toe") ? Side.LEFT : Side.RIGHT);
          }
          case "crossing" -> crossing(end, at, things);
          case "section" -> {
            String section = at.get("section").asText();
            if (!things.get("section " + section).get("track").asText().equals(end.track())) {
              yield end(end, Node.Kind.LIMIT, "section " + section, null);
            }
            yield end(end, Node.Kind.SECTION, section, things.get("section " + section));
          }
          default -> end(end, Node.Kind.LIMIT, at.get("limit").asText(), null);
        };
    ports.put(end, port);
    endsByTurn.computeIfAbsent(port.turn(), t -> new ArrayList<>()).add(end);
  }

  private Port joint(End end, End with) {
    boolean first = before(end, with);
    String key = "joint " + (first ? end + " " + with : with + " " + end);
    Node node = node(key, Node.Kind.JOINT, "", null);
    return new Port(node, "", key, first ? Side.LEFT : Side.RIGHT);
  }

  private Port crossing(End end, JsonNode at, Map<String, JsonNode> things) {
    String id = at.get("crossing").asText();
    String key = "crossing " + id;
    Node node = node(key, Node.Kind.CROSSING, id, things.get(key));
    End across = End.of(at.get("across"));
    boolean first = before(end, across);
    String way = first ? end + " " + across : across + " " + end;
    return new Port(node, way, key + " " + way, first ? Side.LEFT : Side.RIGHT);
  }

  private Port end(End end, Node.Kind kind, String name, JsonNode thing) {
    String key = "end " + end;
    return new Port(node(key, kind, name, thing), "", key, Side.RIGHT);
  }

  private Node node(String key, Node.Kind kind, String name, JsonNode thing) {
    return nodes.computeIfAbsent(key, k -> new Node(kind, name, thing));
  }

  private static boolean before(End a, End b) {
    int order = a.track().compareTo(b.track());
    return order == 0 ? a.end() < b.end() : order < 0;
  }

  /** Gives each node a left and a right, from the outer ends of tracks inwards. */
  private void turn() {
    List<End> starts = new ArrayList<>();
    ports.forEach((end, port) -> addIf(port.node().goesOn(), starts, end));
    ports.forEach((end, port) -> addIf(port.node().ends(), starts, end));
    starts.addAll(ports.keySet());
    for (End start : starts) {
      Port port = ports.get(start);
      if (turned.putIfAbsent(port.turn(), port.side() == Side.LEFT) == null) {
        spread(port.turn());
      }
    }
  }

  private static void addIf(boolean wanted, List<End> ends, End end) {
    if (wanted) {
      ends.add(end);
    }
  }

  private void spread(String start) {
    Deque<String> reached = new ArrayDeque<>(List.of(start));
    while (!reached.isEmpty()) {
      for (End end : endsByTurn.get(reached.remove())) {
        Port far = ports.get(new End(end.track(), 1 - end.end()));
        boolean farOnLeft = !onLeft(ports.get(end));
        boolean turn = (far.side() == Side.RIGHT) != farOnLeft;
        if (turned.putIfAbsent(far.turn(), turn) == null) {
          reached.add(far.turn());
        }
      }
    }
  }

  /** Whether the track goes from here to the right, so that this is its left end. */
  private boolean onLeft(Port port) {
    return (port.side() == Side.RIGHT) != turned.get(port.turn());
  }

  private void pieces() {
    for (JsonNode track : tracks.values()) {
      Port a = ports.get(new End(track.get("id").asText(), 0));
      Port b = ports.get(new End(track.get("id").asText(), 1));
      if (onLeft(a) == onLeft(b) || a.node() == b.node()) {
        cut(track, a, b);
      } else {
        Port left = onLeft(a) ? a : b;
        Port right = onLeft(a) ? b : a;
        add(track, left.node(), left.port(), right.node(), right.port(), true);
      }
    }
  }

  private void cut(JsonNode track, Port a, Port b) {
    String number = Integer.toString(++cuts);
    boolean named = true;
    for (Port port : List.of(a, b)) {
      Node cut = new Node(Node.Kind.CUT, number, null);
      if (onLeft(port)) {
        add(track, port.node(), port.port(), cut, "", named);
      } else {
        add(track, cut, "", port.node(), port.port(), named);
      }
      named = false;
    }
  }

  private void add(
      JsonNode track, Node left, String leftPort, Node right, String rightPort, boolean named) {
    pieces.add(new Piece(pieces.size(), track, left, leftPort, right, rightPort, named));
  }

  /** Cuts each piece that would lead round to where it came from. */
  private void breakRings() {
    Set<Node> done = new HashSet<>();
    Set<Node> onPath = new HashSet<>();
    List<Piece> closing = new ArrayList<>();
    Map<Node, List<Piece>> leaving = new HashMap<>();
    pieces.forEach(p -> leaving.computeIfAbsent(p.left(), n -> new ArrayList<>()).add(p));
    for (Node node : List.copyOf(nodes())) {
      walk(node, leaving, done, onPath, closing);
    }
    for (Piece piece : closing) {
      pieces.remove(piece);
      String number = Integer.toString(++cuts);
      Node right = new Node(Node.Kind.CUT, number, null);
      Node left = new Node(Node.Kind.CUT, number, null);
      add(piece.track(), piece.left(), piece.leftPort(), right, "", true);
      add(piece.track(), left, "", piece.right(), piece.rightPort(), false);
    }
  }

  private static void walk(
      Node node,
      Map<Node, List<Piece>> leaving,
      Set<Node> done,
      Set<Node> onPath,
      List<Piece> closing) {
    if (!done.add(node)) {
      return;
    }
    onPath.add(node);
    for (Piece piece : leaving.getOrDefault(node, List.of())) {
      if (onPath.contains(piece.right())) {
        closing.add(piece);
      } else {
        walk(piece.right(), leaving, done, onPath, closing);
      }
    }
    onPath.remove(node);
  }
}
