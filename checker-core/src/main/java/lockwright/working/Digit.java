package lockwright.working;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** One thing left open in the beginnings; its settings are counted through in order. */
sealed interface Digit {
  /** Puts in the first setting. */
  void first(int[] values);

  /** Puts in the setting after this one, or says that there is none. */
  boolean next(int[] values);

  /** A quantity with any of its values. */
  record Choice(int at, int size) implements Digit {
    @Override
    public void first(int[] values) {
      values[at] = 0;
    }

    @Override
    public boolean next(int[] values) {
      values[at]++;
      return values[at] < size;
    }
  }

  /** A quantity with one of these of its values, in order. */
  record Among(int at, List<Integer> some) implements Digit {
    @Override
    public void first(int[] values) {
      values[at] = some.get(0);
    }

    @Override
    public boolean next(int[] values) {
      int following = some.indexOf(values[at]) + 1;
      if (following == some.size()) {
        return false;
      }
      values[at] = some.get(following);
      return true;
    }
  }

  /** A number of tokens over some instruments: first all in the last, last all in the first. */
  record Distribution(int[] at, int tokens) implements Digit {
    @Override
    public void first(int[] values) {
      Arrays.stream(at).forEach(a -> values[a] = 0);
      values[at[at.length - 1]] = tokens;
    }

    @Override
    public boolean next(int[] values) {
      for (int i = at.length - 2; i >= 0; i--) {
        int behind = IntStream.range(i + 1, at.length).map(k -> values[at[k]]).sum();
        if (behind > 0) {
          values[at[i]]++;
          IntStream.range(i + 1, at.length).forEach(k -> values[at[k]] = 0);
          values[at[at.length - 1]] = behind - 1;
          return true;
        }
      }
      return false;
    }
  }
}
