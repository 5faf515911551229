package lockwright.system;

/** A state variable with the values 0 to {@code size - 1}. */
public record Variable(String name, int size) {
  public Variable {
    if (size < 1) {
      throw new IllegalArgumentException(
          "variable " + name + " has " + size + " values; 1 or more");
    }
  }
}
