package lockwright.spec.form;

import static lockwright.spec.form.Parts.JOINT;
import static lockwright.spec.form.Parts.LABEL;
import static lockwright.spec.form.Parts.NAME;
import static lockwright.spec.form.Parts.PLACE;
import static lockwright.spec.form.Parts.TEXT;

import java.util.List;
import lockwright.spec.form.Form.Items;
import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Mapping;
import lockwright.spec.form.Form.Named;
import lockwright.spec.form.Form.OneOf;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Word;

/** The form of {@code plan.yaml}. */
public final class PlanForm {
  private static final Form TRACK =
      new Shared("track", Parts.PLAIN_NAME.never("^[Tt][Rr][Aa][Pp]$"));

  public static final Mapping POINTS =
      new Mapping(
          Key.need("toe", TRACK),
          Key.need("normal", NAME),
          Key.need("reverse", NAME),
          Key.may(
              "worked",
              new Word("by hand", "by spring"),
              "By hand: whoever stands there works them. By spring: it holds them normal, and nothing"
                  + " else works them. Absent where a lever or a ground frame does."),
          LABEL);

  public static final Mapping SIGNAL =
      new Mapping(
          Key.need("at", PLACE),
          Key.need("arm", new Word("stop", "distant", "shunting", "calling-on")),
          Key.may(
              "for",
              Form.oneOrList(TRACK, 1),
              "The arm admits the paths that pass one of these tracks; all paths, where this is"
                  + " left out."),
          Key.may("fixed", Parts.YES_NO),
          LABEL);

  public static final Word LIMIT = new Word("block", "buffer stop", "limit of plan");

  public static final Mapping GROUND_FRAME =
      new Mapping(
          Key.need("points", Parts.NAMES),
          Key.may(
              "released by",
              new Word("lever and token"),
              "Where a lever and a token are both needed to release it."),
          LABEL);

  public static final Mapping LEVEL_CROSSING =
      new Mapping(Key.need("tracks", Form.oneOrList(TRACK, 1)), LABEL);

  public static final Mapping PLAN =
      new Mapping(
          Key.need("lockwright", new Word("1"), "The version of the format."),
          Key.need("box", NAME, "The name of the signal box."),
          Key.need(
              "tracks",
              new OneOf(List.of(new Items(TRACK, 1, 0, true), new Named(TRACK, TEXT, 1, 0))),
              "The tracks: a list of names, or names with labels."),
          Key.may("joints", new Items(JOINT, 0, 0, false), "Plain joints between two tracks."),
          Key.may(
              "points",
              new Named(NAME, POINTS),
              "Points by name; the word trap stands for the leg of trap points without a track."),
          Key.may(
              "crossings",
              new Named(NAME, new Items(JOINT, 2, 2, false)),
              "Crossings of two ways on the level, by name."),
          Key.need(
              "signals",
              new Named(NAME, SIGNAL, 1, 0),
              "Signals by name: where each stands, reading from one track into the next."),
          Key.may("limits", new Named(NAME, LIMIT), "Tracks that end at a limit, and what limit."),
          Key.may("limits of shunt", new Items(PLACE, 0, 0, false)),
          Key.may(
              "ground frames",
              new Named(NAME, GROUND_FRAME),
              "Ground frames by name, and the points that each works."),
          Key.may(
              "level crossings",
              new Named(NAME, LEVEL_CROSSING),
              "Level crossings by name, and the tracks that the road crosses."),
          Key.need("passenger", Form.oneOrList(TRACK, 0), "The tracks of passenger lines."),
          Key.may(
              "overlaps",
              new Named(NAME, new Items(new Items(NAME, 1, 0, true), 1, 0, false)),
              "By stop signals: the overlaps permitted beyond each, every one as its tracks in"
                  + " order."));

  static final FileForm FILE =
      new FileForm(
          "plan",
          "The railway of a signal box. What a schema cannot say, such as that every end of every"
              + " track is attached, is checked when the spec is read.",
          PLAN);

  private PlanForm() {}
}
