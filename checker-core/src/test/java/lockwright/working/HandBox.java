package lockwright.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.FlankTrap;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;
import lockwright.spec.Span;

/**
 * A small box made by hand, without a plan: signals, points, levers, entries as they read in a
 * table, routes given and not derived. For tests.
 */
public final class HandBox {
  private static final Span HERE = new Span("by hand", 1, 1);
  private static final Pattern ENTRY =
      Pattern.compile(
          "(\\w+) (released by|locks both ways|locks|while normal locks both ways"
              + "|starts only with normal|not again before) (.+?)"
              + "(?: when (.+?))?( \\(holds\\))?");

  private final List<Points> points = new ArrayList<>();
  private final List<Signal> signals = new ArrayList<>();
  private final List<GroundFrame> groundFrames = new ArrayList<>();
  private final List<LevelCrossing> levelCrossings = new ArrayList<>();
  private final List<Lever> levers = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Section> sections = new ArrayList<>();
  private final List<Route> routes = new ArrayList<>();
  private final List<Requirement> requirements = new ArrayList<>();
  private final List<Detection> detections = new ArrayList<>();
  private final List<String> brokenRods = new ArrayList<>();
  private final List<String> electric = new ArrayList<>();

  /** A lever that works a signal of its own number. */
  public HandBox signal(String id, Arm arm) {
    signals.add(new Signal(id, "", new TrackEnd("rear", 1), "front", arm, List.of(), false, HERE));
    return lever(id, new Work.OfSignal(id));
  }

  /** A lever that works points of its own number. */
  public HandBox points(String id) {
    return pointsOnly(id).lever(id, new Work.OfPoints(List.of(id)));
  }

  /** A lever that works points of its own number with an economical lock. */
  public HandBox economical(String id) {
    return pointsOnly(id).lever(id, new Work.OfPoints(List.of(id), List.of(id)));
  }

  /** A lever that works the bolt of points, standing out with the lever normal, or in. */
  public HandBox bolt(String id, String points, boolean normallyIn) {
    return lever(id, new Work.OfBolt(List.of(points), normallyIn));
  }

  /** A lever that moves the gates of a level crossing over the track of all routes here. */
  public HandBox gates(String id, String levelCrossing, boolean normallyAcrossRoad) {
    levelCrossings.add(new LevelCrossing(levelCrossing, "", List.of("front"), HERE));
    return lever(id, new Work.OfGates(levelCrossing, normallyAcrossRoad));
  }

  /** A lever that locks such gates, moved by hand. */
  public HandBox gateLock(String id, String levelCrossing, boolean normallyIn) {
    levelCrossings.add(new LevelCrossing(levelCrossing, "", List.of("front"), HERE));
    return lever(id, new Work.OfGateLock(levelCrossing, normallyIn));
  }

  /** A lever that gives the release of a ground frame with these points. */
  public HandBox release(String id, String groundFrame, boolean held, String... its) {
    Arrays.stream(its).forEach(this::pointsOnly);
    groundFrames.add(new GroundFrame(groundFrame, "", List.of(its), HERE));
    return lever(id, new Work.OfRelease(groundFrame, held));
  }

  /** A ground frame with these points, which tokens of a section release. */
  public HandBox groundFrame(String groundFrame, String... its) {
    Arrays.stream(its).forEach(this::pointsOnly);
    groundFrames.add(new GroundFrame(groundFrame, "", List.of(its), HERE));
    return this;
  }

  /** Detectors in the wire of an arm. */
  public HandBox detection(String lever, String... its) {
    detections.add(new Detection(lever, List.of(its), HERE));
    return this;
  }

  /** A lever that works points electrically. */
  public HandBox electric(String id, String... its) {
    Arrays.stream(its).forEach(this::pointsOnly);
    electric.add(id);
    return lever(id, new Work.OfPoints(List.of(its)));
  }

  /** Points whose rod may break. */
  public HandBox brokenRods(String... its) {
    brokenRods.addAll(List.of(its));
    return this;
  }

  public HandBox spare(String id) {
    return lever(id, new Work.Spare());
  }

  private HandBox pointsOnly(String id) {
    points.add(
        new Points(
            id,
            "",
            "toe",
            Optional.of("normal"),
            Optional.of("reverse"),
            Optional.empty(),
            false,
            HERE));
    return this;
  }

  public HandBox lever(String id, Work work) {
    levers.add(new Lever(id, "", work, HERE));
    return this;
  }

  /** Entries as in a table: "1 released by 3 or 4 when 2 N and 5 R (holds)". */
  public HandBox locking(String... words) {
    Arrays.stream(words).map(HandBox::entry).forEach(entries::add);
    return this;
  }

  public static Entry entry(String words) {
    Matcher m = ENTRY.matcher(words);
    if (!m.matches()) {
      throw new IllegalArgumentException("no entry: " + words);
    }
    Entry.Kind kind =
        Arrays.stream(Entry.Kind.values())
            .filter(k -> k.words().equals(m.group(2)))
            .findFirst()
            .orElseThrow();
    List<Entry.Condition> when =
        m.group(4) == null
            ? List.of()
            : Arrays.stream(m.group(4).split(" and "))
                .map(c -> c.split(" "))
                .map(c -> new Entry.Condition(c[0], Position.valueOf(c[1])))
                .toList();
    return new Entry(
        kind, m.group(1), List.of(m.group(3).split(" or ")), when, m.group(5) != null, "", HERE);
  }

  public HandBox section(Sections section) {
    sections.add(section.section());
    return this;
  }

  /** A route over points as written: "4N 5R", facing, or with a "t" trailing: "6Nt". */
  public static Route route(String signal, String lies, Route.End end) {
    List<PointsOnRoute> passed =
        Arrays.stream(lies.split(" "))
            .filter(p -> !p.isEmpty())
            .map(
                p -> {
                  boolean facing = !p.endsWith("t");
                  String bare = facing ? p : p.substring(0, p.length() - 1);
                  String id = bare.substring(0, bare.length() - 1);
                  Lie lie = bare.endsWith("N") ? Lie.NORMAL : Lie.REVERSE;
                  return new PointsOnRoute(id, lie, facing);
                })
            .toList();
    return new Route(
        signal + " by " + lies, signal, List.of("front"), passed, List.of(), end, List.of());
  }

  public static Route route(String signal, String lies) {
    return route(signal, lies, new Route.End.AtLimit(Attachment.Limit.BLOCK));
  }

  /** The same route, protected by a flank trap. */
  public static Route withTrap(Route r, String points, Lie lie) {
    return new Route(
        r.name(),
        r.signal(),
        r.tracks(),
        r.points(),
        r.crossings(),
        r.end(),
        List.of(new FlankTrap(points, lie)));
  }

  public HandBox routes(Route... more) {
    routes.addAll(List.of(more));
    return this;
  }

  public HandBox requirements(Requirement... more) {
    requirements.addAll(List.of(more));
    return this;
  }

  public Box box() {
    Layout layout =
        new Layout(
            List.of(),
            points,
            List.of(),
            signals,
            groundFrames,
            levelCrossings,
            Map.of(),
            Set.of());
    return new Box(
        "by hand",
        layout,
        new Frame(levers, new Connections(detections, brokenRods, electric)),
        entries,
        sections,
        routes,
        List.of(),
        List.of(),
        List.of(),
        requirements);
  }
}
