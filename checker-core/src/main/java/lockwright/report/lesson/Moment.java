package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.audit.Played;
import lockwright.railway.words.Event;
import lockwright.report.Sequence;

/**
 * A step of a lesson: a movement, and how the box stands after it.
 *
 * @param event the movement; nothing for the beginning
 * @param done the movement in words; empty for the beginning
 * @param moved what it moves outside the frame
 * @param last the number of its last half-stroke or event in the run; 0 for the beginning
 */
record Moment(
    int number,
    Optional<Event> event,
    String done,
    String moved,
    int last,
    Map<String, String> state) {

  /** The beginning, then one for each line of the sequence. */
  static List<Moment> of(Played played, Sequence sequence) {
    List<Moment> moments = new ArrayList<>();
    moments.add(new Moment(0, Optional.empty(), "", "", 0, played.beginning()));
    for (Sequence.Told told : sequence.told()) {
      moments.add(
          new Moment(
              moments.size(),
              Optional.of(told.event()),
              told.done(),
              told.moved(),
              told.last(),
              told.after()));
    }
    return moments;
  }

  String anchor() {
    return "step-" + number;
  }

  String heading(int steps) {
    return number == 0 ? "The beginning" : "Step " + number + " of " + steps + ": " + done;
  }
}
