package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.railway.requirement.Expectation;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.WaiversFile;

/** Makes the expectations; `docs/meaning.md` 7. */
final class WaiversBuilder {
  private final Map<String, Requirement> requirements = new LinkedHashMap<>();
  private final List<String> advice;
  private final Problems problems;

  private WaiversBuilder(Box box, Problems problems) {
    box.requirements().forEach(r -> requirements.put(r.id(), r));
    box.exempted().forEach(e -> requirements.put(e.requirement().id(), e.requirement()));
    advice = box.advice().stream().map(Requirement::id).toList();
    this.problems = problems;
  }

  /** Those expected, then those waived; only worth having if no problem was told. */
  static List<Expectation> build(WaiversFile file, Box box, Problems problems) {
    WaiversBuilder builder = new WaiversBuilder(box, problems);
    List<WaiversFile.Item> items = new ArrayList<>(file.expected());
    items.addAll(file.waived());
    items.forEach(builder::check);
    return problems.isEmpty()
        ? items.stream().map(WaiversBuilder::expectation).toList()
        : List.of();
  }

  private void check(WaiversFile.Item item) {
    Requirement requirement = requirements.get(item.id().text());
    if (advice.contains(item.id().text())) {
      problems.add(
          Message.EXPECTED_OF_ADVICE,
          item.id().at(),
          item.id().quoted() + " is advice, which fails nothing",
          "take the entry away; or, if this box must keep it, write it under 'asked' too");
      return;
    }
    if (requirement == null) {
      unknown(item, requirements.keySet(), problems);
      return;
    }
    if (item.verdict().isPresent() && !verdict(item).fits(requirement)) {
      problems.add(
          Message.WAIVER_VERDICT,
          item.verdict().get().at(),
          item.id().quoted() + " is never " + item.verdict().get().text(),
          "write " + possible(requirement));
    }
  }

  static void unknown(WaiversFile.Item item, Set<String> known, Problems problems) {
    problems.add(
        Message.WAIVER_UNKNOWN_INSTANCE,
        item.id().at(),
        "the box has no requirement " + item.id().quoted(),
        Problems.didYouMean(
            item.id().text(),
            known,
            "write a name just as check.txt has it after the verdict, or take the entry away"));
  }

  /** "broken, empty or undecided". */
  private static String possible(Requirement requirement) {
    List<String> all =
        Stream.of(Expectation.Verdict.values())
            .filter(v -> v.fits(requirement))
            .map(Expectation.Verdict::toString)
            .toList();
    return String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.get(all.size() - 1);
  }

  private static Expectation.Verdict verdict(WaiversFile.Item item) {
    return Expectation.Verdict.valueOf(
        item.verdict().orElseThrow().text().toUpperCase(Locale.ROOT));
  }

  private static Expectation expectation(WaiversFile.Item item) {
    return new Expectation(
        item.id().text(),
        verdict(item),
        item.reason().orElseThrow().text(),
        item.role().map(r -> new Expectation.Waiver(r.text(), item.until().orElseThrow())),
        item.id().at());
  }
}
