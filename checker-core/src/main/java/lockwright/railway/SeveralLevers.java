package lockwright.railway;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lockwright.railway.layout.Route;
import lockwright.spec.FrameFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.Span;
import lockwright.spec.Written;

/** Tells what is wrong about the levers of one arm; {@code docs/meaning.md} 2.7. */
final class SeveralLevers {
  private final List<FrameFile.OfSignal> works;
  private final Written signal;
  private final Problems problems;

  SeveralLevers(List<FrameFile.Lever> levers, Written signal, Problems problems) {
    this.signal = signal;
    this.problems = problems;
    works =
        levers.stream()
            .flatMap(l -> l.work().stream())
            .filter(w -> w instanceof FrameFile.OfSignal)
            .map(w -> (FrameFile.OfSignal) w)
            .filter(w -> w.signal().text().equals(signal.text()))
            .toList();
  }

  /** Whether each of them says how it shares in the arm, so that they may be several. */
  boolean agree() {
    return works.stream().allMatch(w -> w.slotted() || !w.ways().isEmpty());
  }

  /** Looks at one of them. */
  void check(FrameFile.Lever lever) {
    FrameFile.OfSignal work = (FrameFile.OfSignal) lever.work().orElseThrow();
    if (works.size() == 1 && agree()) {
      problems.add(
          Message.ONLY_LEVER_OF_SIGNAL,
          signal.at(),
          "lever "
              + lever.id().quoted()
              + " is the only one of signal "
              + signal.quoted()
              + ", and says "
              + (work.slotted() ? "'slotted'" : "'for'"),
          "take it away, or write the other levers of the arm; the routes of the arm itself are"
              + " written with 'for' in plan.yaml");
    } else if (agree()
        && (work.slotted() && !work.ways().isEmpty() || work.slotted() != works.get(0).slotted())) {
      problems.add(
          Message.LEVERS_OF_SIGNAL_AT_ODDS,
          signal.at(),
          "lever "
              + lever.id().quoted()
              + " of signal "
              + signal.quoted()
              + (work.slotted() == works.get(0).slotted()
                  ? " says 'for' and 'slotted' both"
                  : " says one of 'for' and 'slotted', and another lever of the arm the other"),
          "let all of them say 'for', each with tracks of its routes, or all 'slotted: yes'");
    }
  }

  /** What cannot be said before it is known where each arm leads; of a box without a problem. */
  static void check(Box box, PlanFile plan, FrameFile file, Problems problems) {
    Map<String, Span> names =
        plan.signals().stream().collect(Collectors.toMap(s -> s.id().text(), s -> s.id().at()));
    for (FrameFile.Lever lever : file.levers()) {
      if (lever.work().orElseThrow() instanceof FrameFile.OfSignal work) {
        ways(box, lever, work, problems);
      }
    }
    box.layout().signals().stream()
        .map(s -> s.id())
        .filter(box.frame()::dividedAmongLevers)
        .flatMap(s -> box.routesOf(s).stream())
        .filter(r -> box.giving(r).isEmpty())
        .forEach(r -> withoutLever(r, names.get(r.signal()), problems));
    for (String signal : box.layout().signals().stream().map(s -> s.id()).toList()) {
      boolean into =
          box.layout().signal(signal).arm().running()
              && box.routesOf(signal).stream()
                  .anyMatch(r -> r.end() instanceof Route.End.InSection);
      if (into && box.frame().slotted(signal)) {
        problems.add(
            Message.SLOTTED_SECTION_SIGNAL,
            names.get(signal),
            "signal '" + signal + "' leads into a section and is slotted",
            "this version does not know when such an arm goes off: give it one lever, or levers each"
                + " for some of its routes");
      }
    }
  }

  /** A lever names tracks of the arm's routes; so a distant's lever names none. */
  private static void ways(
      Box box, FrameFile.Lever lever, FrameFile.OfSignal work, Problems problems) {
    List<Route> routes = box.routesOf(work.signal().text());
    for (Written track : work.ways()) {
      if (routes.stream().noneMatch(r -> r.tracks().contains(track.text()))) {
        List<String> passed =
            routes.stream().flatMap(r -> r.tracks().stream()).distinct().sorted().toList();
        problems.add(
            Message.LEVER_FOR_NO_ROUTE,
            track.at(),
            "lever "
                + lever.id().quoted()
                + " of signal "
                + work.signal().quoted()
                + " is for track "
                + track.quoted()
                + ", which no route of the arm passes",
            passed.isEmpty()
                ? "the arm has no route: give it one lever, or slotted ones"
                : "name one of: " + String.join(", ", passed));
      }
    }
  }

  private static void withoutLever(Route route, Span signal, Problems problems) {
    problems.add(
        Message.LEVER_FOR_NO_ROUTE,
        signal,
        "no lever of signal '" + route.signal() + "' is for its route '" + route.name() + "'",
        "name one of its tracks under 'for' of a lever: " + String.join(", ", route.tracks()));
  }
}
