package lockwright.spec.form;

import java.util.List;
import java.util.stream.Stream;
import lockwright.spec.form.Form.Items;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Rule;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Text;

/** The form of {@code locking.yaml}; its keys are the headings of {@code locking.csv} too. */
public final class LockingForm {
  private static final String LEVER = Parts.MOVED;

  private static final Form CELL =
      new Shared("cell", Parts.lever("^\\s*" + LEVER + "\\s*(,\\s*" + LEVER + "\\s*)*$"));
  private static final Form CELLS = new Shared("cells", Form.oneOrList(CELL, 0));
  private static final Form RELEASE =
      new Shared(
          "release",
          Parts.lever(
              "^\\s*" + LEVER + "\\s*((,\\s*" + LEVER + "\\s*)*|(\\s+or\\s+" + LEVER + ")*\\s*)$"));
  private static final String POSITION = LEVER + "\\s+[NR]";

  private static final List<Key> OF_LOCKS =
      List.of(
          Key.may(
              "released by",
              Form.oneOrList(RELEASE, 0),
              "Levers that must be reversed: 3, or [3, 4] for both, or '5 or 6' for either."),
          Key.may("locks", CELLS),
          Key.may("locks both ways", CELLS),
          Key.may("while normal locks both ways", CELLS),
          Key.may(
              "starts only with normal",
              CELLS,
              "Levers that must be normal as this one leaves normal."),
          Key.may(
              "not again before",
              CELLS,
              "Levers that must have been reversed and put back before this one leaves normal"
                  + " again."),
          Key.may(
              "releases",
              CELLS,
              "Converse, compared with the entries: levers that are released by this one."),
          Key.may(
              "locked by",
              CELLS,
              "Converse, compared with the entries: levers that lock this one."));

  /** The keys that hold locks, and last those that hold the converse of locks. */
  public static final List<String> LOCKS = OF_LOCKS.stream().map(Key::name).toList();

  public static final Mapping ROW =
      new Mapping(
          Stream.of(
                  List.of(Key.need("lever", Parts.LEVER)),
                  OF_LOCKS,
                  List.of(
                      Key.may(
                          "when",
                          Text.of("^\\s*" + POSITION + "(\\s+(and|or)\\s+" + POSITION + ")*\\s*$"),
                          "Conditions: 2 N and 3 R."),
                      Key.may("holds", Parts.YES_NO),
                      Key.may("note", Parts.TEXT)))
              .flatMap(List::stream)
              .toList(),
          List.of(new Rule.AtLeastOne(LOCKS), new Rule.Asks("holds", "yes", "when")));

  public static final Mapping LOCKING =
      new Mapping(Key.need("locking", new Items(ROW, 0, 0, false)));

  static final FileForm FILE =
      new FileForm(
          "locking",
          "The locking table of a signal box, in YAML in place of CSV. The cells read as in"
              + " locking.csv.",
          LOCKING);

  private LockingForm() {}
}
