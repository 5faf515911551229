package lockwright.encode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Points;
import lockwright.railway.words.Event.PointsMove;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;

/** Points worked by hand, and the bolts that hold them; `docs/meaning.md` 2.3. */
record HandPoints(Box box, Vocabulary words) {
  /** Those of which a lever works the bolt, in the order of the plan. */
  private List<String> bolted() {
    return box.layout().points().stream()
        .filter(Points::byHand)
        .map(Points::id)
        .filter(p -> box.frame().ofBolt(p).isPresent())
        .toList();
  }

  private static Position inAt(Lever bolt) {
    return ((Work.OfBolt) bolt.work()).normallyIn() ? Position.N : Position.R;
  }

  /** Where the bolt is in as all begins, its points lie. */
  Term beginning() {
    return Term.and(
        bolted().stream()
            .filter(p -> inAt(box.frame().ofBolt(p).orElseThrow()) == Position.N)
            .map(p -> words.isNot(Quantity.points(p), Position.M))
            .toList());
  }

  /** At any time, but not with their bolt in. */
  Movement stroke(String points, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.points(points);
    Term held = new Apparatus(box, words).bolted(points);
    return new Movement(
        new PointsMove(points, stroke.from(), stroke.to()),
        Term.and(words.is(quantity, stroke.from()), Term.not(held)),
        List.of(words.set(quantity, stroke.to().name())));
  }

  /** The plunger of a bolt enters only points that lie; no need for any other lever. */
  Term letsIn(Lever lever, Strokes.Stroke stroke) {
    return lever.work() instanceof Work.OfBolt bolt && stroke.to() == inAt(lever)
        ? Term.and(
            bolt.points().stream()
                .filter(box.layout()::byHand)
                .map(p -> words.isNot(Quantity.points(p), Position.M))
                .toList())
        : Term.TRUE;
  }

  /** That with the bolt in its points lie. */
  List<Clause> clauses() {
    List<Clause> clauses = new ArrayList<>();
    for (String points : bolted()) {
      Lever bolt = box.frame().ofBolt(points).orElseThrow();
      String out = inAt(bolt) == Position.N ? "R" : "N";
      List<Among> parts = new ArrayList<>();
      parts.add(words.among(Quantity.lever(bolt.id()), "M", out));
      parts.add(words.among(Quantity.points(points), "N", "R"));
      parts.sort(Comparator.comparingInt(Among::variable));
      clauses.add(new Clause(parts));
    }
    return clauses;
  }
}
