package lockwright.railway.words;

import lockwright.railway.frame.Position;

/**
 * One movement, named in the words of the spec. Says nothing of when it is allowed or what it does:
 * `docs/meaning.md` 2 to 4 do. {@link #key()} is unique in a box and stable.
 */
public sealed interface Event {
  String key();

  /** A half-stroke of a lever, or (for possibility) a whole stroke. */
  record LeverMoves(String lever, Position from, Position to) implements Event {
    @Override
    public String key() {
      return "lever " + lever + " " + from + ">" + to;
    }
  }

  /** A half-stroke of points of a ground frame. */
  record PointsMove(String points, Position from, Position to) implements Event {
    @Override
    public String key() {
      return "points " + points + " " + from + ">" + to;
    }
  }

  /** A half-stroke of gates that a gate lock lets move. */
  record GatesMove(String levelCrossing, Position from, Position to) implements Event {
    @Override
    public String key() {
      return "gates " + levelCrossing + " " + from + ">" + to;
    }
  }

  /** The rod of points breaks; they stand there, and stay. */
  record RodBreaks(String points, Position at) implements Event {
    @Override
    public String key() {
      return "rod of " + points + " breaks at " + at;
    }
  }

  /** Something done at an instrument of a section. */
  record AtInstrument(String section, Deed deed, String instrument) implements Event {
    @Override
    public String key() {
      return "section " + section + ": " + deed.words() + " at " + instrument;
    }
  }

  /**
   * A token put in, or taken out of, the lock of a ground frame that tokens of a section release.
   */
  record AtLock(String section, LockDeed deed, String groundFrame) implements Event {
    @Override
    public String key() {
      return "section " + section + ": " + deed.words() + " of " + groundFrame;
    }
  }

  /** A condition from outside becomes met, or ceases to be. */
  record ConditionChanges(String condition, boolean met) implements Event {
    @Override
    public String key() {
      return "condition " + condition + (met ? ": becomes met" : ": ceases to be met");
    }
  }

  /** The events at a lock of `docs/meaning.md` 4.2, in the order of its table. */
  enum LockDeed {
    PUT_FRESH_IN("put a fresh token in the lock"),
    PUT_OTHER_IN("put another token in the lock"),
    TAKE_OUT("take the token out of the lock");

    private final String words;

    LockDeed(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The events at instruments of `docs/meaning.md` 4.2, in the order of its table. */
  enum Deed {
    PLUNGE("plunge"),
    STOP_PLUNGING("stop plunging"),
    START_WITHDRAWAL("start a withdrawal"),
    FINISH_WITHDRAWAL("finish the withdrawal"),
    GIVE_UP_WITHDRAWAL("give up the withdrawal"),
    PUT_FRESH_IN("put a fresh token in"),
    PUT_OTHER_IN("put another token in"),
    IRREGULAR_WITHDRAWAL("irregular withdrawal");

    private final String words;

    Deed(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
