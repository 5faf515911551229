package lockwright.spec;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The spec of a signal box as its author wrote it: the files of one folder, checked for form alone.
 * A file that cannot be taken apart is absent here, and a problem tells why.
 *
 * @param sections empty also where there is no such file, which is no problem
 * @param controls the same
 * @param waivers the same
 * @param drawing the same
 * @param lessons the same
 * @param digests for each file that was read, SHA-256 of the bytes that were parsed, in hexadecimal
 * @param problems by place
 */
public record SpecFolder(
    Optional<PlanFile> plan,
    Optional<FrameFile> frame,
    Optional<LockingFile> locking,
    Optional<SectionsFile> sections,
    Optional<ControlsFile> controls,
    Optional<WaiversFile> waivers,
    Optional<DrawingFile> drawing,
    Optional<LessonsFile> lessons,
    SortedMap<String, String> digests,
    List<Problem> problems) {
  public static final String PLAN = "plan.yaml";
  public static final String FRAME = "frame.yaml";
  public static final String LOCKING_CSV = "locking.csv";
  public static final String LOCKING_YAML = "locking.yaml";
  public static final String SECTIONS = "sections.yaml";
  public static final String CONTROLS = "controls.yaml";
  public static final String WAIVERS = "waivers.yaml";
  public static final String DRAWING = "drawing.yaml";
  public static final String LESSONS = "lessons.yaml";

  private static final List<String> FILES =
      List.of(
          PLAN, FRAME, LOCKING_CSV, LOCKING_YAML, SECTIONS, CONTROLS, WAIVERS, DRAWING, LESSONS);
  private static final Pattern LOOKS_LIKE_ONE =
      Pattern.compile(
          "(?i).*\\.(yaml|yml|csv)|(plan|frame|locking|sections?|controls?|waivers?|drawings?|lessons?)(\\..*)?");

  public SpecFolder {
    digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
    problems = List.copyOf(problems);
  }

  /**
   * Reads the files of a folder. All that is wrong with them becomes a problem.
   *
   * @throws UncheckedIOException if the file system fails, which is no fault of the spec
   */
  public static SpecFolder read(Path folder) {
    return new Reading(folder).all();
  }

  /** Whether the folder has a file of this name that could be read. */
  public boolean has(String file) {
    return digests.containsKey(file);
  }

  /**
   * Whether a file is there and its form has no problem. Else some of what it should say is missing
   * here, and nothing follows from the absence of a name.
   */
  public boolean isWhole(String file) {
    return has(file) && problems.stream().noneMatch(p -> p.span().file().equals(file));
  }

  /** One reading of a folder. */
  private static final class Reading {
    private final Path folder;
    private final List<String> names;
    private final Problems problems = new Problems();
    private final SortedMap<String, String> digests = new TreeMap<>();

    Reading(Path folder) {
      this.folder = folder;
      this.names = namesIn(folder);
    }

    SpecFolder all() {
      if (names.contains(LOCKING_CSV) && names.contains(LOCKING_YAML)) {
        problems.add(
            Message.TWO_LOCKING_TABLES,
            start(LOCKING_YAML),
            "there are two locking tables, " + LOCKING_CSV + " and " + LOCKING_YAML,
            "keep one of the two");
      }
      need(PLAN);
      need(FRAME);
      if (!names.contains(LOCKING_YAML)) {
        need(LOCKING_CSV);
      }
      names.forEach(this::refuseStranger);
      Optional<LockingFile> csv =
          text(LOCKING_CSV).flatMap(t -> LockingReader.readCsv(LOCKING_CSV, t, problems));
      Optional<LockingFile> yaml = yaml(LOCKING_YAML, LockingReader::readYaml);
      return new SpecFolder(
          yaml(PLAN, PlanReader::read),
          yaml(FRAME, FrameReader::read),
          csv.or(() -> yaml),
          yaml(SECTIONS, SectionsReader::read),
          yaml(CONTROLS, ControlsReader::read),
          yaml(WAIVERS, WaiversReader::read),
          yaml(DRAWING, DrawingReader::read),
          yaml(LESSONS, LessonsReader::read),
          digests,
          problems.sorted());
    }

    private void need(String name) {
      if (!names.contains(name)) {
        boolean locking = name.equals(LOCKING_CSV);
        problems.add(
            Message.FILE_MISSING,
            start(name),
            Files.isDirectory(folder)
                ? "the folder has no " + (locking ? name + " and no " + LOCKING_YAML : name)
                : "there is no folder with a spec",
            locking ? "write one of the two" : "write " + name + " into the folder of the spec");
      }
    }

    /** A file under a misspelt name would else be left out silently. */
    private void refuseStranger(String name) {
      if (!FILES.contains(name) && LOOKS_LIKE_ONE.matcher(name).matches()) {
        problems.add(
            Message.FILE_NOT_READ,
            start(name),
            Problem.quote(name) + " is no file of a spec and would not be read",
            Problems.didYouMean(
                name, FILES, "take it away; a spec has only " + String.join(", ", FILES)));
      }
    }

    private <T> Optional<T> yaml(String name, BiFunction<Node, Problems, Optional<T>> form) {
      return text(name)
          .flatMap(t -> YamlReader.read(name, t, problems))
          .flatMap(root -> form.apply(root, problems));
    }

    private Optional<String> text(String name) {
      if (!names.contains(name)) {
        return Optional.empty();
      }
      Optional<SourceFile> file = SourceFile.read(folder, name, problems);
      file.ifPresent(f -> digests.put(name, f.digest()));
      return file.flatMap(SourceFile::text);
    }

    private static Span start(String name) {
      return new Span(name, 1, 1);
    }

    private static List<String> namesIn(Path folder) {
      if (!Files.isDirectory(folder)) {
        return List.of();
      }
      List<String> names = new ArrayList<>();
      try (Stream<Path> paths = Files.list(folder)) {
        paths.forEach(path -> names.add(path.getFileName().toString()));
      } catch (IOException e) {
        throw new UncheckedIOException("cannot list the folder of the spec", e);
      }
      Collections.sort(names);
      return names;
    }
  }
}
