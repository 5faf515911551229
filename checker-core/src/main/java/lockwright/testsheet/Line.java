package lockwright.testsheet;

import java.util.List;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.working.Hold;
import lockwright.working.State;

/**
 * One line of the sheet, as it was played.
 *
 * @param number from 1
 * @param group the lever under whose entries it stands; empty for those with all levers normal
 * @param setUp the movements before it, each of which is to be free
 * @param at the state in which the lever is tried
 * @param lever the lever that is tried, from where it stands
 * @param heldBy what is to hold it; nothing, if it is to be free
 * @param alone whether that is one entry, and nothing else, however pieces that are not marked hold
 * @param covers what of which entries it tries
 * @param after the state after it: the lever has moved, if it is free
 */
public record Line(
    int number,
    String group,
    List<Event> setUp,
    State at,
    String lever,
    Position from,
    List<Hold> heldBy,
    boolean alone,
    List<Trial> covers,
    State after) {
  public Line {
    setUp = List.copyOf(setUp);
    heldBy = List.copyOf(heldBy);
    covers = List.copyOf(covers);
  }

  public boolean free() {
    return heldBy.isEmpty();
  }

  /** The stroke that is tried. */
  public Event.LeverMoves stroke() {
    return new Event.LeverMoves(lever, from, from == Position.N ? Position.R : Position.N);
  }

  /** Whether a frame that lacks this entry, and is right else, fails here. */
  public boolean catches(Entry entry) {
    return alone && heldBy.get(0).entry().filter(entry::equals).isPresent();
  }
}
