package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import lockwright.railway.words.Event;

/** A movement, by its parts and by its key. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
sealed interface EventPart {

  @JsonTypeName("lever")
  record Lever(String lever, String from, String to, String key) implements EventPart {}

  /** Of points of a ground frame. */
  @JsonTypeName("points")
  record Points(String points, String from, String to, String key) implements EventPart {}

  /** Of gates that have a gate lock. */
  @JsonTypeName("gates")
  record Gates(String levelCrossing, String from, String to, String key) implements EventPart {}

  /** A rod of points breaks, which stood there. */
  @JsonTypeName("rod")
  record Rod(String points, String at, String key) implements EventPart {}

  @JsonTypeName("instrument")
  record Instrument(String section, String instrument, String deed, String key)
      implements EventPart {}

  /** A token put in, or taken out of, the lock of a ground frame. */
  @JsonTypeName("lock")
  record Lock(String section, String groundFrame, String deed, String key) implements EventPart {}

  /** A condition from outside becomes met, or ceases to be. */
  @JsonTypeName("condition")
  record Condition(String condition, boolean met, String key) implements EventPart {}

  static EventPart of(Event event) {
    if (event instanceof Event.LeverMoves e) {
      return new Lever(e.lever(), e.from().name(), e.to().name(), e.key());
    } else if (event instanceof Event.PointsMove e) {
      return new Points(e.points(), e.from().name(), e.to().name(), e.key());
    } else if (event instanceof Event.GatesMove e) {
      return new Gates(e.levelCrossing(), e.from().name(), e.to().name(), e.key());
    }
    if (event instanceof Event.ConditionChanges e) {
      return new Condition(e.condition(), e.met(), e.key());
    }
    if (event instanceof Event.RodBreaks e) {
      return new Rod(e.points(), e.at().name(), e.key());
    }
    if (event instanceof Event.AtLock e) {
      return new Lock(e.section(), e.groundFrame(), e.deed().words(), e.key());
    }
    Event.AtInstrument e = (Event.AtInstrument) event;
    return new Instrument(e.section(), e.instrument(), e.deed().words(), e.key());
  }
}
