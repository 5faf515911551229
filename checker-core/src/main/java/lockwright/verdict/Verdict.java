package lockwright.verdict;

import java.util.List;
import java.util.function.Function;
import lockwright.system.Clause;

/** What a search says of one target. There are three, and {@link #fold} forgets none. */
public sealed interface Verdict {
  /** It can never be reached: these clauses hold initially, are kept, and exclude it. */
  record Never(List<Clause> certificate) implements Verdict {
    public Never {
      certificate = List.copyOf(certificate);
    }
  }

  /** It is reached by this trace; {@code shortest} if none shorter exists. */
  record Reached(Trace trace, boolean shortest) implements Verdict {}

  /** A limit was met. */
  record Unknown(String reason) implements Verdict {}

  default <T> T fold(
      Function<Never, T> never, Function<Reached, T> reached, Function<Unknown, T> unknown) {
    if (this instanceof Never n) {
      return never.apply(n);
    }
    if (this instanceof Reached r) {
      return reached.apply(r);
    }
    return unknown.apply((Unknown) this);
  }
}
