package lockwright.spec;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.spec.form.Form;
import lockwright.spec.form.WaiversForm;

/** Reads the form of `waivers.yaml`; `docs/spec.md`. */
final class WaiversReader {
  private static final String EXPECTED = "expected";
  private static final String WAIVED = "waived";
  private static final String EXEMPTED = "exempted";
  private static final String ASKED = "asked";

  private final Problems problems;
  private final Shape shape;

  private WaiversReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<WaiversFile> read(Node root, Problems problems) {
    WaiversReader reader = new WaiversReader(problems);
    return reader.shape.fields(root, "the waivers", WaiversForm.WAIVERS).map(reader::waivers);
  }

  private WaiversFile waivers(Fields fields) {
    WaiversFile file =
        new WaiversFile(
            fields.each(EXPECTED, this::expected),
            fields.each(WAIVED, this::waived),
            fields.each(EXEMPTED, f -> reason(f, "the exemption of ", WaiversForm.EXEMPTED)),
            fields.each(ASKED, f -> reason(f, "what is asked of ", WaiversForm.ASKED)));
    Set<String> expected =
        file.expected().stream().map(e -> e.id().text()).collect(Collectors.toSet());
    for (WaiversFile.Item item : file.waived()) {
      if (expected.contains(item.id().text())) {
        problems.add(
            Message.EXPECTED_AND_WAIVED,
            item.id().at(),
            item.id().quoted() + " is expected, and waived as well",
            "keep one of the two: expected, if it is right so; waived, if it is to be mended");
      }
    }
    Set<String> exempted =
        file.exempted().stream().map(e -> e.id().text()).collect(Collectors.toSet());
    Stream.concat(file.expected().stream(), file.waived().stream())
        .filter(i -> exempted.contains(i.id().text()))
        .forEach(
            i ->
                problems.add(
                    Message.EXEMPTED_AND_EXPECTED,
                    i.id().at(),
                    i.id().quoted() + " is exempted, so nothing is found of it",
                    "keep one of the two: exempted, if it is not asked for; expected or waived, if"
                        + " it is"));
    return file;
  }

  private Optional<WaiversFile.Item> reason(Node.Field field, String thing, Form.Mapping form) {
    return shape
        .fields(field.value(), thing + field.key().quoted(), form)
        .map(
            f ->
                new WaiversFile.Item(
                    field.key(),
                    Optional.empty(),
                    f.needText("reason"),
                    Optional.empty(),
                    Optional.empty()));
  }

  private Optional<WaiversFile.Item> expected(Node.Field field) {
    String thing = "what is expected of " + field.key().quoted();
    return shape
        .fields(field.value(), thing, WaiversForm.EXPECTED)
        .map(
            f ->
                new WaiversFile.Item(
                    field.key(),
                    f.needWord("verdict"),
                    f.needText("reason"),
                    Optional.empty(),
                    Optional.empty()));
  }

  private Optional<WaiversFile.Item> waived(Node.Field field) {
    String thing = "the waiver of " + field.key().quoted();
    return shape
        .fields(field.value(), thing, WaiversForm.WAIVED)
        .map(
            f ->
                new WaiversFile.Item(
                    field.key(),
                    f.needWord("verdict"),
                    f.needText("reason"),
                    f.needText("role"),
                    f.needText("until").flatMap(this::date)));
  }

  private Optional<LocalDate> date(Written written) {
    Optional<LocalDate> date = Dates.read(written.text());
    if (date.isEmpty()) {
      problems.add(
          Message.WAIVER_DATE,
          written.at(),
          written.quoted() + " is no date",
          "write the last day of the waiver as year, month and day: 2031-04-30");
    }
    return date;
  }
}
