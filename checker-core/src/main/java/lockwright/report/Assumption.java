package lockwright.report;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.control.Controls;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;

/**
 * What a proof rests on besides the files; 8 of {@code docs/meaning.md}. One model has all of the
 * box, so every proof on a box with sections is said to rest on what is assumed of each.
 *
 * @param appliesTo in the words of that page
 * @param section the section that it is about, if it is about one
 * @param source where it is published
 */
public record Assumption(String id, String words, String appliesTo, String section, String source) {
  private static final String SIGNALS_OBEYED = "signals obeyed";
  private static final String POSSIBILITY = "possibility only";
  private static final String EACH_SECTION = "each section";
  private static final String NO_SOURCE = "common practice, no source";

  /** Those of a box. */
  public static List<Assumption> of(Box box) {
    List<Assumption> all = new ArrayList<>();
    all.add(
        new Assumption(
            "in order",
            "levers, locking, connections and instruments are in order, and do what the files say",
            "every proof",
            null,
            NO_SOURCE));
    if (!box.sections().isEmpty()) {
      all.add(
          new Assumption(
              "power",
              "the power for token locks does not fail",
              "boxes with sections",
              null,
              NO_SOURCE));
    }
    all.addAll(of(box.controls()));
    box.sections().forEach(s -> all.addAll(of(s)));
    if (box.requirements().stream()
        .anyMatch(r -> r instanceof Requirement.NoConflict n && n.closing().isPresent())) {
      all.add(
          new Assumption(
              "switched out",
              "the boxes on either side keep trains apart while this box is switched out",
              "boxes with a closing lever over opposed routes",
              null,
              NO_SOURCE));
    }
    if (box.requirements().stream()
        .anyMatch(r -> r instanceof Requirement.FlankProtected f && f.bySignals())) {
      all.add(
          new Assumption(
              SIGNALS_OBEYED,
              "no driver passes a stop or subsidiary signal at danger",
              "flank protected, where a signal guards the flank",
              null,
              NO_SOURCE));
    }
    all.add(
        new Assumption(
            "whole strokes",
            "whole strokes: each is finished before another begins",
            POSSIBILITY,
            null,
            NO_SOURCE));
    return all;
  }

  private static List<Assumption> of(Controls controls) {
    List<Assumption> all = new ArrayList<>();
    if (!controls.equals(Controls.NONE)) {
      all.add(
          new Assumption(
              "power for controls",
              "the power for lever locks and arm controls does not fail",
              "boxes with controls",
              null,
              NO_SOURCE));
    }
    if (controls.proveArms()) {
      all.add(
          new Assumption(
              "arm contacts",
              "what proves an arm does so only with that arm fully at danger, or fully off",
              "boxes whose controls prove arms",
              null,
              NO_SOURCE));
    }
    return all;
  }

  private static List<Assumption> of(Section section) {
    String name = section.name();
    List<Assumption> all = new ArrayList<>();
    all.add(of(name, "own tokens", "only tokens of this section are put into its instruments"));
    all.add(of(name, "no transfer", "no token is moved by the lineman between instruments"));
    all.add(of(name, "phases", "the phases of the instruments survive a loss of power"));
    if (section.irregular() == Section.Irregular.NEVER) {
      all.add(
          new Assumption(
              id(name, "no irregular withdrawal"),
              "no token is withdrawn irregularly",
              "each section, unless the spec allows it",
              name,
              "A. Williams, How It Works, p. 75: the instruments agree or are locked"));
    }
    if (!section.locks().isEmpty()) {
      all.add(
          siding(
              name,
              "train by token",
              "a train is in the section only with a token of it that is out"));
      all.add(
          siding(
              name,
              "own locks",
              "only tokens of this section open the locks of its ground frames"));
    }
    return all;
  }

  private static Assumption siding(String section, String what, String words) {
    return new Assumption(
        id(section, what),
        words,
        "each section whose tokens release ground frames",
        section,
        NO_SOURCE);
  }

  private static Assumption of(String section, String what, String words) {
    return new Assumption(id(section, what), words, EACH_SECTION, section, NO_SOURCE);
  }

  private static String id(String section, String what) {
    return "section " + section + ": " + what;
  }

  /** Whether the proof of a requirement, or a possibility shown, rests on it. */
  public boolean isFor(Requirement requirement) {
    if (id.equals(SIGNALS_OBEYED)) {
      return requirement instanceof Requirement.FlankProtected f && f.bySignals();
    }
    return requirement.possibility() || !possibilityOnly();
  }

  /** Whether only possibilities rest on it. */
  public boolean possibilityOnly() {
    return appliesTo.equals(POSSIBILITY);
  }
}
