package lockwright.spec.form;

import static lockwright.spec.form.Parts.NAME;

import lockwright.spec.form.Form.Items;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.Taken;
import lockwright.spec.form.Form.Text;
import lockwright.spec.form.Form.Word;

/** The form of {@code sections.yaml}. */
public final class SectionsForm {
  public static final int MOST_TOKENS = 200;

  private static final Form ANY_NAMES = Form.oneOrList(NAME, 0);

  public static final Mapping RELEASE =
      new Mapping(
          Key.need("levers", Form.oneOrList(Parts.LEVER, 1)),
          Key.may("lasts", new Word("until used", "until put in here", "until put in")),
          Key.may("begins", new Word("either", "locked", "given")));

  public static final Mapping LOCK = new Mapping(Key.need("held while open", Parts.YES_NO));

  public static final Mapping SECTION =
      new Mapping(
          Key.need("track", NAME, "The track of the plan whose outer end lies in the section."),
          Key.need("working", new Word("electric token", "electric tablet", "electric staff")),
          Key.need(
              "tokens",
              Text.of("^([1-9][0-9]?|1[0-9][0-9]|200)$").taken(Taken.WHOLE_NUMBER, 1, MOST_TOKENS)),
          Key.need(
              "instruments",
              new Items(NAME, 2, 0, true),
              "The instruments; one bears the name of the box."),
          Key.may("unattended", ANY_NAMES, "The instruments where nobody attends to give consent."),
          Key.may(
              "consent",
              new Named(NAME, ANY_NAMES),
              "For an instrument, those whose consent it needs; where one is left out, all other"
                  + " attended ones."),
          Key.may("plunge while withdrawing", Parts.YES_NO),
          Key.may("phase reverses", new Word("at the end", "at the start")),
          Key.may("irregular withdrawal", new Word("never", "once", "any")),
          Key.may("release", RELEASE, "The release of levers that a withdrawal at this box gives."),
          Key.may(
              "within",
              ANY_NAMES,
              "Tracks of the plan with an open end that lies out in the section, such as those at"
                  + " points of a ground frame there."),
          Key.may(
              "ground frames",
              new Named(NAME, LOCK),
              "The ground frames that the token, or the key on it, unlocks; for each, whether the"
                  + " token is held in its lock while points of it are away from normal."));

  public static final Mapping SECTIONS =
      new Mapping(Key.need("sections", new Named(NAME, SECTION)));

  static final FileForm FILE =
      new FileForm(
          "sections",
          "The single-line sections of a signal box, worked by electric token, tablet or staff.",
          SECTIONS);

  private SectionsForm() {}
}
