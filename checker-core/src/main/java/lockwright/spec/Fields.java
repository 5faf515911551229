package lockwright.spec;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lockwright.spec.form.Form;

/** The fields of one mapping of a known form, asked for by key. */
final class Fields {
  private final Shape shape;
  private final Node.Mapping mapping;
  private final String thing;
  private final Form.Mapping form;

  Fields(Shape shape, Node.Mapping mapping, String thing, Form.Mapping form) {
    this.shape = shape;
    this.mapping = mapping;
    this.thing = thing;
    this.form = form;
  }

  /** Whether the form has the key, be it written or not. */
  boolean mayHave(String key) {
    return form.names().contains(key);
  }

  /** Fails for a key that the form has not. */
  Optional<Node> get(String key) {
    form.key(key);
    return mapping.fields().stream()
        .filter(f -> f.key().text().equals(key))
        .map(Node.Field::value)
        .findFirst();
  }

  /** The same, and its absence is told. */
  Optional<Node> need(String key) {
    Optional<Node> value = get(key);
    if (value.isEmpty()) {
      shape
          .problems()
          .add(
              Message.KEY_MISSING,
              mapping.at(),
              thing + " lacks the key '" + key + "'",
              "add '" + key + ":' and its value");
    }
    return value;
  }

  Optional<Written> text(String key) {
    return get(key).flatMap(node -> shape.text(node, name(key)));
  }

  Optional<Written> needText(String key) {
    return need(key).flatMap(node -> shape.text(node, name(key)));
  }

  /** The label, or nothing where none is written. */
  String label() {
    return text("label").map(Written::text).orElse("");
  }

  /** A list of texts or one text; empty where the key is absent. */
  List<Written> texts(String key) {
    return get(key).map(node -> shape.texts(node, name(key))).orElse(List.of());
  }

  /** The same, where the key must be there and name at least one. */
  List<Written> needTexts(String key) {
    Optional<Node> value = need(key);
    if (value.isPresent() && value.get() instanceof Node.Sequence list && list.items().isEmpty()) {
      shape
          .problems()
          .add(
              Message.NOTHING_WRITTEN,
              list.at(),
              "nothing is written for " + name(key),
              "name at least one between the brackets");
    }
    return value.map(node -> shape.texts(node, name(key))).orElse(List.of());
  }

  /** One of the words that the form has under the key. */
  Optional<Written> word(String key) {
    return get(key).flatMap(node -> shape.word(node, name(key), form.key(key).words()));
  }

  Optional<Written> needWord(String key) {
    return need(key).flatMap(node -> shape.word(node, name(key), form.key(key).words()));
  }

  boolean yes(String key, boolean otherwise) {
    return get(key).map(node -> shape.yes(node, name(key))).orElse(otherwise);
  }

  boolean needYes(String key) {
    return need(key).map(node -> shape.yes(node, name(key))).orElse(false);
  }

  /** The fields of a mapping named by the author, each made into something. */
  <T> List<T> each(String key, Function<Node.Field, Optional<T>> make) {
    return get(key).map(node -> shape.named(node, name(key))).orElse(List.of()).stream()
        .map(make)
        .flatMap(Optional::stream)
        .toList();
  }

  /** The items of a list, each made into something. */
  <T> List<T> eachOf(String key, Function<Node, Optional<T>> make) {
    return get(key).map(node -> shape.list(node, name(key))).orElse(List.of()).stream()
        .map(make)
        .flatMap(Optional::stream)
        .toList();
  }

  private String name(String key) {
    return "'" + key + "' of " + thing;
  }
}
