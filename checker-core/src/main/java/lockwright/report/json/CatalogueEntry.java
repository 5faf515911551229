package lockwright.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A requirement of the catalogue, {@code specs/requirements.yaml}, and its verdicts on this box.
 */
record CatalogueEntry(
    String name, String kind, String words, String appliesTo, List<Source> sources, Counts counts) {
  private static final String FILE = "/lockwright/specs/requirements.yaml";

  /**
   * @param known "read", "from memory" or "common practice, no source"
   */
  record Source(String source, String known) {}

  /** The whole catalogue, in its order. */
  static List<CatalogueEntry> all(List<Instance> instances) {
    List<CatalogueEntry> all = new ArrayList<>();
    for (JsonNode entry : read().required("requirements")) {
      String name = entry.required("name").textValue();
      List<Source> sources = new ArrayList<>();
      for (JsonNode s : entry.required("sources")) {
        sources.add(new Source(s.required("source").textValue(), s.required("known").textValue()));
      }
      all.add(
          new CatalogueEntry(
              name,
              entry.required("kind").textValue(),
              entry.required("words").textValue().strip(),
              entry.required("applies to").textValue(),
              sources,
              Counts.of(instances.stream().filter(i -> i.name().equals(name)).toList())));
    }
    return all;
  }

  private static JsonNode read() {
    try (InputStream in = CatalogueEntry.class.getResourceAsStream(FILE)) {
      return new YAMLMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the catalogue of this build cannot be read", e);
    }
  }
}
