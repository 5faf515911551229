package lockwright.railway;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.spec.FrameFile;
import lockwright.spec.LockingFile;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.Span;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Makes the entries of the locking table, and tells those that cannot be meant. */
final class LockingBuilder {
  private final Map<String, FrameFile.Lever> levers = new HashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private final boolean frameIsWhole;
  private final Problems problems;

  private LockingBuilder(FrameFile frame, SpecFolder spec, Problems problems) {
    this.frameIsWhole = spec.isWhole(SpecFolder.FRAME);
    this.problems = problems;
    frame.levers().forEach(lever -> levers.put(lever.id().text(), lever));
  }

  /** The entries in order of the table; only worth having if no problem was told. */
  static List<Entry> build(LockingFile table, FrameFile frame, SpecFolder spec, Problems problems) {
    LockingBuilder builder = new LockingBuilder(frame, spec, problems);
    table.rows().forEach(builder::row);
    if (!spec.isWhole(table.at().file())) {
      return builder.entries;
    }
    if (table.rows().isEmpty()) {
      problems.add(
          Message.NO_ENTRY,
          table.at(),
          "the locking table has no entry",
          "write its entries; of a frame without locking nothing is ever proved");
    }
    builder.refuseTwice();
    builder.refuseIdle();
    builder.refuseImmovable();
    Converses.compare(table, builder.entries, problems);
    return builder.entries;
  }

  private void row(LockingFile.Row row) {
    movable(row.lever());
    row.when().forEach(condition -> movable(condition.lever()));
    refuseConditionTwice(row.when());
    for (LockingFile.Lock lock : row.locks()) {
      lock.others().forEach(this::movable);
      lock.others().forEach(other -> refuseItself(row.lever(), other));
      refuseOwnCondition(row, lock);
      if (!lock.isConverse()) {
        refuseHoldingRule(row, lock);
        entries.add(entry(row, lock));
      }
    }
  }

  private void movable(Written lever) {
    FrameFile.Lever known = levers.get(lever.text());
    if (known == null && !frameIsWhole) {
      return;
    }
    if (known == null) {
      problems.add(
          Message.LOCK_UNKNOWN_LEVER,
          lever.at(),
          "the frame has no lever " + lever.text(),
          Problems.didYouMean(
              lever.text(), levers.keySet(), "add the lever to frame.yaml, or name another here"));
    } else if (known.work().filter(LockingBuilder::isStill).isPresent()) {
      problems.add(
          Message.LOCK_SPARE_LEVER,
          lever.at(),
          "lever "
              + lever.text()
              + (known.work().get() instanceof FrameFile.Spare ? " is spare" : " is out of use")
              + " and does not move, but stands in the locking table",
          "take it out of the table, or say in frame.yaml what it works");
    }
  }

  private static boolean isStill(FrameFile.Work work) {
    return work instanceof FrameFile.Spare || work instanceof FrameFile.OutOfUse;
  }

  private void refuseItself(Written lever, Written other) {
    if (lever.text().equals(other.text())
        || Lever.otherWay(lever.text()).filter(other.text()::equals).isPresent()) {
      problems.add(
          Message.LOCK_ON_ITSELF,
          other.at(),
          "lever " + lever.text() + " has a lock on itself",
          "name the other lever");
    }
  }

  private void refuseConditionTwice(List<LockingFile.Condition> when) {
    Set<String> seen = new HashSet<>();
    for (LockingFile.Condition condition : when) {
      if (!seen.add(condition.lever().text())) {
        problems.add(
            Message.CONDITION_TWICE,
            condition.lever().at(),
            "lever " + condition.lever().text() + " stands twice under 'when'",
            "keep one of the two; 'and' asks for both at once");
      }
    }
  }

  private void refuseOwnCondition(LockingFile.Row row, LockingFile.Lock lock) {
    for (LockingFile.Condition condition : row.when()) {
      boolean own =
          Stream.concat(Stream.of(row.lever()), lock.others().stream())
              .anyMatch(lever -> lever.text().equals(condition.lever().text()));
      if (own) {
        problems.add(
            Message.CONDITION_ON_OWN_LEVER,
            condition.lever().at(),
            "the condition is on lever "
                + condition.lever().text()
                + ", which the entry itself"
                + " locks or stands under",
            "make the condition on another lever, or take it away");
      }
    }
  }

  private void refuseHoldingRule(LockingFile.Row row, LockingFile.Lock lock) {
    if (row.holds() && kind(lock).ofMovement()) {
      problems.add(
          Message.RULE_HOLDS,
          lock.others().get(0).at(),
          "'" + lock.column() + "' stands in a row with 'holds: yes', but it is no locking piece",
          "write it in a row of its own, for the same lever, without 'holds'");
    }
  }

  private static Entry.Kind kind(LockingFile.Lock lock) {
    return Stream.of(Entry.Kind.values())
        .filter(k -> k.words().equals(lock.column()))
        .findFirst()
        .orElseThrow();
  }

  private static Entry entry(LockingFile.Row row, LockingFile.Lock lock) {
    Entry.Kind kind = kind(lock);
    return new Entry(
        kind,
        row.lever().text(),
        lock.others().stream().map(Written::text).toList(),
        row.when().stream().map(c -> new Entry.Condition(c.lever().text(), position(c))).toList(),
        row.holds() && !row.when().isEmpty() && !kind.ofMovement(),
        row.note(),
        lock.others().get(0).at());
  }

  private static Position position(LockingFile.Condition condition) {
    return condition.position() == 'N' ? Position.N : Position.R;
  }

  private void refuseTwice() {
    Map<String, Span> printed = new HashMap<>();
    for (Entry entry : entries) {
      Set<String> others = new TreeSet<>(entry.others());
      Set<String> when = new TreeSet<>();
      entry.when().forEach(condition -> when.add(condition.toString()));
      String key = entry.kind() + " " + entry.lever() + " " + others + " " + when;
      Span earlier = printed.putIfAbsent(key, entry.at());
      if (earlier != null || others.size() < entry.others().size()) {
        problems.add(
            Message.ENTRY_TWICE,
            entry.at(),
            "'"
                + entry.words()
                + "' "
                + (earlier == null
                    ? "names a lever twice"
                    : "is written twice, first in line " + earlier.line()),
            "take one away, or write the lever that was meant");
      }
    }
  }

  /** An entry that acts only where another does that asks for less. */
  private void refuseIdle() {
    for (Entry idle : entries) {
      entries.stream()
          .filter(e -> e.kind() == idle.kind() && e.lever().equals(idle.lever()))
          .filter(e -> idle.others().containsAll(e.others()) && idle.when().containsAll(e.when()))
          .filter(e -> !idle.holds() && size(e) < size(idle))
          .findFirst()
          .ifPresent(
              e ->
                  problems.add(
                      Message.NEVER_ACTS,
                      idle.at(),
                      "'"
                          + idle.words()
                          + "' can never act: '"
                          + e.words()
                          + "', in line "
                          + e.at().line()
                          + ", locks whenever it would",
                      "take one of the two away, or correct the conditions"));
    }
  }

  private static int size(Entry entry) {
    return entry.others().size() + entry.when().size();
  }

  /** Released by b means b reversed; locks b, from either side, means b normal. */
  private void refuseImmovable() {
    Set<List<String>> locked = new HashSet<>();
    for (Entry entry : entries) {
      if (entry.kind() == Entry.Kind.LOCKS && entry.when().isEmpty()) {
        locked.add(List.of(entry.lever(), entry.others().get(0)));
        locked.add(List.of(entry.others().get(0), entry.lever()));
      } else if (entry.kind() == Entry.Kind.STARTS_ONLY_WITH_NORMAL && entry.when().isEmpty()) {
        locked.add(List.of(entry.lever(), entry.others().get(0)));
      }
    }
    for (Entry entry : entries) {
      if (entry.kind() == Entry.Kind.RELEASED_BY
          && entry.when().isEmpty()
          && entry.others().stream().allMatch(b -> locked.contains(List.of(entry.lever(), b)))) {
        problems.add(
            Message.NEVER_MOVES,
            entry.at(),
            "lever "
                + entry.lever()
                + " can never move: it is released by "
                + String.join(" or ", entry.others())
                + ", and the table also locks them against"
                + " each other",
            "take one of the two entries away, or write under 'when' the conditions that part them");
      }
    }
  }
}
