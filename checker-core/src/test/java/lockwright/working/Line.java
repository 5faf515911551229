package lockwright.working;

import java.util.Map;
import java.util.SortedMap;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Event.Deed;

/** A box with the section "line", played by hand. For tests. */
final class Line {
  private final Working working;
  private State state;

  /** Begins with these tokens in the instrument here, and all else as it first may be. */
  Line(Working working, int here) {
    this.working = working;
    for (State beginning : working.beginnings()) {
      if (state == null
          && beginning.values().get("section line: tokens in Here").equals("" + here)) {
        state = beginning;
      }
    }
  }

  /** Begins as that, but with some values changed, whether or not it may. */
  Line but(Map<String, String> changes) {
    SortedMap<String, String> values = state.values();
    values.putAll(changes);
    state = working.state(values);
    return this;
  }

  boolean free(Deed deed, String instrument) {
    return working.free(state, new Event.AtInstrument("line", deed, instrument));
  }

  Line make(Deed deed, String instrument) {
    state = working.make(state, new Event.AtInstrument("line", deed, instrument));
    return this;
  }

  /** The other plunges, and a token is taken out. */
  Line withdraw(String instrument) {
    String other = instrument.equals("Here") ? "There" : "Here";
    return make(Deed.PLUNGE, other)
        .make(Deed.START_WITHDRAWAL, instrument)
        .make(Deed.FINISH_WITHDRAWAL, instrument)
        .make(Deed.STOP_PLUNGING, other);
  }

  boolean leaves(String lever) {
    return working.free(state, new Event.LeverMoves(lever, Position.N, Position.M));
  }

  Line stroke(String lever, Position from, Position to) {
    state = working.make(state, new Event.LeverMoves(lever, from, to));
    return this;
  }

  boolean free(Event.LockDeed deed, String groundFrame) {
    return working.free(state, new Event.AtLock("line", deed, groundFrame));
  }

  Line make(Event.LockDeed deed, String groundFrame) {
    state = working.make(state, new Event.AtLock("line", deed, groundFrame));
    return this;
  }

  /** Whether points of a ground frame can leave normal. */
  boolean opens(String points) {
    return working.free(state, new Event.PointsMove(points, Position.N, Position.M));
  }

  Line moves(String points, Position from, Position to) {
    state = working.make(state, new Event.PointsMove(points, from, to));
    return this;
  }

  /** What a quantity of the section is. */
  String is(String what) {
    return state.values().get("section line: " + what);
  }
}
