package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.report.MovementWords;

/**
 * What a trainer calls the steps of a lesson: by their movement, whether it goes all the way or
 * not, and without labels. So a step keeps its name while others come and go.
 */
record StepNames(Box box) {
  private static final String BEGINNING = "the beginning";

  /** The names of a step; more than one, if the section of an instrument may be named or not. */
  List<String> of(Moment moment) {
    if (moment.event().isEmpty()) {
      return List.of(BEGINNING);
    }
    Event event = moment.event().get();
    if (event instanceof Event.LeverMoves e) {
      return List.of((pulled(e.from(), e.to()) ? "pull " : "replace ") + e.lever());
    }
    Event whole = whole(event);
    return Stream.of(true, false)
        .map(namingSections -> new MovementWords(box, namingSections).of(whole))
        .distinct()
        .toList();
  }

  /** The first name of each, with its number where it is not the first of that name. */
  List<String> all(List<Moment> moments) {
    List<String> all = new ArrayList<>();
    List<String> plain = new ArrayList<>();
    for (Moment moment : moments) {
      String name = of(moment).get(0);
      plain.add(name);
      long time = plain.stream().filter(name::equals).count();
      all.add(time == 1 ? name : name + " (" + time + ")");
    }
    return all;
  }

  private static Event whole(Event event) {
    if (event instanceof Event.PointsMove e) {
      boolean pulled = pulled(e.from(), e.to());
      return new Event.PointsMove(e.points(), from(pulled), from(!pulled));
    } else if (event instanceof Event.GatesMove e) {
      boolean pulled = pulled(e.from(), e.to());
      return new Event.GatesMove(e.levelCrossing(), from(pulled), from(!pulled));
    }
    return event;
  }

  private static boolean pulled(Position from, Position to) {
    return from.compareTo(to) < 0;
  }

  private static Position from(boolean pulled) {
    return pulled ? Position.N : Position.R;
  }
}
