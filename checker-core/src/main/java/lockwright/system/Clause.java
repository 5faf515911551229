package lockwright.system;

import java.util.List;

/** At least one of these holds; at most one a variable, in order of the variables. */
public record Clause(List<Among> among) {
  public Clause {
    among = List.copyOf(among);
    for (int i = 1; i < among.size(); i++) {
      if (among.get(i - 1).variable() >= among.get(i).variable()) {
        throw new IllegalArgumentException("a clause names each variable once, in order: " + among);
      }
    }
  }

  public boolean holds(int[] state) {
    for (Among one : among) {
      if (one.holds(state)) {
        return true;
      }
    }
    return false;
  }
}
