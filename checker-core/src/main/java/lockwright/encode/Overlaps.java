package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.Beyond;
import lockwright.railway.requirement.Requirement;
import lockwright.system.Term;

/** What overlaps ask of points and arms; `docs/meaning.md` 1.11 and 6. */
record Overlaps(Apparatus apparatus) {
  /** The route is signalled, and none of the overlaps permitted beyond it lies. */
  Term lacking(Requirement.OverlapSet r) {
    return Term.and(
        apparatus.off(r.route().signal()),
        apparatus.lies(r.route()),
        Term.not(oneOf(r.permitted())));
  }

  private Term oneOf(List<Beyond> overlaps) {
    return overlaps.isEmpty() ? Term.TRUE : Term.or(overlaps.stream().map(this::lies).toList());
  }

  private Term lies(Beyond overlap) {
    return Term.and(
        overlap.needed().stream().map(p -> apparatus.lie(p.points(), p.lie())).toList());
  }

  /** Two routes lie with their overlaps, and no choice of those that lie keeps them apart. */
  Term clash(Requirement.OverlapsApart r) {
    List<Term> pairs = new ArrayList<>();
    for (Requirement.OverlapsApart.Pair pair : r.pairs()) {
      pairs.add(
          Term.and(
              apparatus.lies(pair.first()),
              apparatus.lies(pair.second()),
              oneOf(pair.beyondFirst()),
              oneOf(pair.beyondSecond()),
              Term.not(
                  Term.or(
                      pair.apart().stream()
                          .map(c -> Term.and(lies(c.first()), lies(c.second())))
                          .toList()))));
    }
    return Term.and(apparatus.off(r.first()), apparatus.off(r.second()), Term.or(pairs));
  }
}
