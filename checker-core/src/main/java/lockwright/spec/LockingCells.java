package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lockwright.spec.form.LockingForm;

/** Reads the cells of a locking table; the same in both of its files. */
final class LockingCells {
  static final String LEVER = "lever";
  static final String RELEASED_BY = "released by";
  static final String WHEN = "when";
  static final String HOLDS = "holds";
  static final String NOTE = "note";

  /** The columns that hold locks, and last those that hold the converse of locks. */
  static final List<String> LOCKS = LockingForm.LOCKS;

  static final List<String> COLUMNS = LockingForm.ROW.names();

  private static final Pattern COMMA = Pattern.compile(",");
  private static final Pattern OR = Pattern.compile("\\s+or\\s+");
  private static final Pattern AND = Pattern.compile("\\s+and\\s+");
  private static final Pattern SPACE = Pattern.compile("\\s+");
  static final int LONGEST = 1_000;

  private final Problems problems;

  LockingCells(Problems problems) {
    this.problems = problems;
  }

  /** The lever that a row stands under. */
  Optional<Written> lever(Written cell) {
    return number(cell.trimmed());
  }

  /** The locks in a cell: one for each lever after a comma, or one with all joined by "or". */
  List<LockingFile.Lock> locks(String column, Written cell) {
    if (refused(cell)) {
      return List.of();
    }
    List<Written> either = cell.split(OR);
    List<Written> each = cell.split(COMMA);
    if (either.size() == 1) {
      return each.stream()
          .map(this::number)
          .flatMap(Optional::stream)
          .map(lever -> new LockingFile.Lock(column, List.of(lever)))
          .toList();
    }
    Written place = cell.trimmed();
    if (each.size() > 1) {
      problems.add(
          Message.OR_WITH_COMMA,
          place.at(),
          place.quoted() + " can be read in two ways",
          "write the levers joined by 'or' in a row of their own, for the same lever");
      return List.of();
    }
    if (!column.equals(RELEASED_BY)) {
      problems.add(
          Message.OR_NOT_HERE,
          place.at(),
          "'or' stands under '" + column + "', which has no such meaning",
          "use 'or' only under 'released by'; name several levers with commas: 5, 6");
      return List.of();
    }
    List<Written> levers = either.stream().map(this::number).flatMap(Optional::stream).toList();
    return levers.size() == either.size()
        ? List.of(new LockingFile.Lock(column, levers))
        : List.of();
  }

  /** The conditions: one of several sets, and all of that set. "And" binds closer than "or". */
  List<List<LockingFile.Condition>> when(Written cell) {
    return refused(cell) ? List.of() : cell.split(OR).stream().map(this::together).toList();
  }

  private List<LockingFile.Condition> together(Written set) {
    List<LockingFile.Condition> conditions = new ArrayList<>();
    for (Written part : set.split(AND)) {
      List<Written> two = part.split(SPACE);
      if (two.size() == 2
          && FrameReader.isLever(two.get(0).text())
          && List.of("N", "R").contains(two.get(1).text())) {
        conditions.add(new LockingFile.Condition(two.get(0), two.get(1).text().charAt(0)));
      } else {
        notUnderstood(
            part, "write a lever and N or R, several joined by 'and' or 'or': 2 N and 6 R");
      }
    }
    return List.copyOf(conditions);
  }

  /** Whether a piece holds; no, where nothing is written. */
  boolean holds(Written cell) {
    Written word = cell.trimmed();
    if (!List.of("yes", "no", "").contains(word.text())) {
      problems.add(
          Message.WRONG_WORD,
          word.at(),
          word.quoted() + " stands for 'holds'",
          "write yes or no, or nothing");
    }
    return word.text().equals("yes");
  }

  private Optional<Written> number(Written written) {
    if (FrameReader.isLever(written.text())) {
      return Optional.of(written);
    }
    notUnderstood(
        written,
        "write the numbers of levers, several with commas between them: 3, 4, 12A; of a push-pull lever"
            + " the way: 5-pull");
    return Optional.empty();
  }

  private boolean refused(Written cell) {
    if (cell.text().length() > LONGEST) {
      notUnderstood(cell.trimmed(), "write at most " + LONGEST + " characters in a cell");
      return true;
    }
    return false;
  }

  private void notUnderstood(Written written, String fix) {
    problems.add(
        Message.LOCK_CELL,
        written.at(),
        written.text().isEmpty()
            ? "a lever is missing here"
            : written.quoted() + " is not understood",
        fix);
  }
}
