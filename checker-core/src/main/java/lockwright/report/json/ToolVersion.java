package lockwright.report.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this tool, as Maven packed it. */
final class ToolVersion {
  /** "not packed" for classes that were never packed into a jar. */
  static final String OF_THIS_BUILD = read();

  private ToolVersion() {}

  private static String read() {
    String packed = "/META-INF/maven/lockwright/lockwright-core/pom.properties";
    try (InputStream in = ToolVersion.class.getResourceAsStream(packed)) {
      Properties properties = new Properties();
      if (in != null) {
        properties.load(in);
      }
      return properties.getProperty("version", "not packed");
    } catch (IOException e) {
      throw new UncheckedIOException("the version of this build cannot be read", e);
    }
  }
}
