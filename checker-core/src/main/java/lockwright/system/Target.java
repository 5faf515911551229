package lockwright.system;

import java.util.List;

/**
 * Something that may come about: a state, or the making of a transition. A run that reaches a state
 * is as long as its transitions; one that ends by a making counts that transition too.
 *
 * @param ordered whether, of the shortest traces, the one that comes first in order is wanted
 */
public record Target(String name, Term states, List<Making> makings, boolean ordered) {
  public Target {
    makings = List.copyOf(makings);
  }

  /**
   * The transition (by index) is made, its guard allowing, from a state in which {@code when}
   * holds.
   */
  public record Making(int transition, Term when) {}
}
