package lockwright.railway.teaching;

import java.util.List;
import lockwright.spec.Span;

/**
 * A lesson on a lever that is held in one state of the box.
 *
 * @param title in the trainer's words, and no other's
 * @param first movements made beforehand, in this order
 * @param reversed the levers that stand reversed then, in the order in which they are pulled, if
 *     that can be; all others stand normal
 * @param lever the one that will not move
 * @param at where the title is written
 * @param leverAt where the lever is written
 */
public record WhyNot(
    String title,
    List<First> first,
    List<String> reversed,
    String lever,
    Words words,
    Span at,
    Span leverAt) {
  public WhyNot {
    first = List.copyOf(first);
    reversed = List.copyOf(reversed);
  }

  /** Whether it is to be pulled, rather than replaced. */
  public boolean pulled() {
    return !reversed.contains(lever);
  }

  /** A movement made beforehand. */
  public record First(String lever, boolean pulled, Span at) {}
}
