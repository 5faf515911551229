package lockwright.railway.locking;

import java.util.List;
import java.util.stream.Collectors;
import lockwright.railway.frame.Position;
import lockwright.spec.Span;

/**
 * One entry of the locking table, as written; `docs/meaning.md` 3.1 says what it forbids.
 *
 * @param lever the lever that it stands under
 * @param others the other lever; for {@code RELEASED_BY} one or more, any of which releases
 * @param when the conditions, all of which must hold; empty: always
 * @param holds whether the piece holds its levers both ways (3.2); only with conditions
 */
public record Entry(
    Kind kind,
    String lever,
    List<String> others,
    List<Condition> when,
    boolean holds,
    String note,
    Span at) {
  public Entry {
    others = List.copyOf(others);
    when = List.copyOf(when);
    if (others.isEmpty() || (others.size() > 1 && kind != Kind.RELEASED_BY)) {
      throw new IllegalArgumentException("an entry names one lever: " + others);
    }
    if (holds && (when.isEmpty() || kind.ofMovement())) {
      throw new IllegalArgumentException("only a piece with conditions holds");
    }
  }

  /** The kinds of entry. */
  public enum Kind {
    RELEASED_BY("released by"),
    LOCKS("locks"),
    LOCKS_BOTH_WAYS("locks both ways"),
    WHILE_NORMAL_LOCKS_BOTH_WAYS("while normal locks both ways"),

    /** A rule of movement (3.4): it starts only while the other is normal. */
    STARTS_ONLY_WITH_NORMAL("starts only with normal"),

    /** A rule of movement (3.4): it starts again only after the other has been pulled. */
    NOT_AGAIN_BEFORE("not again before");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Whether it is a rule of how levers move, and forbids no combination of positions. */
    public boolean ofMovement() {
      return this == STARTS_ONLY_WITH_NORMAL || this == NOT_AGAIN_BEFORE;
    }
  }

  /** A condition: a lever fully at N or R. */
  public record Condition(String lever, Position position) {
    public Condition {
      if (position == Position.M) {
        throw new IllegalArgumentException("a condition is on N or R");
      }
    }

    @Override
    public String toString() {
      return lever + " " + position;
    }
  }

  /** The entry in words, as in a table: "1 released by 3 when 2 N (holds)". */
  public String words() {
    String condition =
        when.isEmpty()
            ? ""
            : " when "
                + when.stream().map(Condition::toString).collect(Collectors.joining(" and "));
    return lever
        + " "
        + kind.words()
        + " "
        + String.join(" or ", others)
        + condition
        + (holds ? " (holds)" : "");
  }
}
