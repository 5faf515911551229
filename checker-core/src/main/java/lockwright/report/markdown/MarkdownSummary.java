package lockwright.report.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lockwright.report.Shown;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.result.Movements;

/**
 * The outcome of a check in Markdown, for a pull request: what fails first, the cautions in full.
 */
public final class MarkdownSummary {
  /** Instances of which the sequences are written out; the others are named. */
  private static final int IN_FULL = 20;

  private final CheckedBox box;
  private final List<String> lines = new ArrayList<>();

  private MarkdownSummary(CheckedBox box) {
    this.box = box;
  }

  /**
   * The summary. The same result gives the same characters.
   *
   * @param result the bytes of {@code result.json}
   * @throws IllegalArgumentException if it does not hang together
   */
  public static String of(byte[] result) {
    MarkdownSummary summary = new MarkdownSummary(CheckedBox.read(result));
    summary.write();
    return String.join("\n", summary.lines) + "\n";
  }

  private void write() {
    boolean known = box.requirements().stream().anyMatch(i -> i.expected().isPresent());
    String outcome =
        box.passes()
            ? known ? "passes, with failures that are expected or waived" : "passes"
            : "does not pass";
    lines.add("## " + escaped(box.name()) + ": " + outcome);
    lines.add("");
    lines.add("Of " + box.requirements().size() + " requirements: " + box.counted() + ".");
    failing();
    known();
    exempted();
    advice();
    lines.add("");
    lines.add("### Cautions");
    lines.add("");
    box.cautions().forEach(c -> lines.add("- " + escaped(c)));
    lines.add("");
    lines.add("### What was checked");
    lines.add("");
    lines.add("| file | SHA-256 |");
    lines.add("| --- | --- |");
    box.digests()
        .forEach((file, digest) -> lines.add("| " + escaped(file) + " | " + digest + " |"));
    lines.add("");
    lines.add("Lockwright " + escaped(box.version()));
  }

  private void failing() {
    List<Instance> failing = those(Instance::fails);
    if (failing.isEmpty() && box.somethingProved()) {
      return;
    }
    lines.add("");
    lines.add("### What fails");
    if (!box.somethingProved()) {
      lines.add("");
      lines.add("No requirement of safety is proved, and nothing proves nothing.");
    }
    for (int i = 0; i < failing.size(); i++) {
      if (i < IN_FULL) {
        inFull(failing.get(i));
      } else {
        lines.add((i == IN_FULL ? "\n" : "") + "- " + escaped(failing.get(i).found()));
      }
    }
  }

  private void inFull(Instance instance) {
    lines.add("");
    lines.add("**" + escaped(instance.found()) + "**");
    Instance.Thing thing = instance.things().get(0);
    lines.add("");
    lines.add("at " + escaped(thing.file() + ":" + thing.line() + ":" + thing.column()));
    instance
        .beginning()
        .ifPresent(
            b -> {
              lines.add("");
              lines.add("beginning: " + escaped(b));
              lines.add("");
            });
    int number = 0;
    for (Movements.Line line : instance.movements()) {
      String moved = line.moved().isEmpty() ? "" : ": " + line.moved();
      lines.add(++number + ". " + escaped(line.done() + moved));
    }
    instance
        .perhapsMissing()
        .ifPresent(
            m -> {
              lines.add("");
              lines.add("Perhaps missing, a draft for a competent person: " + escaped(m));
            });
  }

  private void known() {
    List<Instance> known = those(i -> i.expected().isPresent() && !i.fails());
    if (known.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("### Not proved, but expected or waived");
    lines.add("");
    for (Instance instance : known) {
      String words = instance.expected().orElseThrow().words();
      lines.add("- " + escaped(instance.id() + ": " + instance.verdict() + "; " + words));
    }
  }

  private void exempted() {
    if (box.exempted().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("### Exempted by name, and not checked");
    lines.add("");
    box.exempted().forEach(e -> lines.add("- " + escaped(e.id() + "; " + e.reason())));
  }

  private void advice() {
    List<String> open = box.adviceNotKept();
    if (!open.isEmpty()) {
      lines.add("");
      lines.add("### Advice, which fails nothing");
      lines.add("");
      open.forEach(a -> lines.add("- " + escaped(a)));
    }
  }

  private List<Instance> those(Predicate<Instance> that) {
    return box.requirements().stream().filter(that).toList();
  }

  /**
   * Words that stay words in CommonMark and on a code host: each sign that may mark something up is
   * escaped, and a mention or a reference to an issue is parted by an empty comment.
   */
  static String escaped(String words) {
    StringBuilder escaped = new StringBuilder();
    for (char c : Shown.line(words).toCharArray()) {
      if ("\\`*_[]<>#|~&:@$!.".indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c);
      if (c == '@' || c == '#') {
        escaped.append("<!-- -->");
      }
    }
    return escaped.toString();
  }
}
