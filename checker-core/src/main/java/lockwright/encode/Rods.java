package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event.RodBreaks;
import lockwright.railway.words.Quantity;
import lockwright.system.Clause;
import lockwright.system.Term;

/** Rods of points that may break; `docs/meaning.md` 2.8. */
record Rods(Box box, Vocabulary words) {
  static final String WHOLE = "whole";

  /** The value of a rod that broke with its points there. */
  static String broken(Position at) {
    return "broken at " + at;
  }

  boolean mayBreak(String points) {
    return box.frame().connections().brokenRods().contains(points);
  }

  /** In the order of the plan. */
  private List<String> all() {
    return box.layout().points().stream().map(p -> p.id()).filter(this::mayBreak).toList();
  }

  void declare() {
    all().forEach(p -> words.add(Quantity.rod(p)));
  }

  Term beginning() {
    return Term.and(all().stream().map(p -> words.is(Quantity.rod(p), WHOLE)).toList());
  }

  /** None by whole strokes. */
  List<Movement> movements(Strokes strokes) {
    List<Movement> movements = new ArrayList<>();
    if (strokes == Strokes.PARTED) {
      Apparatus apparatus = new Apparatus(box, words);
      for (String points : all()) {
        Quantity rod = Quantity.rod(points);
        for (Position at : Position.values()) {
          movements.add(
              new Movement(
                  new RodBreaks(points, at),
                  Term.and(words.is(rod, WHOLE), words.is(apparatus.mover(points), at)),
                  List.of(words.set(rod, broken(at)))));
        }
      }
    }
    return movements;
  }

  /** That by whole strokes none breaks. */
  List<Clause> clauses(Strokes strokes) {
    return strokes == Strokes.PARTED
        ? List.of()
        : all().stream()
            .map(p -> new Clause(List.of(words.among(Quantity.rod(p), WHOLE))))
            .toList();
  }
}
