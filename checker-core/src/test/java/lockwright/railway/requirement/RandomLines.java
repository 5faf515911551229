package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.TrackEnd;

/**
 * A random piece of double line, as one meets it: crossovers either way, junctions whose branch
 * crosses the other line, sidings with a trap, and signals both ways between them. So points work
 * with points, which in a {@link RandomDrawing} they seldom do.
 */
final class RandomLines {
  private final Random random;
  private final Drawing drawing = new Drawing();
  private final List<List<String>> oneLever = new ArrayList<>();
  private int tracks;
  private int signals;
  private int points;
  private TrackEnd a;
  private TrackEnd b;

  private RandomLines(Random random) {
    this.random = random;
  }

  static RandomDrawing of(Random random) {
    return new RandomLines(random).drawing();
  }

  private RandomDrawing drawing() {
    a = begins();
    b = begins();
    int pieces = 1 + random.nextInt(2);
    for (int i = 0; i < pieces; i++) {
      a = post(a);
      b = post(b);
      switch (random.nextInt(4)) {
        case 0 -> crossover(random.nextBoolean());
        case 1 -> siding();
        default -> junction();
      }
    }
    a = post(a);
    b = post(b);
    drawing.limit(Attachment.Limit.BLOCK, a);
    drawing.limit(Attachment.Limit.BLOCK, b);
    RandomDrawing.overlaps(drawing, drawing.layout(), random);
    Layout layout = drawing.layout();
    return new RandomDrawing(
        layout, tied(Frames.of(layout, List.of(), random.nextInt(3))), List.of());
  }

  private TrackEnd begins() {
    TrackEnd end = track();
    drawing.limit(Attachment.Limit.BLOCK, end.opposite());
    return end;
  }

  /** The far end of a new track. */
  private TrackEnd track() {
    String id = "t" + tracks++;
    drawing.track(id, true);
    return new TrackEnd(id, 1);
  }

  /** A joint, perhaps with signals. */
  private TrackEnd post(TrackEnd end) {
    TrackEnd on = track();
    drawing.joint(end, on.opposite());
    if (random.nextInt(10) < 7) {
      signal(end, on.track());
    }
    if (random.nextInt(10) < 7) {
      signal(on.opposite(), end.track());
    }
    return on;
  }

  private void signal(TrackEnd stands, String into) {
    Arm arm = random.nextInt(4) == 0 ? Arm.SHUNTING : Arm.STOP;
    drawing.signal("" + ++signals, arm, stands, into, List.of(), false);
  }

  private String points(TrackEnd toe, TrackEnd normal, TrackEnd reverse) {
    String id = "p" + points++;
    boolean swapped = random.nextInt(4) == 0;
    drawing.points(
        id, toe, Optional.of(swapped ? reverse : normal), Optional.of(swapped ? normal : reverse));
    return id;
  }

  /** From one line into the other, facing or trailing. */
  private void crossover(boolean facing) {
    TrackEnd across = track();
    TrackEnd onA = track();
    TrackEnd onB = track();
    String one =
        facing
            ? points(a, onA.opposite(), across.opposite())
            : points(onA.opposite(), a, across.opposite());
    String other = facing ? points(onB.opposite(), b, across) : points(b, onB.opposite(), across);
    if (random.nextInt(10) < 7) {
      oneLever.add(List.of(one, other));
    }
    a = onA;
    b = onB;
  }

  /** A double branch, one line of which crosses the nearer main line; the other may have a trap. */
  private void junction() {
    TrackEnd onA = track();
    TrackEnd away = track();
    TrackEnd branch = track();
    TrackEnd main = track();
    TrackEnd other = track();
    TrackEnd onB = track();
    points(a, onA.opposite(), away.opposite());
    String joins = points(b, main.opposite(), other.opposite());
    if (random.nextInt(3) == 0) {
      TrackEnd far = track();
      String trap = "p" + points++;
      drawing.points(trap, far.opposite(), Optional.empty(), Optional.of(other));
      oneLever.add(List.of(trap, joins));
      other = far;
    }
    drawing.crossing("x" + points, main, onB.opposite(), away, branch.opposite());
    drawing.limit(Attachment.Limit.BLOCK, post(branch));
    drawing.limit(Attachment.Limit.BLOCK, post(other));
    a = onA;
    b = onB;
  }

  private void siding() {
    TrackEnd on = track();
    TrackEnd lead = track();
    TrackEnd yard = track();
    String one = points(a, on.opposite(), lead.opposite());
    String trap = "p" + points++;
    drawing.points(trap, yard.opposite(), Optional.empty(), Optional.of(lead));
    TrackEnd far = track();
    drawing.joint(yard, far.opposite());
    signal(far.opposite(), yard.track());
    drawing.limit(Attachment.Limit.BUFFER_STOP, far);
    if (random.nextBoolean()) {
      oneLever.add(List.of(trap, one));
    }
    a = on;
  }

  /** With the points of one lever on it, and now and then two levers as the ways of one. */
  private Frame tied(Frame frame) {
    List<Lever> levers = new ArrayList<>(frame.levers());
    for (List<String> both : oneLever) {
      levers.replaceAll(
          l ->
              works(l, both.get(0))
                  ? with(l, l.id(), new Work.OfPoints(both))
                  : works(l, both.get(1)) ? with(l, l.id(), new Work.Spare()) : l);
    }
    List<Lever> some =
        levers.stream().filter(l -> l.work() instanceof Work.OfPoints).limit(2).toList();
    if (some.size() == 2 && random.nextInt(3) == 0) {
      String id = some.get(0).id();
      levers.set(
          levers.indexOf(some.get(0)), with(some.get(0), id + Lever.PULL, some.get(0).work()));
      levers.set(
          levers.indexOf(some.get(1)), with(some.get(1), id + Lever.PUSH, some.get(1).work()));
    }
    return new Frame(levers);
  }

  private static boolean works(Lever lever, String points) {
    return lever.work() instanceof Work.OfPoints w && w.points().equals(List.of(points));
  }

  private static Lever with(Lever like, String id, Work work) {
    return new Lever(id, like.label(), work, like.at());
  }
}
