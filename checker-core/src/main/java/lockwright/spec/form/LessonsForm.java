package lockwright.spec.form;

import static lockwright.spec.form.Parts.LEVER;
import static lockwright.spec.form.Parts.TEXT;

import java.util.List;
import lockwright.spec.form.Form.Items;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.Rule;
import lockwright.spec.form.Form.Text;

/** The form of {@code lessons.yaml}. */
public final class LessonsForm {
  private static final Form ANY_TITLE = Text.of("");

  private static final Key INTRODUCTION =
      Key.may("introduction", TEXT, "Words before the story of this lesson.");
  private static final Key CLOSING = Key.may("closing", TEXT, "Words at the end of this lesson.");
  private static final Key STEPS =
      Key.may(
          "steps",
          new Named(ANY_TITLE, TEXT),
          "Words beside steps, each named by its movement: 'the beginning', 'pull 17', 'replace 17';"
              + " 'pull 17 (2)' where it is pulled a second time.");

  public static final Mapping LESSON = new Mapping(INTRODUCTION, CLOSING, STEPS);

  public static final Mapping WHY_NOT =
      new Mapping(
              Key.may(
                  "first",
                  new Items(Text.of("^(pull|replace) +" + Parts.MOVED + "$"), 0, 0, false),
                  "Movements of levers made beforehand, in this order: pull 2, replace 2."),
              Key.may(
                  "reversed",
                  Form.oneOrList(LEVER, 0),
                  "The levers that stand reversed then, in the order in which they are pulled. All"
                      + " others stand normal."),
              Key.may("pull", LEVER, "The lever that cannot be pulled."),
              Key.may(
                  "replace",
                  LEVER,
                  "The lever that cannot be replaced; it is one of those reversed."),
              INTRODUCTION,
              CLOSING,
              STEPS)
          .with(new Rule.JustOne(List.of("pull", "replace")));

  public static final Mapping LESSONS =
      new Mapping(
          Key.may(
              "introduction", TEXT, "Words before all lessons, on the page that leads to them."),
          Key.may("closing", TEXT, "Words after all lessons, on the same page."),
          Key.may(
              "lessons",
              new Named(Parts.INSTANCE, LESSON),
              "By the names of the requirements, as in the list of lessons, check.txt and"
                  + " result.json: words in the lesson on what is broken, or on how a route is"
                  + " cleared."),
          Key.may(
              "why not",
              new Named(ANY_TITLE, WHY_NOT),
              "By titles of the trainer's own: lessons on a lever that is held."));

  static final FileForm FILE =
      new FileForm(
          "lessons",
          "What the trainer writes for the lessons of a signal box: words of his own, and questions"
              + " why a lever is held. It locks nothing, and no check rests on it.",
          LESSONS);

  private LessonsForm() {}
}
