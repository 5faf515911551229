package lockwright.railway;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.control.Controls;
import lockwright.railway.frame.Frame;
import lockwright.railway.layout.Layout;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.requirement.Expectation;
import lockwright.railway.section.Section;
import lockwright.railway.teaching.Teaching;
import lockwright.spec.LessonsFile;
import lockwright.spec.Problem;
import lockwright.spec.Problems;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Makes a box of a spec, or tells all that is wrong with it. */
public final class BoxBuilder {
  private BoxBuilder() {}

  /**
   * The outcome: a box without problems, or problems without a box.
   *
   * @param expectations what its author says of instances that fail, in the order of the file
   * @param teaching what its trainer says in lessons
   * @param problems by place
   * @param digests for each file that was read and that a check rests on, so not for those of the
   *     lessons, SHA-256 of the bytes that were parsed
   */
  public record Built(
      Optional<Box> box,
      List<Expectation> expectations,
      Teaching teaching,
      List<Problem> problems,
      SortedMap<String, String> digests) {
    public Built {
      expectations = List.copyOf(expectations);
      problems = List.copyOf(problems);
      digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
      if (box.isPresent() != problems.isEmpty()) {
        throw new IllegalArgumentException("a box, or problems");
      }
    }
  }

  /**
   * Reads a folder and builds its box.
   *
   * @throws java.io.UncheckedIOException if the file system fails, which is no fault of the spec
   */
  public static Built read(Path folder) {
    return build(SpecFolder.read(folder));
  }

  public static Built build(SpecFolder spec) {
    Problems problems = new Problems();
    problems.addAll(problems(spec, false));
    Optional<Box> bare = box(spec, problems);
    bare.ifPresent(
        b -> spec.frame().ifPresent(f -> new ConnectionsBuilder(f, spec, problems).checkRoutes(b)));
    bare.ifPresent(b -> severalLevers(b, spec, problems));
    problems.addAll(problems(spec, true));
    Optional<Box> box = bare.map(b -> exempting(drawn(b, spec, problems), spec, problems));
    Optional<Teaching> teaching =
        box.flatMap(b -> spec.lessons().map(l -> teaching(l, spec, b, problems)));
    List<Expectation> expectations =
        box.flatMap(b -> spec.waivers().map(w -> WaiversBuilder.build(w, b, problems)))
            .orElse(List.of());
    List<Problem> all = problems.sorted();
    SortedMap<String, String> digests = new TreeMap<>(spec.digests());
    digests.remove(SpecFolder.LESSONS);
    return all.isEmpty()
        ? new Built(box, expectations, teaching.orElse(Teaching.NONE), all, digests)
        : new Built(Optional.empty(), List.of(), Teaching.NONE, all, digests);
  }

  private static Teaching teaching(LessonsFile file, SpecFolder spec, Box box, Problems problems) {
    return LessonsBuilder.build(file, spec.digests().get(SpecFolder.LESSONS), box, problems);
  }

  private static Box exempting(Box box, SpecFolder spec, Problems problems) {
    return spec.waivers()
        .map(
            w ->
                box.exempting(new NamedInstances(w.exempted(), box, problems).exempted())
                    .asking(new NamedInstances(w.asked(), box, problems).asked()))
        .orElse(box);
  }

  private static Box drawn(Box box, SpecFolder spec, Problems problems) {
    return spec.drawing()
        .map(d -> box.withDrawing(DrawingBuilder.build(d, box.layout(), problems)))
        .orElse(box);
  }

  private static void severalLevers(Box box, SpecFolder spec, Problems problems) {
    SeveralLevers.check(box, spec.plan().orElseThrow(), spec.frame().orElseThrow(), problems);
  }

  /** Those of the form of files that nothing of the box rests on, or all others. */
  private static List<Problem> problems(SpecFolder spec, boolean ofNoPart) {
    List<String> noPart = List.of(SpecFolder.WAIVERS, SpecFolder.DRAWING, SpecFolder.LESSONS);
    return spec.problems().stream()
        .filter(p -> noPart.contains(p.span().file()) == ofNoPart)
        .toList();
  }

  /** The box, if there is no problem. */
  private static Optional<Box> box(SpecFolder spec, Problems problems) {
    Optional<Layout> layout =
        spec.plan().flatMap(plan -> LayoutBuilder.build(plan, spec, problems));
    Optional<Frame> frame = spec.frame().map(file -> FrameBuilder.build(file, spec, problems));
    Optional<List<Entry>> locking =
        spec.locking()
            .flatMap(t -> spec.frame().map(f -> LockingBuilder.build(t, f, spec, problems)));
    List<Section> sections =
        spec.sections().map(s -> SectionsBuilder.build(s, spec, problems)).orElse(List.of());
    Controls controls =
        spec.controls().map(c -> ControlsBuilder.build(c, spec, problems)).orElse(Controls.NONE);
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    String name = spec.plan().flatMap(p -> p.box()).map(Written::text).orElseThrow();
    return Optional.of(
        box(name, layout.orElseThrow(), frame.orElseThrow(), locking.orElseThrow(), sections)
            .withControls(controls));
  }

  /** A box of these parts, with all that is derived from them. */
  public static Box box(
      String name, Layout layout, Frame frame, List<Entry> locking, List<Section> sections) {
    Derived derived = Derivation.derive(layout, frame, sections);
    return new Box(
            name,
            layout,
            frame,
            locking,
            sections,
            derived.routes(),
            derived.notSignalled(),
            derived.conflicts(),
            derived.distantPaths(),
            derived.requirements())
        .advised(derived.advice());
  }
}
