package lockwright.report;

import java.util.List;
import java.util.Map;
import lockwright.railway.requirement.Requirement;

/**
 * What the requirements that a sequence can break say, in the words of the catalogue, and how each
 * is broken: those of safety, and that the frame can be restored.
 */
public final class Rule {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry(
              "points set",
              "While an arm is off, all points on some one of its routes lie for it, and its flank traps"
                  + " lie for the trap."),
          Map.entry(
              "points bolted",
              "While a running arm is off for a route, the facing points of that route on a passenger"
                  + " line are bolted."),
          Map.entry(
              "bolt and points agree",
              "Points never move while their bolt is in, and a bolt goes in only with the points fully"
                  + " home."),
          Map.entry(
              "route held",
              "While an arm is off for a route, no points of the route, no flank trap of it, no bolt of"
                  + " its facing points, no release of a ground frame on it and no gates over it can be"
                  + " moved."),
          Map.entry(
              "points held in rear",
              "While a stop arm is off, the trailing points between it and the next stop signal in"
                  + " rear do not move."),
          Map.entry(
              "flank protected",
              "While an arm is off for a route, on each way by which a vehicle could come into that route"
                  + " from the side, points lie away from the route, or a signal towards it is at"
                  + " danger."),
          Map.entry("no conflict", "No two arms are off for conflicting routes."),
          Map.entry(
              "overlap set",
              "While a stop arm is off for a route, the points of one of the overlaps permitted beyond"
                  + " the end of the route lie for it."),
          Map.entry(
              "overlaps apart",
              "No two arms are off for routes of which one needs an overlap that the other route, or an"
                  + " overlap of it, uses as the points lie."),
          Map.entry(
              "distant follows",
              "A distant is off only while every stop signal that it speaks for is off, and the facing"
                  + " points before the last of them lie, and on a passenger line are bolted, for the"
                  + " path that it speaks for."),
          Map.entry(
              "release home",
              "While an arm is off for a route, the release of a ground frame with points on that route"
                  + " is home."),
          Map.entry(
              "road closed",
              "While an arm is off for a route over a level crossing, its gates are locked across the"
                  + " road."),
          Map.entry(
              "box closed",
              "While the closing lever is not normal, every signal of its through lines is off."),
          Map.entry("one token out", "At most one token of a section is out of the instruments."),
          Map.entry(
              "section signal earned",
              "Each going off of a section signal needs a withdrawal at this box's instrument since a"
                  + " signal of that section last went off, of a token that is still out."),
          Map.entry(
              "section signals apart",
              "No two signals into one single-line section are off together."),
          Map.entry(
              "siding locked",
              "Points of a ground frame that tokens of a section release are away from normal only with"
                  + " a token in its lock, and with its lever away from normal where one is needed too;"
                  + " and while it is so released no other token of the section is out."),
          Map.entry(
              "points to points",
              "Where routes over points of two levers conflict, and nothing that is signalled is lost"
                  + " by it, the points never lie for both together."),
          Map.entry(
              "frame can be restored",
              "From every state that can be come to, levers, points of ground frames or worked by hand,"
                  + " and gates can be worked so that all levers are normal again, and nothing need"
                  + " happen in the sections or outside for it."));

  private Rule() {}

  public static String words(Requirement requirement) {
    String words = WORDS.get(requirement.name());
    if (requirement instanceof Requirement.PointsSet r && r.lever().isPresent()) {
      return words + " Of lever " + r.lever().get() + ": on one of those that it is for.";
    }
    return requirement instanceof Requirement.NoConflict r && r.closing().isPresent()
        ? words + " Opposed routes may be, while closing lever " + r.closing().get() + " is over."
        : words;
  }

  /** What is so at the end of a sequence that breaks the requirement. */
  public static String broken(Requirement requirement) {
    if (requirement instanceof Requirement.PointsSet r) {
      return "signal "
          + r.signal()
          + r.lever()
              .map(l -> " is off by lever " + l + ", and no route that the lever is for")
              .orElse(" is off, and no route of it")
          + " lies with its flank traps";
    } else if (requirement instanceof Requirement.PointsBolted r) {
      return "signal "
          + r.signal()
          + " is off over facing points "
          + r.points()
          + ", which are not bolted";
    } else if (requirement instanceof Requirement.BoltAndPointsAgree r) {
      return "points " + r.points() + " lie neither way, and their bolt is not surely out";
    } else if (requirement instanceof Requirement.RouteHeld r) {
      return "signal "
          + r.route().signal()
          + " is off and its route "
          + r.route().name()
          + " lies, and yet the last movement is free";
    } else if (requirement instanceof Requirement.PointsHeldInRear r) {
      return "signal "
          + r.signal()
          + " is off, and points "
          + r.points()
          + " in rear of it are free, or lie neither way";
    } else if (requirement instanceof Requirement.FlankProtected r) {
      return "signal "
          + r.signal()
          + " is off, and from "
          + r.from()
          + " a vehicle could come into its route from the side";
    } else if (requirement instanceof Requirement.NoConflict r) {
      return "signals "
          + r.first()
          + " and "
          + r.second()
          + " are off together, for conflicting routes";
    } else if (requirement instanceof Requirement.OverlapSet r) {
      return "signal "
          + r.route().signal()
          + " is off for route "
          + r.route().name()
          + ", and no overlap permitted beyond it lies";
    } else if (requirement instanceof Requirement.OverlapsApart r) {
      return "signals "
          + r.first()
          + " and "
          + r.second()
          + " are off together, and no overlaps that lie keep their routes apart";
    } else if (requirement instanceof Requirement.DistantFollows r) {
      boolean nothing = r.path().posts().stream().allMatch(List::isEmpty);
      return "distant "
          + r.path().distant()
          + (nothing
              ? " is off, and no stop signal on its path admits that path"
              : " is off, and not all that it speaks for is off, set and bolted");
    } else if (requirement instanceof Requirement.ReleaseHome r) {
      return "signal "
          + r.signal()
          + " is off, and the release of ground frame "
          + r.groundFrame()
          + " is not home";
    } else if (requirement instanceof Requirement.RoadClosed r) {
      return "signal "
          + r.signal()
          + " is off, and the gates of "
          + r.levelCrossing()
          + " are not locked across the road";
    } else if (requirement instanceof Requirement.BoxClosed r) {
      return "closing lever " + r.lever() + " is not normal, and not all its signals are off";
    } else if (requirement instanceof Requirement.OneTokenOut r) {
      return "two are out of section " + r.section();
    } else if (requirement instanceof Requirement.SectionSignalEarned r) {
      return "signal "
          + r.signal()
          + " goes off into section "
          + r.section()
          + ", and no withdrawal here has earned it";
    } else if (requirement instanceof Requirement.FrameCanBeRestored) {
      return "from here no strokes of levers, points or gates lead to all levers normal";
    } else if (requirement instanceof Requirement.SectionSignalsApart r) {
      return "signals "
          + r.first()
          + " and "
          + r.second()
          + " are off together, both into section "
          + r.section();
    }
    if (requirement instanceof Requirement.SidingLocked r) {
      return "points of ground frame "
          + r.groundFrame()
          + " are open with its release home, or it is free and another token of section "
          + r.section()
          + " is out";
    }
    if (requirement instanceof Requirement.PointsToPoints r) {
      return r.subject() + " lie so together, for routes that conflict";
    }
    throw new IllegalArgumentException(requirement.id() + " is not broken by a sequence");
  }
}
