package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import lockwright.spec.form.Form;

/**
 * A file of a spec, spoilt at one place in each of many ways; some of them are still well formed.
 */
record FormMutants(String what, Node root) {

  /**
   * Each place is left out, misspelt, given another word, emptied, or made another kind of thing.
   */
  static List<FormMutants> of(Form form, Node node) {
    List<FormMutants> mutants = new ArrayList<>();
    if (form instanceof Form.Shared shared) {
      return of(shared.form(), node);
    } else if (form instanceof Form.OneOf either) {
      return either.forms().stream()
          .filter(one -> fits(one, node))
          .findFirst()
          .map(one -> of(one, node))
          .orElse(List.of());
    } else if (form instanceof Form.Mapping fixed && node instanceof Node.Mapping mapping) {
      for (Node.Field field : mapping.fields()) {
        String key = field.key().text();
        mutants.add(new FormMutants("without " + key, changed(mapping, field, f -> Stream.of())));
        Node.Field misspelt = new Node.Field(written(field.key(), key + "x"), field.value());
        mutants.add(new FormMutants(key + "x", changed(mapping, field, f -> Stream.of(misspelt))));
        under(fixed.key(key).form(), mapping, field, mutants);
      }
    } else if (form instanceof Form.Named named && node instanceof Node.Mapping mapping) {
      mutants.add(new FormMutants("no names", new Node.Mapping(node.at(), List.of())));
      mapping.fields().forEach(field -> under(named.each(), mapping, field, mutants));
    } else if (form instanceof Form.Items items && node instanceof Node.Sequence list) {
      mutants.add(new FormMutants("empty list", new Node.Sequence(node.at(), List.of())));
      List<Node> twice = new ArrayList<>(list.items());
      twice.addAll(list.items());
      mutants.add(new FormMutants("all twice", new Node.Sequence(node.at(), twice)));
      for (int i = 0; i < list.items().size(); i++) {
        int at = i;
        of(items.item(), list.items().get(i))
            .forEach(
                mutant -> {
                  List<Node> changed = new ArrayList<>(list.items());
                  changed.set(at, mutant.root());
                  mutants.add(
                      new FormMutants(
                          at + ": " + mutant.what(), new Node.Sequence(node.at(), changed)));
                });
      }
    } else if (form instanceof Form.Word && node instanceof Node.Scalar scalar) {
      String word = scalar.written().text();
      mutants.add(new FormMutants(word + "x", scalar(scalar, word + "x")));
    }
    if (node instanceof Node.Scalar scalar) {
      mutants.add(new FormMutants("nothing written", scalar(scalar, "")));
      mutants.add(new FormMutants("a mapping", new Node.Mapping(node.at(), List.of())));
    } else {
      mutants.add(
          new FormMutants("a blank text", new Node.Scalar(new Written(" ", node.at(), false))));
    }
    return mutants;
  }

  private static void under(
      Form form, Node.Mapping mapping, Node.Field field, List<FormMutants> mutants) {
    for (FormMutants mutant : of(form, field.value())) {
      Node.Field changed = new Node.Field(field.key(), mutant.root());
      mutants.add(
          new FormMutants(
              field.key().text() + ": " + mutant.what(),
              changed(mapping, field, f -> Stream.of(changed))));
    }
  }

  private static Node changed(
      Node.Mapping mapping, Node.Field place, Function<Node.Field, Stream<Node.Field>> change) {
    return new Node.Mapping(
        mapping.at(),
        mapping.fields().stream()
            .flatMap(field -> field == place ? change.apply(field) : Stream.of(field))
            .toList());
  }

  private static boolean fits(Form form, Node node) {
    if (form instanceof Form.Shared shared) {
      return fits(shared.form(), node);
    } else if (form instanceof Form.OneOf either) {
      return either.forms().stream().anyMatch(one -> fits(one, node));
    } else if (form instanceof Form.Mapping fixed) {
      return node instanceof Node.Mapping mapping
          && mapping.fields().stream().allMatch(f -> fixed.names().contains(f.key().text()))
          && fixed.keys().stream()
              .filter(Form.Key::needed)
              .allMatch(k -> mapping.fields().stream().anyMatch(f -> is(f, k.name())));
    }
    if (form instanceof Form.Named) {
      return node instanceof Node.Mapping;
    }
    return form instanceof Form.Items
        ? node instanceof Node.Sequence
        : node instanceof Node.Scalar scalar
            && (!(form instanceof Form.Word word)
                || word.words().contains(scalar.written().text()));
  }

  private static boolean is(Node.Field field, String key) {
    return field.key().text().equals(key);
  }

  private static Node scalar(Node.Scalar place, String text) {
    return new Node.Scalar(written(place.written(), text));
  }

  private static Written written(Written place, String text) {
    return new Written(text, place.at(), false);
  }
}
