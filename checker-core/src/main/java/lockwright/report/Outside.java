package lockwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/** What a movement moves outside the frame: 2.2 of {@code docs/meaning.md}, in words. */
public final class Outside {
  private final Box box;
  private final Arms arms;

  Outside(Box box) {
    this.box = box;
    this.arms = Arms.of(box);
  }

  /** What the movement moves and what changes in the sections with it, joined by semicolons. */
  String of(Event event, SortedMap<String, String> before, SortedMap<String, String> after) {
    List<String> moved = new ArrayList<>();
    Optional<String> arm = arm(event);
    if (event instanceof Event.LeverMoves move && arm.isEmpty()) {
      work(box.frame().lever(move.lever()).work(), move.to(), after, moved);
    } else if (event instanceof Event.RodBreaks broken) {
      moved.add(stay(broken.points(), after));
    } else if (event instanceof Event.PointsMove move) {
      moved.add(points(List.of(move.points()), move.to()));
    } else if (event instanceof Event.GatesMove move) {
      moved.add(gates(move.levelCrossing(), move.to(), true));
    } else if (event instanceof Event.AtLock at) {
      boolean home = at.deed() == Event.LockDeed.TAKE_OUT;
      moved.add(
          needsBoth(at.groundFrame())
              ? at.groundFrame() + " lock " + (home ? "empty" : "with a token")
              : at.groundFrame() + " release" + (home ? " home" : " given"));
    }
    moved.addAll(arms.changes(arm.orElse(null), before, after));
    box.sections().forEach(s -> section(s, before, after, moved));
    return String.join("; ", moved);
  }

  /** The arm whose lever is moved, if it does not just follow this lever. */
  private Optional<String> arm(Event event) {
    return event instanceof Event.LeverMoves move
            && box.frame().lever(move.lever()).work() instanceof Work.OfSignal work
            && !arms.followsOneLever(work.signal())
        ? Optional.of(work.signal())
        : Optional.empty();
  }

  private void work(Work work, Position to, SortedMap<String, String> after, List<String> moved) {
    if (work instanceof Work.OfSignal signal) {
      moved.add("signal " + signal.signal() + one(to, " on", " part-way, taken as off", " off"));
    } else if (work instanceof Work.OfPoints points) {
      List<String> with =
          points.points().stream()
              .filter(p -> !broken(p, after))
              .filter(
                  p -> after.getOrDefault(Quantity.points(p).key(), to.name()).equals(to.name()))
              .toList();
      if (!with.isEmpty()) {
        moved.add(points(with, to));
      }
      points.points().stream()
          .filter(p -> broken(p, after))
          .forEach(p -> moved.add(stay(p, after)));
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
              + (needsBoth(release.groundFrame()) ? " release by lever" : " release")
              + one(to, " home", " neither home nor given", " given"));
    } else if (work instanceof Work.OfGates gates) {
      moved.add(gates(gates.levelCrossing(), to, gates.normallyAcrossRoad()));
    } else if (work instanceof Work.OfGateLock lock) {
      String at = lock.normallyIn() ? " in" : " out";
      String then = lock.normallyIn() ? " out" : " in";
      moved.add("gate lock of " + lock.levelCrossing() + one(to, at, " neither in nor out", then));
    }
  }

  private static boolean broken(String points, SortedMap<String, String> state) {
    return state.getOrDefault(Quantity.rod(points).key(), "whole").startsWith("broken");
  }

  /** Where points with a broken rod were left. */
  private static String stay(String points, SortedMap<String, String> state) {
    String rod = state.get(Quantity.rod(points).key());
    Position left = Position.valueOf(rod.substring(rod.length() - 1));
    return "points " + points + " stay" + one(left, " normal", " neither way", " reverse");
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

  /** Lever and token are both needed, so that neither alone gives the release. */
  private boolean needsBoth(String groundFrame) {
    return box.frame().ofRelease(groundFrame).isPresent() && box.releasing(groundFrame).isPresent();
  }
}
