package lockwright.spec.form;

import java.util.List;
import java.util.stream.Stream;

/** What may stand at one place of a file of a spec. */
public sealed interface Form {

  /** Keys that are fixed, in the order in which messages list them, and rules between them. */
  record Mapping(List<Key> keys, List<Rule> rules) implements Form {
    public Mapping {
      keys = List.copyOf(keys);
      rules = List.copyOf(rules);
      if (keys.stream().map(Key::name).distinct().count() != keys.size()) {
        throw new IllegalArgumentException("a key stands twice among " + keys);
      }
    }

    public Mapping(Key... keys) {
      this(List.of(keys), List.of());
    }

    public Mapping with(Rule... more) {
      return new Mapping(keys, Stream.concat(rules.stream(), Stream.of(more)).toList());
    }

    public List<String> names() {
      return keys.stream().map(Key::name).toList();
    }

    /** Fails for a key that is none of these. */
    public Key key(String name) {
      return keys.stream()
          .filter(key -> key.name().equals(name))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no key '" + name + "' in " + names()));
    }
  }

  /** A key of a mapping, what stands under it, and what it means; perhaps nothing is said. */
  record Key(String name, boolean needed, Form form, String means) {
    public static Key need(String name, Form form, String means) {
      return new Key(name, true, form, means);
    }

    public static Key need(String name, Form form) {
      return need(name, form, "");
    }

    public static Key may(String name, Form form, String means) {
      return new Key(name, false, form, means);
    }

    public static Key may(String name, Form form) {
      return may(name, form, "");
    }

    /** The words, one of which stands under the key; fails where other things stand there. */
    public List<String> words() {
      if ((form instanceof Shared shared ? shared.form() : form) instanceof Word word) {
        return word.words();
      }
      throw new IllegalArgumentException("no word stands under '" + name + "'");
    }
  }

  /** What holds between the keys of one mapping. */
  sealed interface Rule {
    /** Just one of some keys is there. */
    record JustOne(List<String> keys) implements Rule {}

    /** At least one of some keys is there. */
    record AtLeastOne(List<String> keys) implements Rule {}

    /** Where a word stands under a key, another key is there. */
    record Asks(String key, String word, String other) implements Rule {}
  }

  /** Keys that the author chooses, each with the like under it; a most of 0 is no limit. */
  record Named(Form name, Form each, int least, int most) implements Form {
    public Named(Form name, Form each) {
      this(name, each, 0, 0);
    }
  }

  /** A list; a most of 0 is no limit. */
  record Items(Form item, int least, int most, boolean different) implements Form {}

  /**
   * One text. A reader of YAML that is not ours may take it for a whole number, for any number, or
   * for yes or no; numbers lie from least to most, where most is over 0.
   *
   * @param pattern of all of it, as in JSON Schema: without anchors, any part may match
   * @param never a pattern that it may not have, or empty
   * @param longest in characters; 0 is no limit
   */
  record Text(String pattern, String never, int longest, Taken taken, double least, double most)
      implements Form {

    /** A text that nobody takes for a number. */
    public static Text of(String pattern) {
      return new Text(pattern, "", 0, Taken.TEXT, 0, 0);
    }

    public Text taken(Taken as) {
      return new Text(pattern, never, longest, as, least, most);
    }

    public Text taken(Taken as, double from, double to) {
      return new Text(pattern, never, longest, as, from, to);
    }

    public Text longest(int characters) {
      return new Text(pattern, never, characters, taken, least, most);
    }

    public Text never(String other) {
      return new Text(pattern, other, longest, taken, least, most);
    }
  }

  /** What a text may be taken for by other readers of YAML. */
  enum Taken {
    TEXT,
    WHOLE_NUMBER,
    NUMBER,
    ANYTHING
  }

  /** One of some words, exactly as written. */
  record Word(List<String> words) implements Form {
    public Word {
      words = List.copyOf(words);
    }

    public Word(String... words) {
      this(List.of(words));
    }
  }

  /** Just one of several forms. */
  record OneOf(List<Form> forms) implements Form {
    public OneOf {
      forms = List.copyOf(forms);
    }
  }

  /** A form that is named, as it stands at several places of a file. */
  record Shared(String name, Form form, String means) implements Form {
    public Shared(String name, Form form) {
      this(name, form, "");
    }
  }

  /** One, or a list of at least so many that differ. */
  static Form oneOrList(Form item, int least) {
    return new OneOf(List.of(item, new Items(item, least, 0, true)));
  }
}
