package lockwright.encode.names;

/**
 * That a quantity has a value, or has it not, in the words of the spec: `lever 3` is `R`.
 *
 * @param quantity the key of a {@link lockwright.railway.words.Quantity}
 * @param value one of its values
 */
public record Fact(String quantity, String value, boolean is) {
  @Override
  public String toString() {
    return quantity + (is ? " is " : " is not ") + value;
  }
}
