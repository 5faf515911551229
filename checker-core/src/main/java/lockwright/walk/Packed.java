package lockwright.walk;

import java.util.Arrays;

/** The values of a state in small, as a key. */
final class Packed {
  private final byte[] values;
  private final int hash;

  Packed(int[] from) {
    values = new byte[from.length];
    for (int i = 0; i < from.length; i++) {
      if (from[i] < 0 || from[i] > 255) {
        throw new IllegalArgumentException("a quantity with more than 256 values");
      }
      values[i] = (byte) from[i];
    }
    hash = Arrays.hashCode(values);
  }

  int[] values() {
    int[] all = new int[values.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = values[i] & 0xff;
    }
    return all;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Packed packed && Arrays.equals(values, packed.values);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
