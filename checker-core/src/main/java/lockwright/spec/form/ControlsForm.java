package lockwright.spec.form;

import static lockwright.spec.form.Parts.NAME;

import java.util.List;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.Rule;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Word;

/** The form of {@code controls.yaml}. */
public final class ControlsForm {
  private static final String OF_BOX = "Met while another box gives it: the name of that box.";

  private static final Form NEEDS =
      new Shared(
          "needs",
          Form.oneOrList(Parts.TEXT, 1),
          "Conditions by name, 'arm N at danger', 'arm N off': all of them are needed.");

  /** What a condition may be read off. */
  public static final List<String> KINDS =
      List.of("track circuit", "release", "slot", "treadle", "time");

  public static final Mapping CONDITION =
      new Mapping(
              Key.may(
                  "track circuit",
                  Parts.NAMES,
                  "Met while it shows clear: the tracks that it covers."),
              Key.may("release", NAME, OF_BOX),
              Key.may("slot", NAME, OF_BOX),
              Key.may(
                  "treadle", NAME, "Met when a train has worked it: the track at which it stands."),
              Key.may("time", NAME, "Met when it has run: how long it is."),
              Key.may(
                  "for",
                  new Word("one pull"),
                  "Of a release: used up as a lever that needs it leaves normal."))
          .with(new Rule.JustOne(KINDS), new Rule.Asks("for", "one pull", "release"));

  public static final Mapping LEVER_LOCK =
      new Mapping(
              Key.may("normal to reverse", NEEDS),
              Key.may("reverse to normal", NEEDS),
              Key.may("both", NEEDS))
          .with(new Rule.AtLeastOne(List.of("normal to reverse", "reverse to normal", "both")));

  public static final Mapping CONTROLS =
      new Mapping(
          Key.may(
              "conditions",
              new Named(
                  new Shared("condition", Parts.PLAIN_NAME.never("^arm .+ (at danger|off)$")),
                  CONDITION),
              "What is met or not, and not by this frame. Each is of one kind."),
          Key.may(
              "lever locks",
              new Named(Parts.LEVER, LEVER_LOCK),
              "For a lever, what it needs to leave an end: tested as it leaves, and not after."),
          Key.may(
              "arm controls",
              new Named(NAME, NEEDS),
              "For a signal, what its arm needs to be off: tested all the time."));

  static final FileForm FILE =
      new FileForm(
          "controls",
          "What holds levers and arms from outside the frame: conditions, lever locks, arm"
              + " controls.",
          CONTROLS);

  private ControlsForm() {}
}
