package lockwright.report;

import java.util.List;

/** What every report has to say, whatever was found. */
public final class Cautions {
  private Cautions() {}

  public static final List<String> ALL =
      List.of(
          "This is an aid for checking written rules. It is not locking data.",
          "It is no substitute for competent and licensed people, the rule book, local"
              + " instructions, testing on site or the authority's approval.",
          "\"Proved\" means within the model, the listed files and the listed assumptions, and only"
              + " as far as someone has compared the files with the plan and the frame with the"
              + " table.");

  /** What this version does not look at; 1.5 and 9 of {@code docs/meaning.md}. */
  public static final List<String> LEFT_OUT =
      List.of(
          "trains and their movement, and so what a track circuit or a treadle has to do with them",
          "controls of arms that stay on, once on, until the lever is back",
          "slotted signals into a single-line section",
          "bolts and detection of sprung points",
          "padlocks and clips on points",
          "double-line block",
          "the switch of the block instruments",
          "road signals, barriers and wickets of level crossings",
          "collars",
          "loss of power",
          "that a shunting arm into a single-line section is earned",
          "bolts, traps and routes of points out in a section",
          "several boxes in one spec");
}
