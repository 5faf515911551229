package lockwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Span;

/**
 * Two points held apart, in random boxes with two levers for points; their plan is too small for it
 * to follow, so here it is only said. In half of the boxes it is asked for; in most the points are
 * locked so.
 */
final class RandomAdvice {
  private RandomAdvice() {}

  static Box of(Box box) {
    List<Lever> worked =
        box.frame().levers().stream().filter(l -> l.work() instanceof Work.OfPoints).toList();
    if (worked.size() < 2) {
      return box;
    }
    Random random = new Random(box.locking().toString().hashCode());
    Lever one = worked.get(0);
    Lever other = worked.get(1);
    boolean both = random.nextInt(3) == 0;
    boolean swapped = !both && random.nextBoolean();
    Requirement advice =
        new Requirement.PointsToPoints(
            ((Work.OfPoints) one.work()).points(),
            swapped ? Lie.NORMAL : Lie.REVERSE,
            ((Work.OfPoints) other.work()).points(),
            swapped || both ? Lie.REVERSE : Lie.NORMAL,
            box.conflicts());
    List<Entry> locking = new ArrayList<>(box.locking());
    if (random.nextInt(3) > 0) {
      locking.add(
          RandomBox.entry(
              both ? Entry.Kind.LOCKS : Entry.Kind.RELEASED_BY,
              swapped ? other.id() : one.id(),
              List.of(swapped ? one.id() : other.id())));
    }
    Box advised = box.withLocking(locking).advised(List.of(advice));
    return random.nextBoolean()
        ? advised
        : advised.asking(List.of(new Asked(advice, "random", new Span("random", 1, 1))));
  }
}
