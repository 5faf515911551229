package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Routes;
import lockwright.railway.layout.Signal;
import lockwright.railway.section.Section;

/** Frames and sections to go with a drawn layout. */
public final class Frames {
  private Frames() {}

  /** A lever for each signal, for each points and release, for the bolts named, and spare ones. */
  public static Frame of(Layout layout, List<String> bolted, int spare) {
    return of(layout, bolted, spare, List.of());
  }

  /** The same, with no lever to release a ground frame that tokens of a section release. */
  public static Frame of(Layout layout, List<String> bolted, int spare, List<Section> sections) {
    List<String> byToken =
        sections.stream().flatMap(s -> s.locks().stream()).map(Section.Lock::groundFrame).toList();
    List<Work> works = new ArrayList<>();
    layout.signals().stream().filter(s -> !s.fixed()).forEach(s -> works.addAll(giving(layout, s)));
    layout.points().stream()
        .filter(p -> !p.sprung() && !layout.pointsOfGroundFrames().containsKey(p.id()))
        .forEach(p -> works.add(new Work.OfPoints(List.of(p.id()))));
    bolted.forEach(p -> works.add(new Work.OfBolt(List.of(p), false)));
    layout.groundFrames().stream()
        .filter(g -> !byToken.contains(g.id()))
        .forEach(g -> works.add(new Work.OfRelease(g.id(), true)));
    layout
        .levelCrossings()
        .forEach(
            c ->
                works.add(
                    works.size() % 2 == 0
                        ? new Work.OfGates(c.id(), true)
                        : new Work.OfGateLock(c.id(), false)));
    List<String> running =
        layout.signals().stream()
            .filter(s -> !s.fixed() && s.arm().running())
            .map(Signal::id)
            .toList();
    if (running.size() > 1 && works.size() % 2 == 1) {
      works.add(new Work.OfClosing(works.size() % 4 == 1 ? running : running.subList(0, 2)));
    }
    for (int i = 0; i < spare; i++) {
      works.add(new Work.Spare());
    }
    List<Lever> levers = new ArrayList<>();
    works.forEach(w -> levers.add(new Lever("" + (levers.size() + 1), "", w, Drawing.NOWHERE)));
    return new Frame(levers);
  }

  /** One lever; now and then two, each for some of the routes. */
  private static List<Work> giving(Layout layout, Signal signal) {
    List<String> ends =
        Routes.of(layout).stream()
            .filter(r -> r.signal().equals(signal.id()))
            .map(r -> r.tracks().get(r.tracks().size() - 1))
            .distinct()
            .toList();
    return ends.size() < 2 || layout.signals().size() % 2 == 0
        ? List.of(new Work.OfSignal(signal.id()))
        : List.of(
            new Work.OfSignal(signal.id(), ends.subList(0, 1), false),
            new Work.OfSignal(signal.id(), ends.subList(1, ends.size()), false));
  }

  public static Section section(String name, String track, String... groundFrames) {
    return new Section(
        name,
        track,
        Section.Token.TOKEN,
        4,
        List.of(
            new Section.Instrument("here", true, List.of("far")),
            new Section.Instrument("far", true, List.of("here"))),
        "here",
        true,
        false,
        Section.Irregular.NEVER,
        Optional.of(
            new Section.Release(List.of("1"), Section.Lasts.UNTIL_USED, Section.Begins.EITHER)),
        Stream.of(groundFrames).map(g -> new Section.Lock(g, true)).toList(),
        Drawing.NOWHERE);
  }
}
