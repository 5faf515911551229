package lockwright.spec.form;

import static lockwright.spec.form.Parts.NAME;

import lockwright.spec.form.Form.Items;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Taken;
import lockwright.spec.form.Form.Text;

/** The form of {@code drawing.yaml}. */
public final class DrawingForm {
  private static final Form NUMBER =
      new Shared(
          "number",
          Text.of("^(0|[1-9][0-9]{0,3})(\\.[0-9]{1,2})?$").taken(Taken.NUMBER, 0, 9999.99),
          "In units of your own, with at most two digits after the point.");
  private static final Form PLACE =
      new Shared(
          "place",
          new Items(NUMBER, 2, 2, false),
          "How far across from the left, and how far down from the top.");

  public static final Mapping DRAWING =
      new Mapping(
          Key.may("points", new Named(NAME, PLACE), "The places of points."),
          Key.may("crossings", new Named(NAME, PLACE), "The places of crossings."),
          Key.may(
              "joints",
              new Named(Parts.JOINT, PLACE),
              "The places of plain joints, each named by its two tracks: a + b."),
          Key.may(
              "ends",
              new Named(NAME, PLACE),
              "The places where tracks end at a limit or in a section, by the names of the tracks."),
          Key.may(
              "tracks", new Named(NAME, NUMBER), "How far down the level parts of tracks run."));

  static final FileForm FILE =
      new FileForm(
          "drawing",
          "Where things stand in the track diagram, as read off a plan: how far from its left edge"
              + " and from its top. Nothing is proved of it.",
          DRAWING);

  private DrawingForm() {}
}
