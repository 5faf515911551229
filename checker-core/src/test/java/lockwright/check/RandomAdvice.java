package lockwright.check;

import java.util.List;
import java.util.Random;
import lockwright.railway.Box;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Span;

/**
 * Two points held apart, in random boxes with two levers for points; their plan is too small for it
 * to follow, so here it is only said. In half of the boxes it is asked for.
 */
final class RandomAdvice {
  private RandomAdvice() {}

  static Box of(Box box) {
    List<List<String>> worked =
        box.frame().levers().stream()
            .filter(l -> l.work() instanceof Work.OfPoints)
            .map(l -> ((Work.OfPoints) l.work()).points())
            .toList();
    if (worked.size() < 2) {
      return box;
    }
    Random random = new Random(box.locking().toString().hashCode());
    boolean swapped = random.nextBoolean();
    boolean both = random.nextInt(3) == 0;
    Requirement advice =
        new Requirement.PointsToPoints(
            worked.get(0),
            swapped && !both ? Lie.NORMAL : Lie.REVERSE,
            worked.get(1),
            swapped || both ? Lie.REVERSE : Lie.NORMAL,
            box.conflicts());
    Box advised = box.advised(List.of(advice));
    return random.nextBoolean()
        ? advised
        : advised.asking(List.of(new Asked(advice, "random", new Span("random", 1, 1))));
  }
}
