package lockwright.railway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Overlap;
import lockwright.railway.layout.Signal;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.Written;

/** Makes the overlaps of a plan, once it is joined up; `docs/meaning.md` 1.11. */
final class OverlapsBuilder {
  private OverlapsBuilder() {}

  /** The layout with those that fit. */
  static Layout build(PlanFile plan, Layout layout, Problems problems) {
    List<Overlap> overlaps = new ArrayList<>();
    for (PlanFile.Overlaps written : plan.overlaps()) {
      Optional<Signal> signal =
          layout.signals().stream()
              .filter(s -> s.id().equals(written.signal().text()) && s.arm() == Arm.STOP)
              .findFirst();
      if (signal.isEmpty()) {
        problems.add(
            Message.OVERLAP_SIGNAL,
            written.signal().at(),
            "there is no stop signal " + written.signal().quoted(),
            Problems.didYouMean(
                written.signal().text(),
                layout.signals().stream().filter(s -> s.arm() == Arm.STOP).map(Signal::id).toList(),
                "name the stop signal beyond which the overlap lies"));
        continue;
      }
      for (List<Written> tracks : written.tracks()) {
        overlap(signal.get(), tracks, layout, problems).ifPresent(overlaps::add);
      }
    }
    return layout.withOverlaps(overlaps);
  }

  private static Optional<Overlap> overlap(
      Signal signal, List<Written> tracks, Layout layout, Problems problems) {
    List<String> ids = tracks.stream().map(Written::text).toList();
    Overlap overlap = new Overlap(signal.id(), ids, tracks.get(0).at());
    for (int i = 0; i < ids.size(); i++) {
      Overlap so = new Overlap(signal.id(), ids.subList(0, i + 1), overlap.at());
      if (Beyond.walk(layout, so).isEmpty()) {
        problems.add(
            Message.OVERLAP_TRACKS,
            tracks.get(i).at(),
            "no train comes to track "
                + tracks.get(i).quoted()
                + (i == 0
                    ? " as it passes signal " + signal.id()
                    : " from track " + tracks.get(i - 1).quoted() + " on")
                + (Beyond.barred(layout, so)
                    ? ": the points there are sprung, and cannot be passed facing to reverse"
                    : ""),
            "name the tracks beyond the signal in the order in which a train that overran it would"
                + " come to them");
        return Optional.empty();
      }
    }
    return Optional.of(overlap);
  }
}
