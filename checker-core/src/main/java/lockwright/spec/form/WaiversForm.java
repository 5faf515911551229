package lockwright.spec.form;

import static lockwright.spec.form.Parts.INSTANCE;
import static lockwright.spec.form.Parts.TEXT;

import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.Text;
import lockwright.spec.form.Form.Word;

/** The form of {@code waivers.yaml}. */
public final class WaiversForm {
  private static final Key VERDICT =
      Key.need(
          "verdict",
          new Word("broken", "empty", "impossible", "undecided"),
          "The verdict that it has now. Safety: broken or empty; possibility: impossible, but broken"
              + " if the frame cannot be restored; either: undecided.");

  public static final Mapping EXPECTED =
      new Mapping(VERDICT, Key.need("reason", TEXT, "Why it is right so."));

  public static final Mapping WAIVED =
      new Mapping(
          VERDICT,
          Key.need("reason", TEXT, "Why it may be so for a while."),
          Key.need("role", TEXT, "The role of who answers for it, never a person's name."),
          Key.need(
              "until",
              Text.of("^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"),
              "The last day of the waiver: year, month, day."));

  public static final Mapping EXEMPTED =
      new Mapping(Key.need("reason", TEXT, "Why it is not asked for here."));

  public static final Mapping ASKED =
      new Mapping(Key.need("reason", TEXT, "Why this box must keep it."));

  public static final Mapping WAIVERS =
      new Mapping(
          Key.may(
              "expected",
              new Named(INSTANCE, EXPECTED),
              "By the names of the requirements, as in check.txt and result.json: what fails and is"
                  + " right so, such as a teaching case."),
          Key.may(
              "waived",
              new Named(INSTANCE, WAIVED),
              "By the names of the requirements: what fails and is answered for until a day."),
          Key.may(
              "exempted",
              new Named(
                  Text.of("^(points bolted|points held in rear|flank protected): .+$"), EXEMPTED),
              "By the names of the requirements: what is not asked for, and not checked. Only"
                  + " 'points bolted', 'points held in rear' and 'flank protected'."),
          Key.may(
              "asked",
              new Named(Text.of("^points to points: .+$"), ASKED),
              "By the names of the requirements: what is advice elsewhere, and a requirement here."
                  + " Only 'points to points'."));

  static final FileForm FILE =
      new FileForm(
          "waivers",
          "What fails in a signal box and is known to: expected, because it is right so, or waived"
              + " until a day; what is exempted, so that it is not asked for; and what is asked"
              + " for, though it is advice.",
          WAIVERS);

  private WaiversForm() {}
}
