package lockwright.spec;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lockwright.spec.form.Form;

/** Takes a located tree apart, and tells where it has not the form that a file must have. */
final class Shape {
  private final Problems problems;

  Shape(Problems problems) {
    this.problems = problems;
  }

  /** A mapping whose keys are fixed; unknown ones are told. Empty if it is no mapping. */
  Optional<Fields> fields(Node node, String thing, Form.Mapping form) {
    List<String> keys = form.names();
    if (!(node instanceof Node.Mapping mapping)) {
      wrongKind(
          node, thing, "the keys " + String.join(", ", keys), "each with a colon and a value");
      return Optional.empty();
    }
    for (Node.Field field : mapping.fields()) {
      if (!keys.contains(field.key().text())) {
        problems.add(
            Message.UNKNOWN_KEY,
            field.key().at(),
            field.key().quoted() + " is not a key of " + thing,
            Problems.didYouMean(
                field.key().text(), keys, "use only these keys: " + String.join(", ", keys)));
      }
    }
    return Optional.of(new Fields(this, mapping, thing, form));
  }

  /** A mapping whose keys are names given by the author. */
  List<Node.Field> named(Node node, String thing) {
    if (node instanceof Node.Mapping mapping) {
      return mapping.fields();
    }
    wrongKind(node, thing, "names", "each with a colon and what it is");
    return List.of();
  }

  /** A list. */
  List<Node> list(Node node, String thing) {
    if (node instanceof Node.Sequence sequence) {
      return sequence.items();
    }
    wrongKind(node, thing, "a list", "in square brackets, or a line with a dash for each");
    return List.of();
  }

  /** A text that is not empty. */
  Optional<Written> text(Node node, String thing) {
    if (!(node instanceof Node.Scalar scalar)) {
      wrongKind(node, thing, "one text", "without brackets, braces or dashes");
      return Optional.empty();
    }
    if (scalar.written().text().isBlank()) {
      problems.add(
          Message.NOTHING_WRITTEN,
          node.at(),
          "nothing is written for " + thing,
          "write it, or take the line away if it is not needed");
      return Optional.empty();
    }
    return Optional.of(scalar.written());
  }

  /** A list of texts, or one text in place of a list of one. Twice the same is told. */
  List<Written> texts(Node node, String thing) {
    List<Written> texts = new ArrayList<>();
    if (node instanceof Node.Scalar) {
      text(node, thing).ifPresent(texts::add);
    } else {
      list(node, thing).forEach(item -> text(item, thing).ifPresent(texts::add));
    }
    Set<String> seen = new HashSet<>();
    for (Written text : texts) {
      if (!seen.add(text.text())) {
        problems.add(
            Message.NAMED_TWICE,
            text.at(),
            text.quoted() + " is named twice in " + thing,
            "take one away, or write the name that was meant");
      }
    }
    return List.copyOf(texts);
  }

  /** One of some words, exactly as written; case counts. */
  Optional<Written> word(Node node, String thing, List<String> words) {
    Optional<Written> text = text(node, thing);
    if (text.isPresent() && !words.contains(text.get().text())) {
      problems.add(
          Message.WRONG_WORD,
          text.get().at(),
          text.get().quoted() + " stands for " + thing,
          Problems.didYouMean(
              text.get().text(), words, "write one of: " + String.join(", ", words)));
      return Optional.empty();
    }
    return text;
  }

  /** Yes or no; no, if anything else is written and told. */
  boolean yes(Node node, String thing) {
    return word(node, thing, List.of("yes", "no")).filter(w -> w.text().equals("yes")).isPresent();
  }

  Problems problems() {
    return problems;
  }

  private void wrongKind(Node node, String thing, String wanted, String how) {
    boolean nothing = node instanceof Node.Scalar scalar && scalar.written().text().isBlank();
    problems.add(
        nothing ? Message.NOTHING_WRITTEN : Message.WRONG_KIND,
        node.at(),
        (nothing ? "nothing is written for " : "another kind of thing stands for ") + thing,
        "write " + wanted + " here, " + how);
  }
}
