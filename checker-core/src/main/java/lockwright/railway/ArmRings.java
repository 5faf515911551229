package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.spec.ControlsFile;
import lockwright.spec.ControlsFile.Need;
import lockwright.spec.ControlsFile.Proves;
import lockwright.spec.Message;
import lockwright.spec.Problem;
import lockwright.spec.Problems;

/**
 * Tells where the controls of arms prove each other in a ring: then whether they are off would not
 * follow from levers and conditions; {@code docs/meaning.md} 2.9.
 */
final class ArmRings {
  private final Map<String, List<Need>> provedFor = new LinkedHashMap<>();
  private final Problems problems;

  ArmRings(List<ControlsFile.ArmControl> controls, Problems problems) {
    this.problems = problems;
    for (ControlsFile.ArmControl control : controls) {
      provedFor.putIfAbsent(
          control.signal().text(),
          control.needs().stream().filter(n -> n.proves() != Proves.CONDITION).toList());
    }
  }

  /** Each need that begins and ends a ring, where it is written. */
  void tell() {
    provedFor.forEach(
        (signal, needs) ->
            needs.forEach(
                need -> {
                  List<String> ring = new ArrayList<>(List.of(signal));
                  if (leads(need.name().text(), signal, ring)) {
                    problems.add(
                        Message.ARMS_IN_A_RING,
                        need.written().at(),
                        "whether arm "
                            + need.name().quoted()
                            + " is off hangs on arm "
                            + Problem.quote(signal)
                            + " itself",
                        "prove one of them for the other, not each for itself; or let lever locks"
                            + " prove them");
                  }
                }));
  }

  private boolean leads(String from, String to, List<String> passed) {
    if (from.equals(to)) {
      return true;
    }
    if (passed.contains(from)) {
      return false;
    }
    passed.add(from);
    return provedFor.getOrDefault(from, List.of()).stream()
        .anyMatch(n -> leads(n.name().text(), to, passed));
  }
}
