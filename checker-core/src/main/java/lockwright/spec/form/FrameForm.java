package lockwright.spec.form;

import static lockwright.spec.form.Parts.LABEL;
import static lockwright.spec.form.Parts.NAME;
import static lockwright.spec.form.Parts.NAMES;

import java.util.ArrayList;
import java.util.List;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.OneOf;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Word;

/** The form of {@code frame.yaml}. */
public final class FrameForm {
  public static final int MOST_LEVERS = 400;

  /** What a lever may work, each by the first of its keys, which names it. */
  private static final List<Mapping> WORKS =
      List.of(
          new Mapping(
              Key.need("signal", NAME),
              Key.may("for", NAMES, "Tracks of the routes that this one of several levers is for."),
              Key.may(
                  "slotted",
                  Parts.YES_NO,
                  "Whether the arm is off only while its other levers are over too."),
              Key.may(
                  "detection",
                  NAMES,
                  "The points at which a detector stands in the wire of the arm: it bars the wire"
                      + " unless they, and their bolts, lie for the arm."),
              LABEL),
          new Mapping(
              Key.need("points", NAMES),
              Key.may(
                  "economical lock",
                  Form.oneOrList(NAME, 0),
                  "Those of the points that an economical lock bolts with the same lever."),
              Key.may(
                  "worked",
                  new Word("electrically"),
                  "The stroke is checked part-way until the points have answered; without it the"
                      + " lever moves them by a rod."),
              LABEL),
          new Mapping(Key.need("bolt", NAMES), Key.need("normal", new Word("in", "out")), LABEL),
          new Mapping(
              Key.need("release", NAME, "A ground frame."),
              Key.need(
                  "held while open",
                  Parts.YES_NO,
                  "Whether the release lever is held while points of the ground frame are away from"
                      + " normal."),
              LABEL),
          new Mapping(
              Key.need("gates", NAME, "A level crossing: the lever moves its gates."),
              Key.need("normal", new Word("across the road", "across the line")),
              LABEL),
          new Mapping(
              Key.need(
                  "gate lock",
                  NAME,
                  "A level crossing: the lever locks its gates across the road."),
              Key.need("normal", new Word("in", "out")),
              LABEL),
          new Mapping(
              Key.need("wickets", NAME, "A level crossing: the lever locks its wickets."), LABEL),
          new Mapping(
              Key.need(
                  "closing",
                  NAMES,
                  "Signals of the through lines: with the closing lever reversed the box is switched"
                      + " out, and all of these are off."),
              LABEL),
          new Mapping(
              Key.need(
                  "out of use",
                  Parts.TEXT,
                  "What the lever worked; it is disconnected, and secured normal."),
              LABEL));

  /** The keys that name a work, in the order of messages. */
  public static final List<String> NAMES_OF_WORKS =
      WORKS.stream().map(w -> w.names().get(0)).toList();

  /** Those of them that no way of a push-pull lever can have. */
  public static final List<String> NEVER_OF_A_WAY = List.of("closing", "out of use");

  private static final Form WAY =
      new Shared(
          "way",
          new OneOf(
              WORKS.stream()
                  .filter(w -> !NEVER_OF_A_WAY.contains(w.names().get(0)))
                  .map(Form.class::cast)
                  .toList()),
          "What one way of a push-pull lever works: written as what a lever works.");

  public static final Mapping PUSH_PULL = new Mapping(Key.need("pull", WAY), Key.need("push", WAY));

  public static final Mapping FAULTS =
      new Mapping(
          Key.need(
              "broken rods",
              NAMES,
              "Points worked by a lever, whose rod may break at any time: from then on they stay as"
                  + " they lie."));

  public static final Mapping FRAME =
      new Mapping(
          Key.need(
              "levers",
              new Named(
                  new Shared("number", Parts.lever("^" + Parts.NUMBER + "$")),
                  lever(),
                  1,
                  MOST_LEVERS)),
          Key.may("faults", FAULTS, "What may be out of order; without it, all is in order."));

  static final FileForm FILE =
      new FileForm("frame", "The lever frame of a signal box: what each lever works.", FRAME);

  private FrameForm() {}

  /** The form of a lever that works this; fails for another key than names a work. */
  public static Mapping working(String work) {
    return WORKS.get(NAMES_OF_WORKS.indexOf(work));
  }

  private static Form lever() {
    List<Form> forms = new ArrayList<>();
    forms.add(new Word("spare"));
    forms.add(
        new Shared("pushPull", PUSH_PULL, "A push-pull lever, and what each of its ways works."));
    forms.addAll(WORKS);
    return new OneOf(forms);
  }
}
