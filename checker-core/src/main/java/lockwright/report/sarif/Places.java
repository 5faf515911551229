package lockwright.report.sarif;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import lockwright.report.result.Instance;
import lockwright.report.result.RelativeUri;

/**
 * Places in the files of the spec.
 *
 * @param folder that of the spec, from the base
 * @param base what the standard calls the id of the base
 */
record Places(String folder, String base) {
  ObjectNode artifact(String file) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("uri", RelativeUri.of(folder + file))
        .put("uriBaseId", base);
  }

  ObjectNode location(Instance.Thing thing) {
    ObjectNode location = JsonNodeFactory.instance.objectNode();
    ObjectNode physical = location.putObject("physicalLocation");
    physical.set("artifactLocation", artifact(thing.file()));
    physical.putObject("region").put("startLine", thing.line()).put("startColumn", thing.column());
    return location;
  }

  /** SHA-256 of a text in UTF-8. */
  static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
