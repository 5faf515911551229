package lockwright.spec;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lockwright.spec.form.SectionsForm;

/** Reads the form of `sections.yaml`; `docs/spec.md`. */
final class SectionsReader {
  private static final Pattern COUNT = Pattern.compile("[1-9][0-9]{0,2}");

  private final Problems problems;
  private final Shape shape;

  private SectionsReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<SectionsFile> read(Node root, Problems problems) {
    SectionsReader reader = new SectionsReader(problems);
    return reader
        .shape
        .fields(root, "the sections", SectionsForm.SECTIONS)
        .flatMap(fields -> fields.need("sections").map(node -> reader.sections(fields)));
  }

  private SectionsFile sections(Fields fields) {
    SectionsFile file = new SectionsFile(fields.each("sections", this::section));
    names("a section", file.sections().stream().map(SectionsFile.Section::name).toList());
    file.sections().forEach(s -> names("an instrument", s.instruments()));
    return file;
  }

  private Optional<SectionsFile.Section> section(Node.Field field) {
    return shape
        .fields(field.value(), "section " + field.key().quoted(), SectionsForm.SECTION)
        .map(
            f ->
                new SectionsFile.Section(
                    field.key(),
                    f.needText("track"),
                    f.needWord("working"),
                    f.needText("tokens").flatMap(this::tokens),
                    f.needTexts("instruments"),
                    f.texts("unattended"),
                    f.each("consent", this::consent),
                    f.yes("plunge while withdrawing", true),
                    f.word("phase reverses"),
                    f.word("irregular withdrawal"),
                    f.get("release").flatMap(node -> release(node, field.key())),
                    f.texts("within"),
                    f.each("ground frames", this::lock)));
  }

  private Optional<Integer> tokens(Written count) {
    if (COUNT.matcher(count.text()).matches()
        && Integer.parseInt(count.text()) <= SectionsForm.MOST_TOKENS) {
      return Optional.of(Integer.parseInt(count.text()));
    }
    problems.add(
        Message.SECTION_TOKENS,
        count.at(),
        count.quoted() + " is no number of tokens",
        "write a whole number from 1 to the limit of "
            + SectionsForm.MOST_TOKENS
            + ", in digits alone");
    return Optional.empty();
  }

  private Optional<SectionsFile.Consent> consent(Node.Field field) {
    String thing = "the consent that " + field.key().quoted() + " needs";
    return Optional.of(new SectionsFile.Consent(field.key(), shape.texts(field.value(), thing)));
  }

  private Optional<SectionsFile.Release> release(Node node, Written section) {
    return shape
        .fields(node, "the release of section " + section.quoted(), SectionsForm.RELEASE)
        .map(
            f ->
                new SectionsFile.Release(f.needTexts("levers"), f.word("lasts"), f.word("begins")));
  }

  private Optional<SectionsFile.Lock> lock(Node.Field field) {
    return shape
        .fields(
            field.value(),
            "ground frame " + field.key().quoted() + " of a section",
            SectionsForm.LOCK)
        .map(f -> new SectionsFile.Lock(field.key(), f.needYes("held while open")));
  }

  private void names(String kind, List<Written> names) {
    Names.check(kind, names, Message.SECTION_NAME, Message.SECTION_NAMES_ALIKE, problems);
  }
}
