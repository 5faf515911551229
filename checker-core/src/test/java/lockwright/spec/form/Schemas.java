package lockwright.spec.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the forms of the files of a spec as JSON Schemas (2020-12). */
public final class Schemas {
  /** Every YAML file of a spec that has a schema. */
  public static final List<FileForm> ALL =
      List.of(
          PlanForm.FILE,
          FrameForm.FILE,
          LockingForm.FILE,
          SectionsForm.FILE,
          ControlsForm.FILE,
          WaiversForm.FILE,
          DrawingForm.FILE,
          LessonsForm.FILE);

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final ObjectNode shared = JSON.objectNode();

  private Schemas() {}

  /** Writes all of them anew into a folder. */
  public static void write(Path folder) throws IOException {
    for (FileForm file : ALL) {
      Files.writeString(folder.resolve(file.name() + ".schema.json"), text(file));
    }
  }

  /** The schema of a file, as it is published. */
  public static String text(FileForm file) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"))
            .withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return new ObjectMapper().writer(printer).writeValueAsString(schema(file)) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ObjectNode schema(FileForm file) {
    Schemas schemas = new Schemas();
    ObjectNode schema = JSON.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:lockwright:" + file.name() + ":1");
    schema.put("title", file.name() + ".yaml, version 1");
    schema.put("description", file.means());
    schema.setAll(schemas.of(file.mapping()));
    schema.set("$defs", schemas.shared);
    return schema;
  }

  private ObjectNode of(Form form) {
    if (form instanceof Form.Mapping mapping) {
      return mapping(mapping);
    } else if (form instanceof Form.Named named) {
      return named(named);
    } else if (form instanceof Form.Items items) {
      return items(items);
    } else if (form instanceof Form.Text text) {
      return text(text);
    } else if (form instanceof Form.Word word) {
      return word(word);
    } else if (form instanceof Form.OneOf either) {
      ObjectNode schema = JSON.objectNode();
      ArrayNode forms = schema.putArray("oneOf");
      either.forms().forEach(one -> forms.add(of(one)));
      return schema;
    }
    return shared((Form.Shared) form);
  }

  private ObjectNode mapping(Form.Mapping mapping) {
    ObjectNode schema = JSON.objectNode();
    schema.put("type", "object").put("additionalProperties", false);
    List<String> needed =
        mapping.keys().stream().filter(Form.Key::needed).map(Form.Key::name).toList();
    if (!needed.isEmpty()) {
      required(schema, needed);
    }
    ObjectNode properties = schema.putObject("properties");
    for (Form.Key key : mapping.keys()) {
      properties.set(key.name(), meaning(of(key.form()), key.means()));
    }
    mapping.rules().forEach(rule -> schema.setAll(rule(rule, schema)));
    return schema;
  }

  private static ObjectNode rule(Form.Rule rule, ObjectNode before) {
    ObjectNode schema = JSON.objectNode();
    if (rule instanceof Form.Rule.JustOne one) {
      one.keys().forEach(key -> required(schema.withArray("oneOf").addObject(), List.of(key)));
    } else if (rule instanceof Form.Rule.AtLeastOne some) {
      some.keys().forEach(key -> required(schema.withArray("anyOf").addObject(), List.of(key)));
    } else {
      Form.Rule.Asks asks = (Form.Rule.Asks) rule;
      required(schema.putObject("if"), List.of(asks.key()))
          .putObject("properties")
          .putObject(asks.key())
          .put("const", asks.word());
      required(schema.putObject("then"), List.of(asks.other()));
    }
    schema
        .fieldNames()
        .forEachRemaining(
            key -> {
              if (before.has(key)) {
                throw new IllegalStateException("two rules of one kind for one mapping: " + rule);
              }
            });
    return schema;
  }

  private static ObjectNode required(ObjectNode schema, List<String> keys) {
    keys.forEach(schema.putArray("required")::add);
    return schema;
  }

  private ObjectNode named(Form.Named named) {
    ObjectNode schema = JSON.objectNode().put("type", "object");
    limit(schema, "minProperties", named.least());
    limit(schema, "maxProperties", named.most());
    schema.set("propertyNames", of(named.name()));
    schema.set("additionalProperties", of(named.each()));
    return schema;
  }

  private ObjectNode items(Form.Items items) {
    ObjectNode schema = JSON.objectNode().put("type", "array");
    limit(schema, "minItems", items.least());
    limit(schema, "maxItems", items.most());
    if (items.different()) {
      schema.put("uniqueItems", true);
    }
    schema.set("items", of(items.item()));
    return schema;
  }

  private static ObjectNode text(Form.Text text) {
    ObjectNode schema = JSON.objectNode();
    switch (text.taken()) {
      case TEXT -> schema.put("type", "string");
      case WHOLE_NUMBER -> schema.putArray("type").add("string").add("integer");
      case NUMBER -> schema.putArray("type").add("string").add("number");
      case ANYTHING -> schema.putArray("type").add("string").add("number").add("boolean");
    }
    if (!text.pattern().isEmpty()) {
      schema.put("pattern", text.pattern());
    }
    limit(schema, "maxLength", text.longest());
    if (text.most() > 0) {
      number(schema, "minimum", text.least());
      number(schema, "maximum", text.most());
    }
    if (!text.never().isEmpty()) {
      schema.putObject("not").put("type", "string").put("pattern", text.never());
    }
    return schema;
  }

  private static ObjectNode word(Form.Word word) {
    ObjectNode schema = JSON.objectNode();
    ArrayNode words = schema.putArray("enum");
    for (String text : word.words()) {
      words.add(text);
      if (text.matches("[0-9]{1,9}")) {
        words.add(Integer.parseInt(text));
      }
    }
    return schema;
  }

  private ObjectNode shared(Form.Shared form) {
    ObjectNode written = meaning(of(form.form()), form.means());
    if (shared.has(form.name()) && !shared.get(form.name()).equals(written)) {
      throw new IllegalStateException("two forms are shared as " + form.name());
    }
    shared.set(form.name(), written);
    return JSON.objectNode().put("$ref", "#/$defs/" + form.name());
  }

  private static ObjectNode meaning(ObjectNode schema, String means) {
    return means.isEmpty() ? schema : schema.put("description", means);
  }

  private static void limit(ObjectNode schema, String key, int limit) {
    if (limit > 0) {
      schema.put(key, limit);
    }
  }

  private static void number(ObjectNode schema, String key, double value) {
    if (value == Math.rint(value)) {
      schema.put(key, (long) value);
    } else {
      schema.put(key, value);
    }
  }
}
