package lockwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import lockwright.railway.Box;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Overlap;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;
import lockwright.spec.Span;

/**
 * A random box of 3 to 8 levers: a junction, with what may stand about it (distant, homes, starting
 * signals, an advanced starting signal, a siding with a trap or a spur in its place, a ground
 * frame, a level crossing, a bolt that stands in or out, an economical lock, a token section in a
 * third of them, whose token may release the ground frame, lever locks and arm controls), and a
 * locking table that is right but for what was left out of it and put into it.
 *
 * <pre>
 *   s --- o --- t ---P--- n
 *                     \-- r ---T--- x
 * </pre>
 */
public final class RandomBox {
  private static final Span HERE = new Span("random", 1, 1);

  private final Random random;
  private final Map<TrackEnd, Attachment> attachments = new LinkedHashMap<>();
  private final List<Points> points = new ArrayList<>();
  private final List<Signal> signals = new ArrayList<>();
  private final List<Lever> levers = new ArrayList<>();
  private boolean section;
  private boolean trap;
  private boolean spur;
  private boolean groundFrame;
  private boolean tokenFrame;
  private boolean twoFrames;
  private boolean economical;

  private RandomBox(Random random) {
    this.random = random;
  }

  public static Box of(Random random) {
    return RandomAdvice.of(RandomLevers.in(new RandomBox(random).box()));
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private Box box() {
    section = random.nextInt(3) == 0;
    trap = chance(40);
    spur = trap && chance(30);
    groundFrame = trap && chance(50);
    tokenFrame = section && groundFrame && chance(50);
    twoFrames = tokenFrame && chance(40);
    Layout layout = layout();
    Frame frame = frame(layout);
    Random hands = new Random(frame.levers().toString().hashCode());
    int beside = hands.nextInt(10);
    if (beside < 2) {
      List<String> some = byHand(frame, hands);
      layout = beside(layout, some, beside == 1);
      frame = withoutLeversOf(frame, some, beside == 1);
    }
    List<Section> sections = section ? List.of(section(frame, layout)) : List.of();
    Derived derived = Derivation.derive(layout, frame, sections);
    Box bare =
        new Box(
            "Random",
            layout,
            frame,
            List.of(),
            sections,
            derived.routes(),
            derived.notSignalled(),
            derived.conflicts(),
            derived.distantPaths(),
            derived.requirements());
    Box locked = exempting(bare).withLocking(new RandomTable(bare, random).entries());
    return RandomConnections.of(locked.withControls(RandomControls.of(locked, random)));
  }

  /** The points of one lever, if one works points without an economical lock. */
  private static List<String> byHand(Frame frame, Random hands) {
    List<List<String>> some =
        frame.levers().stream()
            .map(Lever::work)
            .filter(w -> w instanceof Work.OfPoints p && p.economical().isEmpty())
            .map(w -> ((Work.OfPoints) w).points())
            .toList();
    return some.isEmpty() ? List.of() : some.get(hands.nextInt(some.size()));
  }

  /** With these points worked by hand, or else sprung. */
  private static Layout beside(Layout layout, List<String> some, boolean sprung) {
    List<Points> points =
        layout.points().stream()
            .map(
                p ->
                    new Points(
                        p.id(),
                        p.label(),
                        p.toe(),
                        p.normal(),
                        p.reverse(),
                        p.trap(),
                        !sprung && some.contains(p.id()),
                        sprung && some.contains(p.id()),
                        p.at()))
            .toList();
    Layout made =
        new Layout(
            layout.tracks(),
            points,
            layout.crossings(),
            layout.signals(),
            layout.groundFrames(),
            layout.levelCrossings(),
            layout.attachments(),
            layout.limitsOfShunt());
    return made.withOverlaps(
        layout.overlaps().stream().filter(o -> Beyond.walk(made, o).isPresent()).toList());
  }

  private static Frame withoutLeversOf(Frame frame, List<String> some, boolean sprung) {
    return new Frame(
        frame.levers().stream()
            .map(
                l ->
                    l.work() instanceof Work.OfPoints p && some.containsAll(p.points())
                            || sprung
                                && l.work() instanceof Work.OfBolt b
                                && some.containsAll(b.points())
                        ? new Lever(l.id(), l.label(), new Work.Spare(), l.at())
                        : l)
            .toList());
  }

  /** Mostly without what nothing could keep. */
  private Box exempting(Box bare) {
    return chance(10)
        ? bare
        : bare.exempting(
            bare.requirements().stream()
                .filter(RandomBox::open)
                .map(r -> new Exemption(r, "open", HERE))
                .toList());
  }

  private static boolean open(Requirement requirement) {
    return requirement instanceof Requirement.FlankProtected f
        && f.flanks().stream().anyMatch(r -> r.paths().stream().anyMatch(FlankPath::open));
  }

  private Layout layout() {
    joint("s", "o");
    joint("o", "t");
    attachments.put(
        new TrackEnd("s", 0),
        section ? new Attachment.InSection("Far") : new Attachment.AtLimit(Attachment.Limit.BLOCK));
    points("P", "t", Optional.of("n"), Optional.of("r"));
    limit("n");
    if (trap) {
      points("T", "x", spur ? Optional.of("y") : Optional.empty(), Optional.of("r"));
      limit("x");
    } else {
      limit("r");
    }
    if (spur) {
      limit("y");
    }
    signals();
    // With two locks and two release levers a box can take a hundred times as long as others.
    twoFrames &= signals.stream().filter(RandomBox::canReadIntoSection).count() < 2;
    boolean passenger = chance(80);
    List<Track> tracks = new ArrayList<>();
    for (String id :
        trap ? List.of("s", "o", "t", "n", "r", "x") : List.of("s", "o", "t", "n", "r")) {
      boolean siding = trap && (id.equals("r") || id.equals("x"));
      tracks.add(new Track(id, id, passenger && !siding, HERE));
    }
    if (spur) {
      tracks.add(new Track("y", "y", false, HERE));
    }
    List<GroundFrame> groundFrames =
        twoFrames
            ? List.of(
                new GroundFrame("G", "G", List.of("P"), HERE),
                new GroundFrame("G2", "G2", List.of("T"), HERE))
            : groundFrame ? List.of(new GroundFrame("G", "G", List.of("P", "T"), HERE)) : List.of();
    List<LevelCrossing> levelCrossings =
        !trap && chance(30)
            ? List.of(new LevelCrossing("L", "L", List.of(chance(50) ? "o" : "t"), HERE))
            : List.of();
    Layout plain =
        new Layout(
            tracks,
            points,
            List.of(),
            signals,
            groundFrames,
            levelCrossings,
            attachments,
            Set.of());
    return plain.withOverlaps(overlaps());
  }

  /** Beyond the home, where an outer home reads on to it: along one way, or either. */
  private List<Overlap> overlaps() {
    boolean home = signals.stream().anyMatch(s -> s.id().equals("H"));
    boolean outer = signals.stream().anyMatch(s -> s.id().equals("O"));
    if (!home || !outer) {
      return List.of();
    }
    List<List<String>> some = new ArrayList<>();
    if (chance(20)) {
      some.add(List.of("t"));
    }
    if (chance(60)) {
      some.add(List.of("t", "n"));
    }
    if (chance(60)) {
      some.add(List.of("t", "r"));
    }
    return some.stream().map(tracks -> new Overlap("H", tracks, HERE)).toList();
  }

  private void joint(String left, String right) {
    attachments.put(new TrackEnd(left, 1), new Attachment.Joint(new TrackEnd(right, 0)));
    attachments.put(new TrackEnd(right, 0), new Attachment.Joint(new TrackEnd(left, 1)));
  }

  private void limit(String track) {
    attachments.put(new TrackEnd(track, 1), new Attachment.AtLimit(Attachment.Limit.BUFFER_STOP));
  }

  /** The toe and the legs are attached at end 0, but for the track before the toe, at its end 1. */
  private void points(String id, String toe, Optional<String> normal, Optional<String> reverse) {
    Optional<Lie> trapLie = normal.isEmpty() ? Optional.of(Lie.NORMAL) : Optional.empty();
    points.add(new Points(id, id, toe, normal, reverse, trapLie, false, HERE));
    attachments.put(
        new TrackEnd(toe, id.equals("P") ? 1 : 0), new Attachment.AtPoints(id, Leg.TOE));
    normal.ifPresent(
        n -> attachments.put(new TrackEnd(n, 0), new Attachment.AtPoints(id, Leg.NORMAL)));
    reverse.ifPresent(
        r ->
            attachments.put(
                new TrackEnd(r, id.equals("P") ? 0 : 1), new Attachment.AtPoints(id, Leg.REVERSE)));
  }

  private void signals() {
    // Most are small, so that there can be many.
    int most = chance(section ? 90 : 75) ? 1 + random.nextInt(2) : section ? 3 : 5;
    List<Signal> some = new ArrayList<>();
    List<String> ways = chance(50) ? List.of() : List.of(chance(50) ? "n" : "r");
    some.add(signal("H", new TrackEnd("o", 1), "t", Arm.STOP, ways));
    if (chance(40)) {
      Arm arm = chance(60) ? Arm.STOP : chance(50) ? Arm.CALLING_ON : Arm.SHUNTING;
      List<String> other = ways.equals(List.of("n")) ? List.of("r") : List.of("n");
      some.add(signal("H2", new TrackEnd("o", 1), "t", arm, other));
    }
    if (chance(70)) {
      some.add(signal("N", new TrackEnd("n", 0), "t", Arm.STOP, List.of()));
    }
    if (chance(60)) {
      Arm arm = trap || chance(50) ? Arm.SHUNTING : Arm.STOP;
      some.add(signal("R", new TrackEnd("r", 0), "t", arm, List.of()));
    }
    if (chance(20)) {
      some.add(signal("N2", new TrackEnd("n", 0), "t", Arm.SHUNTING, List.of()));
    }
    if (chance(20)) {
      some.add(signal("O", new TrackEnd("s", 1), "o", Arm.STOP, List.of()));
    }
    if (chance(30)) {
      some.add(signal("A", new TrackEnd("t", 0), "o", Arm.STOP, List.of()));
    }
    if (chance(40)) {
      some.add(signal("D", new TrackEnd("s", 1), "o", Arm.DISTANT, List.of()));
    }
    while (some.size() > most) {
      some.remove(random.nextInt(some.size()));
    }
    signals.addAll(some);
  }

  private static Signal signal(String id, TrackEnd at, String into, Arm arm, List<String> ways) {
    return new Signal(id, id, at, into, arm, ways, false, HERE);
  }

  private Frame frame(Layout layout) {
    for (Signal signal : layout.signals()) {
      lever(new Work.OfSignal(signal.id()));
    }
    if (groundFrame && (!tokenFrame || !twoFrames && chance(30))) {
      lever(new Work.OfRelease("G", chance(85)));
    } else if (!groundFrame && trap && chance(50)) {
      lever(new Work.OfPoints(List.of("P", "T")));
    } else if (!groundFrame) {
      economical = chance(20);
      lever(new Work.OfPoints(List.of("P"), economical ? List.of("P") : List.of()));
      if (trap) {
        lever(new Work.OfPoints(List.of("T")));
      }
    }
    if (!groundFrame && !economical && chance(75)) {
      lever(new Work.OfBolt(List.of("P"), chance(40)));
    }
    if (!layout.levelCrossings().isEmpty()) {
      lever(chance(40) ? new Work.OfGates("L", chance(50)) : new Work.OfGateLock("L", chance(50)));
    }
    List<String> running =
        layout.signals().stream()
            .filter(s -> s.arm().running() && chance(80))
            .map(Signal::id)
            .toList();
    if (levers.size() < 6 && !running.isEmpty() && chance(30)) {
      lever(new Work.OfClosing(running));
    }
    while (levers.size() < 3) {
      lever(chance(50) ? new Work.Spare() : new Work.OutOfUse("points X"));
    }
    return new Frame(levers);
  }

  private void lever(Work work) {
    String id = Integer.toString(levers.size() + 1);
    levers.add(new Lever(id, id, work, HERE));
  }

  private Section section(Frame frame, Layout layout) {
    List<Section.Instrument> instruments = new ArrayList<>();
    boolean far = chance(90);
    // With no consent to wait for, what a token in a lock breaks is broken by a short sequence.
    int consent = tokenFrame ? 10 : 85;
    instruments.add(
        new Section.Instrument("Here", true, far && chance(consent) ? List.of("Far") : List.of()));
    instruments.add(
        new Section.Instrument("Far", far, chance(consent) ? List.of("Here") : List.of()));
    List<String> releases = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      if (canReadIntoSection(signal)) {
        frame.ofSignal(signal.id()).ifPresent(l -> releases.add(l.id()));
      }
    }
    Optional<Section.Release> release =
        releases.isEmpty() || chance(15)
            ? Optional.empty()
            : Optional.of(
                new Section.Release(
                    releases,
                    chance(70) ? Section.Lasts.UNTIL_PUT_IN : one(Section.Lasts.values()),
                    chance(85) ? Section.Begins.LOCKED : one(Section.Begins.values())));
    List<Section.Lock> locks =
        tokenFrame
            ? layout.groundFrames().stream().map(g -> new Section.Lock(g.id(), chance(85))).toList()
            : List.of();
    int tokens = chance(25) ? 2 : 1;
    return new Section(
        "Far",
        "s",
        Section.Token.TOKEN,
        // With two tokens and two release levers, or two locks, a box takes ten times as long.
        releases.size() > 1 || twoFrames ? 1 : tokens,
        instruments,
        "Here",
        chance(40),
        chance(50),
        chance(85) ? Section.Irregular.NEVER : one(Section.Irregular.values()),
        release,
        locks,
        HERE);
  }

  private static boolean canReadIntoSection(Signal signal) {
    return Set.of("N", "R", "A").contains(signal.id()) && signal.arm() == Arm.STOP;
  }

  private <T> T one(T[] some) {
    return some[random.nextInt(some.length)];
  }

  static Entry entry(Entry.Kind kind, String lever, List<String> others) {
    return new Entry(kind, lever, others, List.of(), false, "", HERE);
  }

  static Entry when(Entry entry, List<Entry.Condition> conditions, boolean holds) {
    return new Entry(entry.kind(), entry.lever(), entry.others(), conditions, holds, "", HERE);
  }
}
