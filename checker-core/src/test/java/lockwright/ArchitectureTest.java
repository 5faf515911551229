package lockwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * Holds the code to the plan of the house. The plan is the data at the top of this class: a new
 * engine or format is one word in its list, a new room is one line in the table. Packages are named
 * without the leading {@code lockwright.}; a package that is on no line is a failure.
 */
class ArchitectureTest {

  private static final String ROOT = "lockwright";

  /** Ways of searching for a proof or a breach. They never import each other. */
  private static final List<String> ENGINES =
      List.of("proof.merged", "proof.written", "proof.pdr", "proof.search");

  /** Ways of writing a report. They never import each other. */
  private static final List<String> FORMATS =
      List.of("report.json", "report.text", "report.readback");

  /** Those that are written from the bytes of result.json alone. */
  private static final List<String> FROM_RESULT =
      List.of("report.sarif", "report.junit", "report.markdown");

  /** Every room but {@code check}, which may import all of these, and the rooms it may import. */
  private static final List<Room> ROOMS =
      Stream.of(
              Stream.of(
                  room("spec").with("form"),
                  room("railway", "spec")
                      .with(
                          "layout",
                          "drawing",
                          "frame",
                          "locking",
                          "section",
                          "control",
                          "requirement",
                          "teaching",
                          "words"),
                  room("working", "railway"),
                  room("encode", "railway", "system", "encode.names"),
                  room("encode.names", "railway", "system", "verdict"),
                  room("system"),
                  room("solver", "system"),
                  room("solver.z3", "solver", "system"),
                  room("verdict", "system"),
                  room("proof", "system", "solver", "verdict")),
              ENGINES.stream().map(ArchitectureTest::engine),
              Stream.of(
                  room("worker", "proof", "system", "solver", "solver.z3", "verdict").and(ENGINES),
                  room("audit", "railway", "working", "verdict", "encode.names", "audit.sat"),
                  room("audit.sat", "working", "railway", "encode.names"),
                  room("report", "railway", "audit", "verdict", "spec", "encode.names"),
                  room("walk", "railway", "working"),
                  room("testsheet", "railway", "working", "walk"),
                  room(
                      "report.testsheet",
                      "report",
                      "report.html",
                      "testsheet",
                      "walk",
                      "working",
                      "railway",
                      "spec"),
                  room("explain", "railway", "spec", "working", "walk"),
                  room("report.explain", "report", "explain", "walk", "working", "railway", "spec"),
                  room("report.picture", "report", "spec"),
                  room("report.result", "report"),
                  room("report.html", "report", "report.picture"),
                  room(
                      "report.page",
                      "report",
                      "report.picture",
                      "report.result",
                      "report.html",
                      "spec"),
                  room(
                      "report.learner", "report", "report.picture", "report.result", "report.html"),
                  room(
                      "report.lesson",
                      "report",
                      "report.picture",
                      "report.result",
                      "report.html",
                      "report.learner",
                      "explain",
                      "walk",
                      "spec",
                      "railway",
                      "audit",
                      "working")),
              FROM_RESULT.stream().map(format -> room(format, "report", "report.result")),
              FORMATS.stream().map(ArchitectureTest::format))
          .flatMap(rooms -> rooms)
          .toList();

  private static final List<Room> HOUSE =
      Stream.concat(
              ROOMS.stream(), Stream.of(room("check").and(ROOMS.stream().map(Room::name).toList())))
          .toList();

  /** Libraries that are kept to a few rooms. */
  private static final List<Kept> KEPT =
      List.of(
          new Kept("com.microsoft.z3", List.of("solver.z3")),
          new Kept("org.sat4j", List.of("audit.sat")),
          new Kept("org.yaml.snakeyaml", List.of("spec")),
          new Kept(
              "com.fasterxml.jackson",
              List.of(
                  "spec",
                  "worker",
                  "report.json",
                  "report.result",
                  "report.page",
                  "report.lesson",
                  "report.learner",
                  "report.picture",
                  "report.sarif")));

  private static final JavaClasses CODE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  @Test
  void the_code_is_found() {
    assertThat(CODE).isNotEmpty();
  }

  @Test
  void the_table_speaks_only_of_rooms_that_it_names_once() {
    List<String> names = HOUSE.stream().map(Room::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(HOUSE).allSatisfy(room -> assertThat(names).containsAll(room.mayImport()));
    assertThat(KEPT).allSatisfy(kept -> assertThat(names).containsAll(kept.rooms()));
  }

  @Test
  void every_class_lives_in_a_room() {
    classes()
        .that()
        .doNotHaveFullyQualifiedName(ROOT + ".package-info")
        .should()
        .resideInAnyPackage(packagesOf(HOUSE))
        .allowEmptyShould(true)
        .check(CODE);
  }

  @ParameterizedTest
  @FieldSource("HOUSE")
  void a_room_imports_only_what_the_table_allows(Room room) {
    List<Room> reachable =
        HOUSE.stream().filter(r -> r.equals(room) || room.mayImport().contains(r.name())).toList();
    noClasses()
        .that()
        .resideInAnyPackage(packagesOf(List.of(room)))
        .should()
        .dependOnClassesThat(
            resideInAPackage(ROOT + "..").and(not(resideInAnyPackage(packagesOf(reachable)))))
        .allowEmptyShould(true)
        .check(CODE);
  }

  @ParameterizedTest
  @FieldSource("KEPT")
  void a_library_is_used_only_in_its_rooms(Kept kept) {
    List<Room> users = HOUSE.stream().filter(r -> kept.rooms().contains(r.name())).toList();
    noClasses()
        .that()
        .resideOutsideOfPackages(packagesOf(users))
        .should()
        .dependOnClassesThat(resideInAPackage(kept.library() + ".."))
        .allowEmptyShould(true)
        .check(CODE);
  }

  /** No proof can rest on where things are drawn: who proves and who audits never sees it. */
  @Test
  void where_things_are_drawn_is_known_to_the_spec_and_to_the_result_alone() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            ROOT + ".railway", ROOT + ".railway.drawing", ROOT + ".report.json")
        .should()
        .dependOnClassesThat(resideInAPackage(ROOT + ".railway.drawing"))
        .check(CODE);
  }

  @Test
  void no_two_packages_import_each_other_even_in_a_ring() {
    slices().matching(ROOT + ".(**)").should().beFreeOfCycles().allowEmptyShould(true).check(CODE);
  }

  @Test
  void no_package_has_a_name_that_says_nothing() {
    noClasses()
        .should()
        .resideInAnyPackage("..util..", "..common..", "..helper..", "..misc..", "..impl..")
        .allowEmptyShould(true)
        .check(CODE);
  }

  @Test
  void nothing_is_stored_or_sent_by_java_serialization() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(ObjectInputStream.class, ObjectOutputStream.class)
        .allowEmptyShould(true)
        .check(CODE);
  }

  private static Room room(String name, String... mayImport) {
    return new Room(name, List.of(name), List.of(mayImport));
  }

  private static Room engine(String name) {
    return room(name, "proof", "system", "solver", "verdict");
  }

  private static Room format(String name) {
    return room(name, "report", "railway", "audit", "verdict", "spec", "encode.names");
  }

  private static String[] packagesOf(List<Room> rooms) {
    return rooms.stream()
        .flatMap(room -> room.packages().stream())
        .map(name -> ROOT + "." + name)
        .toArray(String[]::new);
  }

  /** A room: one package or several that count as one, and the names of the rooms it may import. */
  private record Room(String name, List<String> packages, List<String> mayImport) {

    /** The same room with packages inside it that belong to it. */
    Room with(String... inner) {
      Stream<String> inside = Arrays.stream(inner).map(sub -> name + "." + sub);
      return new Room(name, Stream.concat(packages.stream(), inside).toList(), mayImport);
    }

    /** The same room that may import these too. */
    Room and(List<String> more) {
      return new Room(name, packages, Stream.concat(mayImport.stream(), more.stream()).toList());
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** A library, by its root package, and the rooms that may use it. */
  private record Kept(String library, List<String> rooms) {

    @Override
    public String toString() {
      return library;
    }
  }
}
