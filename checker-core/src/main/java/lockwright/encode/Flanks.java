package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.requirement.Requirement;
import lockwright.system.Term;

/** When a flank is not protected; `docs/meaning.md` 1.10 and 6. */
record Flanks(Apparatus apparatus) {
  Term open(Requirement.FlankProtected r) {
    List<Term> ways = new ArrayList<>();
    for (Requirement.FlankProtected.Flank flank : r.flanks()) {
      for (FlankPath path : flank.paths()) {
        ways.add(Term.and(apparatus.lies(flank.route()), Term.not(guarded(path))));
      }
    }
    return Term.and(apparatus.off(r.signal()), Term.or(ways));
  }

  private Term guarded(FlankPath path) {
    List<Term> all = new ArrayList<>();
    path.away().forEach(p -> all.add(apparatus.lie(p.points(), p.lie())));
    if (!path.guards().isEmpty()) {
      all.add(Term.and(path.guards().stream().map(s -> Term.not(apparatus.off(s))).toList()));
    }
    return Term.or(all);
  }
}
