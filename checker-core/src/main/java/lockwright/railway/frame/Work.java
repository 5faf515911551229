package lockwright.railway.frame;

import java.util.List;

/** What a lever works; `docs/meaning.md` 2.1. Things are named by their ids in the plan. */
public sealed interface Work {
  /** Whether the lever is ever moved. */
  default boolean moves() {
    return true;
  }

  /**
   * An arm, by itself or with other levers; `docs/meaning.md` 2.7.
   *
   * @param ways the tracks named in {@code for}, one of which the routes pass that the lever is
   *     for; empty: it is for all routes
   * @param slotted the arm is off only while its other levers are over too
   */
  record OfSignal(String signal, List<String> ways, boolean slotted) implements Work {
    public OfSignal {
      ways = List.copyOf(ways);
      if (slotted && !ways.isEmpty()) {
        throw new IllegalArgumentException("signal " + signal + ": slotted, or for some routes");
      }
    }

    public OfSignal(String signal) {
      this(signal, List.of(), false);
    }

    /** Whether this lever is for what passes these tracks. */
    public boolean isFor(List<String> tracks) {
      return ways.isEmpty() || ways.stream().anyMatch(tracks::contains);
    }
  }

  /**
   * Points.
   *
   * @param economical those of them that an economical lock bolts with the same lever
   */
  record OfPoints(List<String> points, List<String> economical) implements Work {
    public OfPoints {
      points = List.copyOf(points);
      economical = List.copyOf(economical);
    }

    public OfPoints(List<String> points) {
      this(points, List.of());
    }
  }

  /** The bolts of points: in with the lever normal, or out. */
  record OfBolt(List<String> points, boolean normallyIn) implements Work {}

  /** The release of a ground frame; held: the lever may leave R only with all its points normal. */
  record OfRelease(String groundFrame, boolean heldWhileOpen) implements Work {}

  /** The gates themselves; across the road with the lever normal, or reversed. */
  record OfGates(String levelCrossing, boolean normallyAcrossRoad) implements Work {}

  /** The lock that holds gates moved by hand or wheel across the road: in or out at normal. */
  record OfGateLock(String levelCrossing, boolean normallyIn) implements Work {}

  /** The wickets; nothing is asked of them. */
  record OfWickets(String levelCrossing) implements Work {}

  /**
   * A closing lever: reversed, the box is switched out.
   *
   * @param signals those of the through lines, which are then off; for opposed routes, together
   */
  record OfClosing(List<String> signals) implements Work {
    public OfClosing {
      signals = List.copyOf(signals);
    }
  }

  record Spare() implements Work {
    @Override
    public boolean moves() {
      return false;
    }
  }

  /**
   * Nothing any more: disconnected, and secured normal.
   *
   * @param was what it worked, in words
   */
  record OutOfUse(String was) implements Work {
    @Override
    public boolean moves() {
      return false;
    }
  }
}
