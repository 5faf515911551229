package lockwright.maven;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.apache.maven.plugin.logging.SystemStreamLog;

/** Keeps what a goal says, each line with its level. */
final class RecordingLog extends SystemStreamLog {
  final List<String> lines = new CopyOnWriteArrayList<>();

  @Override
  public void info(CharSequence content) {
    lines.add("INFO " + content);
  }

  @Override
  public void warn(CharSequence content) {
    lines.add("WARNING " + content);
  }

  @Override
  public void error(CharSequence content) {
    lines.add("ERROR " + content);
  }

  @Override
  public void error(Throwable error) {
    StringWriter trace = new StringWriter();
    error.printStackTrace(new PrintWriter(trace));
    lines.add("ERROR " + trace);
  }
}
