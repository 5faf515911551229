package lockwright.audit;

/** How a certificate was checked. */
public enum CheckedBy {
  ALL_COMBINATIONS("all combinations tried"),
  SECOND_SOLVER("Sat4j");

  private final String words;

  CheckedBy(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
