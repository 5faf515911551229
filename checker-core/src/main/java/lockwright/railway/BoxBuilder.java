package lockwright.railway;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.frame.Frame;
import lockwright.railway.layout.Layout;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.section.Section;
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
   * @param problems by place
   * @param digests for each file that was read, SHA-256 of the bytes that were parsed
   */
  public record Built(
      Optional<Box> box, List<Problem> problems, SortedMap<String, String> digests) {
    public Built {
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
    problems.addAll(spec.problems());
    Optional<Layout> layout =
        spec.plan().flatMap(plan -> LayoutBuilder.build(plan, spec, problems));
    Optional<Frame> frame = spec.frame().map(file -> FrameBuilder.build(file, spec, problems));
    Optional<List<Entry>> locking =
        spec.locking()
            .flatMap(t -> spec.frame().map(f -> LockingBuilder.build(t, f, spec, problems)));
    List<Section> sections =
        spec.sections().map(s -> SectionsBuilder.build(s, spec, problems)).orElse(List.of());
    List<Problem> all = problems.sorted();
    if (!all.isEmpty()) {
      return new Built(Optional.empty(), all, spec.digests());
    }
    String name = spec.plan().flatMap(p -> p.box()).map(Written::text).orElseThrow();
    Box box = box(name, layout.orElseThrow(), frame.orElseThrow(), locking.orElseThrow(), sections);
    return new Built(Optional.of(box), all, spec.digests());
  }

  private static Box box(
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
        derived.requirements());
  }
}
