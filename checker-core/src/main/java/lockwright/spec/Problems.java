package lockwright.spec;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Collects the problems of one spec while it is read. Not for several threads. */
public final class Problems {
  private static final int MOST_LETTERS = 60;
  private static final int MOST_NAMES = 1_000;

  private final List<Problem> found = new ArrayList<>();

  public void add(Message message, Span at, String what, String fix) {
    found.add(new Problem(message.code(), at, what, fix));
  }

  public void addAll(Collection<Problem> problems) {
    found.addAll(problems);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** All problems so far, by place, each once. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }

  /**
   * The name that the author probably meant, as a fix: "did you mean 'x'? ..." or the other fix.
   */
  public static String didYouMean(String written, Collection<String> known, String otherwise) {
    return nearest(written, known)
        .map(name -> "did you mean " + Problem.quote(name) + "? Else " + otherwise)
        .orElse(otherwise);
  }

  /** Long texts and large plans get no suggestion, so that many faults are still told quickly. */
  private static Optional<String> nearest(String written, Collection<String> known) {
    String best = null;
    int least = Math.max(1, written.length() / 3) + 1;
    if (written.length() > MOST_LETTERS || known.size() > MOST_NAMES) {
      return Optional.empty();
    }
    for (String name : known) {
      int distance = distance(written, name);
      if (distance < least) {
        best = name;
        least = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Edit distance (insert, delete, change a letter), not counting case. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        boolean same =
            Character.toLowerCase(a.charAt(i - 1)) == Character.toLowerCase(b.charAt(j - 1));
        int change = diagonal + (same ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
