package lockwright.worker;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Verdict;

/**
 * What a search found: a verdict for each target of the job, in their order, and the engine that
 * gave it where one decided.
 *
 * @param solver name and version of the solver, or {@code none} if none answered
 */
public record Found(Map<String, Verdict> verdicts, Map<String, String> decidedBy, String solver) {
  public Found {
    verdicts = Collections.unmodifiableMap(new LinkedHashMap<>(verdicts));
    decidedBy = Collections.unmodifiableMap(new LinkedHashMap<>(decidedBy));
  }

  /** Nothing: every target unknown, for one reason. */
  static Found nothing(TransitionSystem system, String reason) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    for (Target target : system.targets()) {
      verdicts.put(target.name(), new Verdict.Unknown(reason));
    }
    return new Found(verdicts, Map.of(), "none");
  }
}
