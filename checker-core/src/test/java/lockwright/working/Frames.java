package lockwright.working;

import java.util.List;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/** A frame worked by hand: levers pulled and put back by half-strokes. For tests. */
final class Frames {
  private final Working working;
  private State state;

  private Frames(Working working) {
    this.working = working;
    this.state = working.beginnings().iterator().next();
  }

  /** The frame after these levers have been pulled, in order. */
  static Frames pulled(Working working, String... levers) {
    Frames frame = new Frames(working);
    List.of(levers).forEach(frame::pull);
    return frame;
  }

  private void pull(String lever) {
    make(new Event.LeverMoves(lever, Position.N, Position.M));
    make(new Event.LeverMoves(lever, Position.M, Position.R));
  }

  Frames make(Event event) {
    state = working.make(state, event);
    return this;
  }

  State state() {
    return state;
  }

  /** Whether the lever, standing at an end, can leave it. */
  boolean free(String lever) {
    Position from = Position.valueOf(state.values().get("lever " + lever));
    return working.free(state, new Event.LeverMoves(lever, from, Position.M));
  }
}
