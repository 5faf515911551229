package lockwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/** What a movement moves outside the frame: 2.2 of {@code docs/meaning.md}, in words. */
public final class Outside {
  private final Box box;

  Outside(Box box) {
    this.box = box;
  }

  /** What the movement moves and what changes in the sections with it, joined by semicolons. */
  String of(Event event, SortedMap<String, String> before, SortedMap<String, String> after) {
    List<String> moved = new ArrayList<>();
    if (event instanceof Event.LeverMoves move) {
      Work work = box.frame().lever(move.lever()).work();
      if (work instanceof Work.OfSignal of && box.frame().giving(of.signal()).size() > 1) {
        arm(of.signal(), before, after, moved);
      } else {
        work(work, move.to(), moved);
      }
    } else if (event instanceof Event.PointsMove move) {
      moved.add(points(List.of(move.points()), move.to()));
    } else if (event instanceof Event.GatesMove move) {
      moved.add(gates(move.levelCrossing(), move.to(), true));
    } else if (event instanceof Event.AtLock at) {
      boolean home = at.deed() == Event.LockDeed.TAKE_OUT;
      moved.add(at.groundFrame() + " release" + (home ? " home" : " given"));
    }
    box.sections().forEach(s -> section(s, before, after, moved));
    return String.join("; ", moved);
  }

  /** An arm that several levers give. */
  private void arm(
      String signal,
      SortedMap<String, String> before,
      SortedMap<String, String> after,
      List<String> moved) {
    Position now = arm(signal, after);
    moved.add(
        "signal "
            + signal
            + (now == arm(signal, before) ? " still" : "")
            + one(now, " on", " part-way, taken as off", " off"));
  }

  private Position arm(String signal, SortedMap<String, String> values) {
    Stream<Position> levers =
        box.frame().giving(signal).stream()
            .map(l -> Position.valueOf(values.get(Quantity.lever(l.id()).key())));
    return box.frame().slotted(signal)
        ? levers.min(Comparator.naturalOrder()).orElseThrow()
        : levers.max(Comparator.naturalOrder()).orElseThrow();
  }

  private static void work(Work work, Position to, List<String> moved) {
    if (work instanceof Work.OfSignal signal) {
      moved.add("signal " + signal.signal() + one(to, " on", " part-way, taken as off", " off"));
    } else if (work instanceof Work.OfPoints points) {
      moved.add(points(points.points(), to));
      if (!points.economical().isEmpty()) {
        String locks = "economical lock of " + String.join(", ", points.economical());
        moved.add(locks + one(to, " in", " out", " in"));
      }
    } else if (work instanceof Work.OfBolt bolt) {
      String bolts = "bolt of " + String.join(", ", bolt.points());
      String atNormal = bolt.normallyIn() ? " in" : " out";
      String atReverse = bolt.normallyIn() ? " out" : " in";
      moved.add(bolts + one(to, atNormal, " neither in nor out", atReverse));
    } else if (work instanceof Work.OfRelease release) {
      moved.add(
          release.groundFrame()
              + " release"
              + one(to, " home", " neither home nor given", " given"));
    } else if (work instanceof Work.OfGates gates) {
      moved.add(gates(gates.levelCrossing(), to, gates.normallyAcrossRoad()));
    } else if (work instanceof Work.OfGateLock lock) {
      String at = lock.normallyIn() ? " in" : " out";
      String then = lock.normallyIn() ? " out" : " in";
      moved.add("gate lock of " + lock.levelCrossing() + one(to, at, " neither in nor out", then));
    }
  }

  private static String points(List<String> points, Position to) {
    return "points "
        + String.join(", ", points)
        + " lie"
        + one(to, " normal", " neither way", " reverse");
  }

  private static String gates(String crossing, Position to, boolean normallyAcrossRoad) {
    String road = " across the road";
    String line = " across the line";
    return "gates of "
        + crossing
        + one(to, normallyAcrossRoad ? road : line, " part-way", normallyAcrossRoad ? line : road);
  }

  private static String one(Position to, String normal, String partWay, String reverse) {
    return to == Position.N ? normal : to == Position.M ? partWay : reverse;
  }

  private static void section(
      Section s,
      SortedMap<String, String> before,
      SortedMap<String, String> after,
      List<String> moved) {
    String token = s.token().name().toLowerCase(Locale.ROOT);
    String out = Quantity.tokensOut(s.name(), s.tokens()).key();
    if (!before.get(out).equals(after.get(out))) {
      moved.add(counted(after.get(out), token) + " out");
    }
    String release = Quantity.release(s.name()).key();
    if (s.release().isPresent() && !before.get(release).equals(after.get(release))) {
      List<String> levers = s.release().get().levers();
      moved.add(
          (levers.size() == 1 ? "lever " : "levers ")
              + String.join(", ", levers)
              + (after.get(release).equals("given") ? " released for one pull" : " locked again"));
    }
  }

  /** "1 token", "2 tokens", "2 staffs". */
  public static String counted(String number, String token) {
    return number + " " + token + (number.equals("1") ? "" : "s");
  }
}
