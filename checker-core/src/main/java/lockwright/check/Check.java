package lockwright.check;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.report.Findings;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;

/** The main flow: from a box, as its spec gives it, to findings. Reading the spec comes before. */
public record Check(Limits limits, Searcher searcher, Consumer<String> progress) {
  /**
   * Checks all requirements of a box.
   *
   * <ol>
   *   <li>Search with whole strokes: the possibilities, and what the requirements of safety speak
   *       about.
   *   <li>Searches with whole strokes: whether the frame can be restored.
   *   <li>Search with parted strokes: the breaches, and what the first search did not reach.
   *   <li>Audit every claim, with the second reading of the box.
   * </ol>
   *
   * @param digests of the files that the box was read from
   * @throws lockwright.audit.Disagreement if a claim fails its audit, which is a fault of this
   *     program
   */
  public Findings run(Box box, SortedMap<String, String> digests)
      throws UnfitMachine, IOException, InterruptedException {
    progress.accept("possibility: whole strokes");
    Encoded whole = Encoder.whole(box);
    Found possible = searcher.search(new Job(whole.system(), limits), progress);
    Map<String, Claim> ofWhole = whole.names().claims(possible.verdicts());
    Map<String, String> decidedBy = new HashMap<>(possible.decidedBy());

    for (Requirement requirement : box.requirements()) {
      if (requirement instanceof Requirement.FrameCanBeRestored) {
        progress.accept("possibility: restoring the frame");
        Restoration restoration = new Restoration(limits, searcher, progress, box, whole);
        ofWhole.put(requirement.id(), restoration.claim());
        restoration.decidedBy().ifPresent(by -> decidedBy.put(requirement.id(), by));
      }
    }

    progress.accept("safety: parted strokes");
    Encoded parted = Encoder.parted(box).without(reached(ofWhole));
    Found safe = searcher.search(new Job(parted.system(), limits), progress);
    Map<String, Claim> ofParted = parted.names().claims(safe.verdicts());

    progress.accept("audit");
    List<Audited> audited = Auditor.audit(box, claims(box, ofWhole, ofParted));

    decidedBy.putAll(safe.decidedBy());
    return new Findings(box, digests, audited, decidedBy, safe.solver());
  }

  private static Set<String> reached(Map<String, Claim> claims) {
    return claims.entrySet().stream()
        .filter(e -> e.getValue() instanceof Claim.Reached)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  /**
   * Sorts the claims; a subject reached with whole strokes is reached with each as two
   * half-strokes.
   */
  private static Claims claims(Box box, Map<String, Claim> ofWhole, Map<String, Claim> ofParted) {
    Map<String, Claim> safety = new LinkedHashMap<>();
    Map<String, Claim> subjects = new LinkedHashMap<>();
    Map<String, Claim> possibilities = new LinkedHashMap<>();
    for (Requirement requirement : box.checked()) {
      String id = requirement.id();
      if (requirement.possibility()) {
        possibilities.put(id, ofWhole.get(id));
      } else {
        safety.put(id, ofParted.get(id));
      }
      for (Subject subject : requirement.speaksAbout()) {
        Claim claim =
            ofWhole.get(subject.id()) instanceof Claim.Reached reached
                ? new Claim.Reached(reached.run().parted(box.frame()), false)
                : ofParted.get(subject.id());
        subjects.put(subject.id(), claim);
      }
    }
    return new Claims(safety, subjects, possibilities);
  }
}
