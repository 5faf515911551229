package lockwright.report.json;

import java.util.List;

/** How many instances have each verdict. */
record Counts(int proved, int empty, int broken, int undecided, int shown, int impossible) {
  static Counts of(List<Instance> instances) {
    return new Counts(
        count(instances, "proved"),
        count(instances, "empty"),
        count(instances, "broken"),
        count(instances, "undecided"),
        count(instances, "shown"),
        count(instances, "impossible"));
  }

  private static int count(List<Instance> instances, String verdict) {
    return (int) instances.stream().filter(i -> i.verdict().equals(verdict)).count();
  }
}
