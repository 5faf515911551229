package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.audit.Played;
import lockwright.explain.Arrival;
import lockwright.explain.Asked;
import lockwright.explain.Beforehand;
import lockwright.explain.Explanation;
import lockwright.explain.Way;
import lockwright.railway.frame.Position;
import lockwright.railway.teaching.WhyNot;
import lockwright.railway.words.Event;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.walk.Outcome;
import lockwright.walk.Walk;

/**
 * What came of a trainer's question: a state that was come to by whole strokes, in which the lever
 * is held.
 *
 * @param played the way there; then, if it was found, what frees the lever, and its movement
 * @param before how many movements lead there
 * @param asGiven whether the levers were pulled in the order in which they are named, and no others
 * @param way how the lever is held
 * @param freeing what came of looking for what frees it
 */
record Refusal(Played played, int before, boolean asGiven, Way way, Outcome freeing) {

  /**
   * Looks into it; a question that would teach what is not so is told.
   *
   * @param most how many states each search may look at
   */
  static Optional<Refusal> of(Lessons.Made made, WhyNot asked, int most, Problems problems) {
    List<Event> events = new ArrayList<>();
    Optional<Walk> first = Optional.empty();
    if (!asked.first().isEmpty()) {
      Beforehand beforehand =
          Beforehand.of(
              made.box(),
              asked.first().stream().map(f -> stroke(f.lever(), f.pulled())).toList(),
              most);
      if (!beforehand.whole()) {
        notFirst(asked, beforehand, problems);
        return Optional.empty();
      }
      first = Optional.of(beforehand.walk());
      events.addAll(beforehand.walk().events());
    }
    Asked question = new Asked(asked.reversed(), List.of(), asked.lever());
    Explanation found =
        first
            .map(w -> Explanation.from(w.to(), made.box(), question, most))
            .orElseGet(() -> Explanation.of(made.box(), question, most));
    Optional<Walk> there = walk(found.arrival());
    if (there.isEmpty()) {
      problems.add(
          Message.WHY_NOT_NOT_REACHED,
          asked.at(),
          "the state that is asked about, " + state(asked) + ", " + notReached(found.arrival()),
          "name other levers under 'reversed', or a movement that has to come before under 'first'");
      return Optional.empty();
    }
    Way way = found.ways().get(0);
    if (way.free()) {
      free(asked, way, problems);
      return Optional.empty();
    }
    events.addAll(there.get().events());
    int before = events.size();
    Outcome freeing = found.freeing().orElseThrow();
    if (freeing instanceof Outcome.Found freed) {
      events.addAll(freed.walk().events());
      events.add(stroke(asked.lever(), asked.pulled()));
    }
    Played played = Played.of(made.whole(), first.orElse(there.get()).from().values(), events);
    if (!played.followsRules()) {
      throw new IllegalStateException("a walk that cannot be played: " + asked.title());
    }
    return Optional.of(
        new Refusal(played, before, found.arrival() instanceof Arrival.AsGiven, way, freeing));
  }

  static Event.LeverMoves stroke(String lever, boolean pulled) {
    return pulled
        ? new Event.LeverMoves(lever, Position.N, Position.R)
        : new Event.LeverMoves(lever, Position.R, Position.N);
  }

  /** "8, 9 reversed and all others normal". */
  static String state(WhyNot asked) {
    return asked.reversed().isEmpty()
        ? "all levers normal"
        : String.join(", ", asked.reversed()) + " reversed and all others normal";
  }

  private static void notFirst(WhyNot asked, Beforehand beforehand, Problems problems) {
    WhyNot.First first = asked.first().get(beforehand.made());
    String movement = (first.pulled() ? "pull " : "replace ") + first.lever();
    problems.add(
        Message.WHY_NOT_NOT_REACHED,
        first.at(),
        beforehand.stopped() instanceof Outcome.NotWithin limit
            ? "not found within "
                + limit.movements()
                + " movements how '"
                + movement
                + "' comes free"
            : "'" + movement + "' never comes free, by whole strokes from where it is to be made",
        "take it away, or write before it what has to be done first");
  }

  /** How the state was come to; nothing, unless by whole strokes with every piece holding. */
  private static Optional<Walk> walk(Arrival arrival) {
    if (arrival instanceof Arrival.AsGiven a) {
      return Optional.of(a.walk());
    }
    return arrival instanceof Arrival.Otherwise a ? Optional.of(a.walk()) : Optional.empty();
  }

  private static String notReached(Arrival arrival) {
    if (arrival instanceof Arrival.Forbidden forbidden) {
      return "cannot be reached: the locking forbids it, by "
          + String.join(
              "; ", forbidden.by().stream().map(e -> e.at() + " '" + e.words() + "'").toList());
    } else if (arrival instanceof Arrival.ByParts) {
      return "is reached by half-strokes alone, or only if pieces with conditions do not hold levers;"
          + " a lesson is told by whole strokes, every piece holding";
    } else if (arrival instanceof Arrival.NotWithin limit) {
      return "was not found within " + limit.movements() + " movements";
    }
    return "cannot be reached: no sequence of movements leads to it";
  }

  private static void free(WhyNot asked, Way way, Problems problems) {
    String lever = "lever " + asked.lever();
    String what = asked.pulled() ? "pulled" : "replaced";
    if (way.doubtful()) {
      problems.add(
          Message.WHY_NOT_FREE,
          asked.leverAt(),
          lever
              + " is not surely held: only pieces with conditions hold it, which are not marked"
              + " 'holds: yes'",
          "look on the frame whether they hold, and mark them; or ask about another lever");
    } else {
      problems.add(
          Message.WHY_NOT_FREE,
          asked.leverAt(),
          lever + " can be " + what + " with " + state(asked),
          "look whether the locking table lacks an entry; or ask about another state or lever");
    }
  }
}
