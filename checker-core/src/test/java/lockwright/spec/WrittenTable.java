package lockwright.spec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The entries of a written locking table, each as one line of text, read without any reader of
 * ours: the CSV by the grammar of RFC 4180, section 2 (with semicolons, and line feeds alone too),
 * the YAML by Jackson.
 */
final class WrittenTable {
  private static final Pattern FIELD =
      Pattern.compile("\\G(?:\"((?:[^\"]|\"\")*)\"|([^\";\r\n]*))(;|\r?\n)");

  /** As YAML 1.2 has it, whose core schema knows no other truths than true and false. */
  static final YAMLMapper YAML =
      YAMLMapper.builder().enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS).build();

  private static final List<String> LOCKS =
      List.of(
          "released by",
          "locks",
          "locks both ways",
          "while normal locks both ways",
          "starts only with normal",
          "not again before",
          "releases",
          "locked by");

  private WrittenTable() {}

  static List<String> csv(String text) {
    List<List<String>> records = new ArrayList<>(List.of(new ArrayList<>()));
    Matcher field = FIELD.matcher(text);
    int end = 0;
    while (end < text.length() && field.find(end)) {
      end = field.end();
      String quoted = field.group(1);
      records
          .get(records.size() - 1)
          .add(quoted == null ? field.group(2) : quoted.replace("\"\"", "\""));
      if (!field.group(3).equals(";")) {
        records.add(new ArrayList<>());
      }
    }
    if (end < text.length() || !records.remove(records.size() - 1).isEmpty()) {
      throw new AssertionError("no CSV from character " + end);
    }
    List<String> entries = new ArrayList<>();
    for (List<String> record : records.subList(1, records.size())) {
      if (record.size() != records.get(0).size()) {
        throw new AssertionError("not as many fields as headings: " + record);
      }
      Map<String, List<String>> row = new LinkedHashMap<>();
      for (int i = 0; i < record.size(); i++) {
        row.put(
            records.get(0).get(i), record.get(i).isEmpty() ? List.of() : List.of(record.get(i)));
      }
      entries.addAll(entries(row));
    }
    return entries;
  }

  static List<String> yaml(String text) throws IOException {
    List<String> entries = new ArrayList<>();
    for (JsonNode read : YAML.readTree(text).required("locking")) {
      Map<String, List<String>> row = new LinkedHashMap<>();
      for (Map.Entry<String, JsonNode> cell : read.properties()) {
        List<String> texts = new ArrayList<>();
        if (cell.getValue().isArray()) {
          cell.getValue().forEach(item -> texts.add(item.asText()));
        } else {
          texts.add(cell.getValue().asText());
        }
        row.put(cell.getKey(), texts);
      }
      entries.addAll(entries(row));
    }
    return entries;
  }

  private static List<String> entries(Map<String, List<String>> row) {
    List<String> entries = new ArrayList<>();
    for (String column : LOCKS) {
      for (String cell : row.getOrDefault(column, List.of())) {
        Arrays.stream(cell.split(","))
            .map(lock -> entry(row, column, lock.strip()))
            .forEach(entries::add);
      }
    }
    return entries;
  }

  private static String entry(Map<String, List<String>> row, String column, String lock) {
    return String.join(
        "|",
        one(row, "lever"),
        column,
        lock,
        one(row, "when"),
        one(row, "holds").equals("yes") ? "holds" : "",
        one(row, "note"));
  }

  private static String one(Map<String, List<String>> row, String column) {
    return String.join("", row.getOrDefault(column, List.of()));
  }
}
