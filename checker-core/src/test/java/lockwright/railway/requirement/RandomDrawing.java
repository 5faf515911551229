package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lockwright.railway.frame.Frame;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.section.Section;

/**
 * A random layout of 4 to 12 tracks, with a frame and sections. Any end may be joined to any other,
 * so that circles, balloons and roads that meet again are common; it need not look like a railway.
 */
public record RandomDrawing(Layout layout, Frame frame, List<Section> sections) {

  public static RandomDrawing of(Random random) {
    Drawing drawing = new Drawing();
    List<TrackEnd> ends = new ArrayList<>();
    int tracks = 4 + random.nextInt(9);
    for (int i = 0; i < tracks; i++) {
      drawing.track("t" + i, random.nextInt(3) > 0);
      ends.add(new TrackEnd("t" + i, 0));
      ends.add(new TrackEnd("t" + i, 1));
    }
    Collections.shuffle(ends, random);
    List<Section> sections = new ArrayList<>();
    attach(drawing, ends, sections, random);
    spring(drawing, new Random(ends.hashCode()));
    signals(drawing, drawing.layout(), random);
    groundFrames(drawing, drawing.layout(), random);
    levelCrossings(drawing, drawing.layout(), random);
    overlaps(drawing, drawing.layout(), random);
    Layout layout = drawing.layout();
    List<String> bolted =
        layout.points().stream()
            .map(p -> p.id())
            .filter(p -> random.nextInt(3) == 0 && !layout.sprung(p))
            .toList();
    if (!sections.isEmpty() && random.nextBoolean()) {
      layout.groundFrames().stream()
          .skip(random.nextInt(2))
          .findFirst()
          .ifPresent(g -> sections.set(0, Frames.section("s0", sections.get(0).track(), g.id())));
    }
    return new RandomDrawing(
        layout, Frames.of(layout, bolted, random.nextInt(3), sections), sections);
  }

  private static void attach(
      Drawing drawing, List<TrackEnd> ends, List<Section> sections, Random random) {
    int id = 0;
    for (int at = 0; at < ends.size(); id++) {
      int left = ends.size() - at;
      TrackEnd end = ends.get(at);
      int kind = random.nextInt(100);
      if (kind < 38 && left >= 3) {
        drawing.points("p" + id, end, Optional.of(ends.get(at + 1)), Optional.of(ends.get(at + 2)));
        at += 3;
      } else if (kind < 52 && left >= 2) {
        Optional<TrackEnd> leg = Optional.of(ends.get(at + 1));
        boolean normal = random.nextBoolean();
        drawing.points(
            "p" + id, end, normal ? leg : Optional.empty(), normal ? Optional.empty() : leg);
        at += 2;
      } else if (kind < 60 && left >= 4) {
        drawing.crossing("x" + id, end, ends.get(at + 1), ends.get(at + 2), ends.get(at + 3));
        at += 4;
      } else if (kind < 84 && left >= 2) {
        drawing.joint(end, ends.get(at + 1));
        at += 2;
      } else if (kind < 94 && sections.size() < 2) {
        String name = "s" + sections.size();
        drawing.section(name, end);
        sections.add(Frames.section(name, end.track()));
        at += 1;
      } else if (kind >= 97 && !sections.isEmpty()) {
        drawing.section("s0", end); // Another end that lies in it.
        at += 1;
      } else {
        Attachment.Limit[] limits = Attachment.Limit.values();
        drawing.limit(limits[random.nextInt(limits.length)], end);
        at += 1;
      }
      if (random.nextInt(8) == 0) {
        drawing.limitOfShunt(end);
      }
    }
  }

  /** Some points of a quarter of the layouts; traps more often, or too few would be flank traps. */
  private static void spring(Drawing drawing, Random springs) {
    if (springs.nextInt(4) == 0) {
      drawing.layout().points().stream()
          .filter(p -> p.trap().isPresent() || springs.nextInt(3) == 0)
          .forEach(p -> drawing.sprung(p.id()));
    }
  }

  private static void signals(Drawing drawing, Layout layout, Random random) {
    List<TrackEnd> posts = new ArrayList<>();
    layout.tracks().forEach(t -> posts.add(new TrackEnd(t.id(), 0)));
    layout.tracks().forEach(t -> posts.add(new TrackEnd(t.id(), 1)));
    Collections.shuffle(posts, random);
    int id = 0;
    int busy = 1 + random.nextInt(3);
    for (TrackEnd post : posts) {
      Optional<String> into = into(layout, post);
      int arms = into.isEmpty() || random.nextInt(4) >= busy ? 0 : 1 + random.nextInt(3);
      for (int i = 0; i < arms; i++) {
        Arm arm = random.nextInt(3) == 0 ? Arm.DISTANT : Arm.values()[random.nextInt(4)];
        boolean fixed = arm == Arm.DISTANT && random.nextInt(4) == 0;
        drawing.signal("" + ++id, arm, post, into.get(), ways(layout, random), fixed);
      }
    }
  }

  /** One or two overlaps of one to three tracks beyond some stop signals, any way that leads on. */
  static void overlaps(Drawing drawing, Layout layout, Random random) {
    for (Signal signal : layout.signals()) {
      int many = signal.arm() == Arm.STOP && random.nextInt(6) > 0 ? 1 + random.nextInt(2) : 0;
      for (int i = 0; i < many; i++) {
        List<String> along = new ArrayList<>();
        TrackEnd leaves = signal.stands();
        for (int length = 1 + random.nextInt(3); length > 0; length--) {
          TrackEnd end = leaves;
          List<TrackEnd> on =
              layout.attachments().keySet().stream()
                  .filter(e -> NaiveWalk.leads(layout, end, e))
                  .sorted(Comparator.comparing(TrackEnd::toString))
                  .toList();
          if (on.isEmpty()) {
            break;
          }
          TrackEnd enters = on.get(random.nextInt(on.size()));
          if (along.contains(enters.track())) {
            break;
          }
          along.add(enters.track());
          leaves = enters.opposite();
        }
        if (!along.isEmpty()) {
          drawing.overlap(signal.id(), along.toArray(String[]::new));
        }
      }
    }
  }

  private static List<String> ways(Layout layout, Random random) {
    List<String> ways = new ArrayList<>();
    if (random.nextBoolean()) {
      layout.tracks().forEach(t -> ways.add(t.id()));
      Collections.shuffle(ways, random);
      return ways.subList(0, 1 + random.nextInt(3));
    }
    return ways;
  }

  /** The track that a signal at an end reads into; none where no signal can stand. */
  private static Optional<String> into(Layout layout, TrackEnd end) {
    Attachment at = layout.at(end);
    if (at instanceof Attachment.Joint joint) {
      return Optional.of(joint.other().track());
    }
    if (at instanceof Attachment.AtCrossing crossing) {
      return Optional.of(crossing.across().track());
    }
    return at instanceof Attachment.AtPoints points && points.leg() != Leg.TOE
        ? Optional.of(layout.points(points.points()).toe())
        : Optional.empty();
  }

  private static void groundFrames(Drawing drawing, Layout layout, Random random) {
    List<String> some =
        layout.points().stream()
            .map(p -> p.id())
            .filter(p -> random.nextInt(4) == 0 && !layout.sprung(p))
            .toList();
    int half = some.size() / 2;
    if (half > 0) {
      drawing.groundFrame("g1", some.subList(0, half).toArray(String[]::new));
    }
    if (some.size() > half) {
      drawing.groundFrame("g2", some.subList(half, some.size()).toArray(String[]::new));
    }
  }

  private static void levelCrossings(Drawing drawing, Layout layout, Random random) {
    List<String> some =
        layout.tracks().stream().map(t -> t.id()).filter(t -> random.nextInt(5) == 0).toList();
    if (!some.isEmpty()) {
      drawing.levelCrossing("x", some.toArray(String[]::new));
    }
  }
}
