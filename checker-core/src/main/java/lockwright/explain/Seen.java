package lockwright.explain;

import java.util.Map;
import java.util.stream.Collectors;
import lockwright.railway.locking.Entry;

/** An entry that holds a lever, told as it looks from that lever: 3 of {@code docs/meaning.md}. */
final class Seen {
  private final Entry entry;
  private final String lever;
  private final Map<String, String> stand;

  /**
   * @param stand N, M or R for each lever
   */
  Seen(Entry entry, String lever, Map<String, String> stand) {
    this.entry = entry;
    this.lever = lever;
    this.stand = stand;
  }

  /**
   * In words.
   *
   * @param endForbidden whether the entry forbids the lever at the other end too, and not only on
   *     the way there
   */
  String words(boolean endForbidden) {
    String a = entry.lever();
    return (lever.equals(a)
            ? own()
            : entry.others().contains(lever) ? asOther(a, endForbidden) : asCondition(endForbidden))
        + conditions();
  }

  /** The entry stands under the lever itself. */
  private String own() {
    String b = String.join(" or ", entry.others());
    return switch (entry.kind()) {
      case RELEASED_BY -> "release wanting: " + lever + " is free only with " + b + " reversed";
      case LOCKS -> "lock: " + lever + " cannot start while " + b + stands(entry.others().get(0));
      case LOCKS_BOTH_WAYS, WHILE_NORMAL_LOCKS_BOTH_WAYS ->
          "lock both ways: " + lever + " cannot move while " + b + " is part-way";
      case STARTS_ONLY_WITH_NORMAL -> "order: " + lever + " starts only with " + b + " normal";
      case NOT_AGAIN_BEFORE ->
          "rotation: since "
              + lever
              + " last left normal, "
              + b
              + " has not been fully reversed and put back";
    };
  }

  /** The lever is one that the entry names as locked, or as giving the release. */
  private String asOther(String a, boolean endForbidden) {
    if (!applies() || (entry.kind() == Entry.Kind.RELEASED_BY && !endForbidden)) {
      return piece(a);
    }
    return switch (entry.kind()) {
      case RELEASED_BY ->
          "back lock: " + a + stands(a) + ", and needs the release that " + lever + " gives";
      case LOCKS -> "converse: " + a + stands(a) + ", and holds " + lever + " normal";
      case LOCKS_BOTH_WAYS, WHILE_NORMAL_LOCKS_BOTH_WAYS ->
          "lock both ways: " + a + stands(a) + ", and holds " + lever + " as it lies";
      case STARTS_ONLY_WITH_NORMAL, NOT_AGAIN_BEFORE ->
          throw new IllegalStateException("a rule of movement has no converse: " + entry.words());
    };
  }

  /** The lever is one that the entry has a condition on. */
  private String asCondition(boolean endForbidden) {
    String a = entry.lever();
    return endForbidden
        ? "condition: with " + lever + " moved the entry would act on levers that stand against it"
        : piece(a);
  }

  private String piece(String a) {
    return "holding piece: " + a + stands(a) + ", and its piece holds " + lever + " as it lies";
  }

  /** Whether its conditions hold; a lever part-way satisfies either. */
  private boolean applies() {
    return entry.when().stream()
        .allMatch(c -> stand.get(c.lever()).matches("M|" + c.position().name()));
  }

  /** The conditions on other levers than this, with which it applies now. */
  private String conditions() {
    if (!applies()) {
      return "";
    }
    String applies =
        entry.when().stream()
            .filter(c -> !c.lever().equals(lever))
            .map(c -> c.lever() + stands(c.lever()))
            .collect(Collectors.joining(", "));
    return applies.isEmpty() ? "" : " (condition: " + applies + ")";
  }

  private String stands(String other) {
    return switch (stand.get(other)) {
      case "N" -> " is normal";
      case "R" -> " is reversed";
      default -> " is part-way";
    };
  }
}
