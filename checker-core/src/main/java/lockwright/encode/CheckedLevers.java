package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.words.Event.PointsMove;
import lockwright.railway.words.Quantity;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/** Levers that work points electrically, checked until these answer; `docs/meaning.md` 2.8. */
record CheckedLevers(Box box, Vocabulary words, Strokes strokes) {
  /** The points, in the order of the plan. */
  private List<String> points() {
    return box.layout().points().stream()
        .map(p -> p.id())
        .filter(box.frame()::electrically)
        .toList();
  }

  private Quantity lever(String points) {
    return Quantity.lever(box.frame().ofPoints(points).orElseThrow().id());
  }

  private List<String> pointsOf(Lever lever) {
    return lever.work() instanceof Work.OfPoints works
        ? works.points().stream().filter(box.frame()::electrically).toList()
        : List.of();
  }

  void declare() {
    points().forEach(p -> words.add(Quantity.points(p)));
  }

  Term beginning() {
    return Term.and(points().stream().map(p -> words.is(Quantity.points(p), Position.N)).toList());
  }

  /** The answer that the end of a stroke waits for. */
  List<Term> needs(Lever lever, Strokes.Stroke stroke) {
    return stroke.from() == Position.M
        ? pointsOf(lever).stream().map(p -> words.is(Quantity.points(p), stroke.to())).toList()
        : List.of();
  }

  /** A whole stroke is that of the points too. */
  List<Effect> does(Lever lever, Strokes.Stroke stroke) {
    return strokes == Strokes.WHOLE
        ? pointsOf(lever).stream()
            .map(p -> words.set(Quantity.points(p), stroke.to().name()))
            .toList()
        : List.of();
  }

  List<Movement> movements() {
    List<Movement> movements = new ArrayList<>();
    if (strokes == Strokes.PARTED) {
      for (String points : points()) {
        Term checked = words.is(lever(points), Position.M);
        for (Strokes.Stroke s : strokes.all()) {
          movements.add(
              new Movement(
                  new PointsMove(points, s.from(), s.to()),
                  Term.and(words.is(Quantity.points(points), s.from()), checked),
                  List.of(words.set(Quantity.points(points), s.to().name()))));
        }
      }
    }
    return movements;
  }

  /** That the points lie as the lever stands, at its ends. */
  List<Clause> clauses() {
    List<Clause> clauses = new ArrayList<>();
    for (String points : points()) {
      Quantity own = Quantity.points(points);
      clauses.add(new Clause(List.of(words.among(lever(points), "M", "R"), words.among(own, "N"))));
      clauses.add(new Clause(List.of(words.among(lever(points), "N", "M"), words.among(own, "R"))));
      if (strokes == Strokes.WHOLE) {
        clauses.add(new Clause(List.of(words.among(own, "N", "R"))));
      }
    }
    return clauses;
  }
}
