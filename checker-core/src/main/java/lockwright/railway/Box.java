package lockwright.railway;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lockwright.railway.control.Controls;
import lockwright.railway.drawing.Drawing;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.NotSignalled;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;

/**
 * A signal box as its spec gives it, and what follows from its layout. Nothing here depends on the
 * locking but {@link #locking} itself.
 *
 * @param locking the entries in the order of the table
 * @param sections in order of their names
 * @param routes in order of the signals in the plan, then of the points passed (normal before
 *     reverse)
 * @param requirements all instances, in the order of the catalogue, then of the plan
 * @param advice the instances that are advice, and that nobody asks for: they are checked, and fail
 *     nothing; none of the requirements
 * @param drawing where its author wants things in the track diagram; nothing follows from it
 * @param exempted the instances that its author exempts by name, which are none of its requirements
 * @param asked what would be advice, but is among the requirements, since its author asks for it
 * @param controls what acts on levers and arms from outside the frame
 */
public record Box(
    String name,
    Layout layout,
    Frame frame,
    List<Entry> locking,
    List<Section> sections,
    List<Route> routes,
    List<NotSignalled> notSignalled,
    List<Conflict> conflicts,
    List<DistantPath> distantPaths,
    List<Requirement> requirements,
    List<Requirement> advice,
    Drawing drawing,
    Controls controls,
    List<Exemption> exempted,
    List<Asked> asked) {
  public Box {
    exempted = List.copyOf(exempted);
    asked = List.copyOf(asked);
    advice = List.copyOf(advice);
    locking = List.copyOf(locking);
    sections = List.copyOf(sections);
    routes = List.copyOf(routes);
    notSignalled = List.copyOf(notSignalled);
    conflicts = List.copyOf(conflicts);
    distantPaths = List.copyOf(distantPaths);
    requirements = List.copyOf(requirements);
  }

  /** A box whose diagram is placed by its layout alone, and that nothing acts on from outside. */
  public Box(
      String name,
      Layout layout,
      Frame frame,
      List<Entry> locking,
      List<Section> sections,
      List<Route> routes,
      List<NotSignalled> notSignalled,
      List<Conflict> conflicts,
      List<DistantPath> distantPaths,
      List<Requirement> requirements) {
    this(
        name,
        layout,
        frame,
        locking,
        sections,
        routes,
        notSignalled,
        conflicts,
        distantPaths,
        requirements,
        List.of(),
        Drawing.NONE,
        Controls.NONE,
        List.of(),
        List.of());
  }

  /** The same box with another locking table. */
  public Box withLocking(List<Entry> entries) {
    return with(entries, sections, drawing, controls);
  }

  /** The same box with another section in place of that of the same name. */
  public Box withSection(Section other) {
    return with(
        locking,
        sections.stream().map(s -> s.name().equals(other.name()) ? other : s).toList(),
        drawing,
        controls);
  }

  /** The same box, drawn otherwise. */
  public Box withDrawing(Drawing other) {
    return with(locking, sections, other, controls);
  }

  /** The same box without the requirements that are exempted. */
  public Box exempting(List<Exemption> exemptions) {
    List<Requirement> not = exemptions.stream().map(Exemption::requirement).toList();
    return with(
        requirements.stream().filter(r -> !not.contains(r)).toList(), advice, exemptions, asked);
  }

  /** The same box with this advice. */
  public Box advised(List<Requirement> other) {
    return with(requirements, other, exempted, asked);
  }

  /** The same box with what is asked for among the requirements of safety, and no advice. */
  public Box asking(List<Asked> wanted) {
    List<Requirement> now = wanted.stream().map(Asked::requirement).toList();
    return with(
        Stream.of(
                requirements.stream().filter(r -> !r.possibility()),
                now.stream(),
                requirements.stream().filter(Requirement::possibility))
            .<Requirement>flatMap(Function.identity())
            .toList(),
        advice.stream().filter(r -> !now.contains(r)).toList(),
        exempted,
        wanted);
  }

  /** All that is checked: the requirements, and then the advice. */
  public List<Requirement> checked() {
    return Stream.concat(requirements.stream(), advice.stream()).toList();
  }

  private Box with(
      List<Requirement> otherRequirements,
      List<Requirement> otherAdvice,
      List<Exemption> exemptions,
      List<Asked> wanted) {
    return new Box(
        name,
        layout,
        frame,
        locking,
        sections,
        routes,
        notSignalled,
        conflicts,
        distantPaths,
        otherRequirements,
        otherAdvice,
        drawing,
        controls,
        exemptions,
        wanted);
  }

  /** The same box with other lever locks and arm controls. */
  public Box withControls(Controls other) {
    return with(locking, sections, drawing, other);
  }

  /** The same box with something else between levers and what they work; nothing follows of it. */
  public Box withConnections(Connections connections) {
    return with(new Frame(frame.levers(), connections), locking, sections, drawing, controls);
  }

  private Box with(
      List<Entry> entries,
      List<Section> otherSections,
      Drawing otherDrawing,
      Controls otherControls) {
    return with(frame, entries, otherSections, otherDrawing, otherControls);
  }

  private Box with(
      Frame otherFrame,
      List<Entry> entries,
      List<Section> otherSections,
      Drawing otherDrawing,
      Controls otherControls) {
    return new Box(
        name,
        layout,
        otherFrame,
        entries,
        otherSections,
        routes,
        notSignalled,
        conflicts,
        distantPaths,
        requirements,
        advice,
        otherDrawing,
        otherControls,
        exempted,
        asked);
  }

  /** The section whose tokens release a ground frame; none, where a lever does. */
  public Optional<Section> releasing(String groundFrame) {
    return sections.stream()
        .filter(s -> s.locks().stream().anyMatch(l -> l.groundFrame().equals(groundFrame)))
        .findFirst();
  }

  /** The levers that give an arm for a route, in order: of slotted ones, all. */
  public List<Lever> giving(Route route) {
    return frame.giving(route.signal()).stream()
        .filter(l -> l.work() instanceof Work.OfSignal w && w.isFor(route.tracks()))
        .toList();
  }

  /** The levers with which an arm goes off into a section: those for a route into it. */
  public List<Lever> givingInto(String section, String signal) {
    return frame.giving(signal).stream()
        .filter(
            l ->
                !frame.dividedAmongLevers(signal)
                    || routesOf(signal).stream()
                        .filter(r -> r.end().equals(new Route.End.InSection(section)))
                        .anyMatch(r -> giving(r).contains(l)))
        .toList();
  }

  /** The routes of an arm, in order. */
  public List<Route> routesOf(String signal) {
    return routes.stream().filter(r -> r.signal().equals(signal)).toList();
  }
}
