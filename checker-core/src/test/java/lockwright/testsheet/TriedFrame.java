package lockwright.testsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.working.Hold;
import lockwright.working.State;
import lockwright.working.Working;

/** A frame on which a sheet is tried, line by line, as a man would. For tests. */
final class TriedFrame {
  private final Working frame;
  private final Optional<RuleTrial> missing;
  private final Frame fitted;
  private State state;

  private TriedFrame(Working frame, Optional<RuleTrial> missing, Frame fitted, State beginning) {
    this.frame = frame;
    this.missing = missing;
    this.fitted = fitted;
    Map<String, String> values = new HashMap<>();
    Map<String, String> given = beginning.values();
    for (Quantity quantity : frame.quantities()) {
      // A turn that the right table does not have has come.
      values.put(quantity.key(), given.getOrDefault(quantity.key(), "come"));
    }
    this.state = frame.state(values);
  }

  /**
   * The numbers of the lines that did not go as they say. After the first the frame stands
   * otherwise, so there are no more.
   */
  static List<Integer> failures(Working frame, TestSheet sheet) {
    return failures(frame, Optional.empty(), sheet);
  }

  /** The same on a frame that lacks what is wanting in the trial, which is one of a lever. */
  static List<Integer> failures(Working frame, Optional<RuleTrial> missing, TestSheet sheet) {
    TriedFrame tried = new TriedFrame(frame, missing, sheet.box().frame(), sheet.beginning());
    for (Line line : sheet.lines()) {
      for (Event event : line.setUp()) {
        if (!tried.make(event)) {
          return List.of(line.number());
        }
      }
      if (tried.make(line.stroke()) != line.free()) {
        return List.of(line.number());
      }
    }
    for (RuleLine line : sheet.rules().lines()) {
      if (!line.setUp().stream().allMatch(tried::make) || tried.tries(line) != line.free()) {
        return List.of(line.number());
      }
    }
    return List.of();
  }

  /** Whether the lever is free, or the arm off; where on, it is surely so. */
  private boolean tries(RuleLine line) {
    if (line.trial().tried() instanceof RuleTrial.AtLever at) {
      return make(at.stroke());
    }
    String arm = ((RuleTrial.AtArm) line.trial().tried()).control().signal();
    return (line.free() ? frame.surelyOff(arm) : frame.off(arm)).evaluate(state);
  }

  /** A stroke is made in halves where the frame is one of halves; one begun is gone back on. */
  private boolean make(Event event) {
    State before = state;
    for (Event part : parts(event)) {
      if (!frame.holds(state, part).stream().allMatch(h -> isMissing(part, h))) {
        state = before;
        return false;
      }
      state = after(part);
    }
    return true;
  }

  private boolean isMissing(Event event, Hold hold) {
    return missing
        .filter(
            m ->
                m.tried() instanceof RuleTrial.AtLever at
                    && event instanceof Event.LeverMoves stroke
                    && stroke.lever().equals(at.lever())
                    && stroke.from() == at.from())
        .flatMap(RuleTrial::wanting)
        .filter(hold.words()::equals)
        .isPresent();
  }

  /** As {@link Working#make}, whatever holds it. */
  private State after(Event event) {
    int[] values = frame.movement(event).orElseThrow().after(state.indices());
    Map<String, String> named = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      Quantity quantity = frame.quantities().get(i);
      named.put(quantity.key(), quantity.values().get(values[i]));
    }
    return frame.state(named);
  }

  private List<Event> parts(Event event) {
    if (frame.movement(event).isPresent()) {
      return List.of(event);
    }
    List<Event> parts = new ArrayList<>();
    if (event instanceof Event.LeverMoves m) {
      parts.add(new Event.LeverMoves(m.lever(), m.from(), Position.M));
      for (String points : fitted.answering(m.lever())) {
        parts.add(new Event.PointsMove(points, m.from(), Position.M));
        parts.add(new Event.PointsMove(points, Position.M, m.to()));
      }
      parts.add(new Event.LeverMoves(m.lever(), Position.M, m.to()));
    } else if (event instanceof Event.PointsMove m) {
      parts.add(new Event.PointsMove(m.points(), m.from(), Position.M));
      parts.add(new Event.PointsMove(m.points(), Position.M, m.to()));
    } else if (event instanceof Event.GatesMove m) {
      parts.add(new Event.GatesMove(m.levelCrossing(), m.from(), Position.M));
      parts.add(new Event.GatesMove(m.levelCrossing(), Position.M, m.to()));
    }
    return parts;
  }
}
