package lockwright.railway.frame;

import java.util.Optional;
import lockwright.spec.Span;

/**
 * A lever of the frame: its number (digits, perhaps a letter), its label and what it works; or one
 * way of a push-pull lever, {@code 5-pull} or {@code 5-push} ({@code docs/meaning.md} 2.7).
 */
public record Lever(String id, String label, Work work, Span at) {
  /** How the id of a way ends. */
  public static final String PULL = "-pull";

  public static final String PUSH = "-push";

  /** Of one way of a push-pull lever, the other way's id. */
  public Optional<String> otherWay() {
    return otherWay(id);
  }

  /** The same of an id. */
  public static Optional<String> otherWay(String id) {
    String number = number(id);
    return id.endsWith(PULL)
        ? Optional.of(number + PUSH)
        : id.endsWith(PUSH) ? Optional.of(number + PULL) : Optional.empty();
  }

  /** The lever's number, without the way. */
  public static String number(String id) {
    boolean way = id.endsWith(PULL) || id.endsWith(PUSH);
    return way ? id.substring(0, id.length() - PULL.length()) : id;
  }
}
