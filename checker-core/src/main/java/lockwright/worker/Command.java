package lockwright.worker;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The command that starts a child: the running Java, with an argument file. */
final class Command {
  /** The solver's classes are named only here, as all else of the solver is in its own room. */
  private static final List<String> SOLVER =
      List.of("com.microsoft.z3.Context", "tools.aqua.turnkey.support.TurnKey");

  private static final Charset OF_PATHS = Charset.forName(System.getProperty("sun.jnu.encoding"));

  private Command() {}

  static List<String> write(Path folder) throws IOException {
    String place = text(folder);
    List<String> arguments = new ArrayList<>();
    arguments.add("-Xmx1g");
    arguments.add("-XX:+UseSerialGC");
    arguments.add("-XX:TieredStopAtLevel=1");
    arguments.add("-XX:-UsePerfData");
    arguments.add("-XX:+DisplayVMOutputToStderr");
    arguments.add("-XX:-CreateCoredumpOnCrash");
    arguments.add("-XX:ErrorFile=" + place + File.separator + ChildProcess.CRASH);
    arguments.add("-Djava.io.tmpdir=" + place);
    if (Runtime.version().feature() >= 24) {
      arguments.add("--enable-native-access=ALL-UNNAMED");
    }
    arguments.add("-cp");
    arguments.add(classPath());
    arguments.add(Child.class.getName());
    Path file = folder.resolve("arguments.txt");
    Files.writeString(
        file,
        arguments.stream().map(Command::quoted).collect(Collectors.joining("\n", "", "\n")),
        OF_PATHS);
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    return List.of(text(java), "@" + text(file));
  }

  private static String quoted(String argument) {
    return '"' + argument.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** Only what the child needs, wherever this build has it from. */
  private static String classPath() throws IOException {
    Set<String> places = new LinkedHashSet<>();
    try {
      List<Class<?>> needed = new ArrayList<>();
      needed.add(Child.class);
      needed.add(JsonTypeInfo.class);
      needed.add(JsonFactory.class);
      needed.add(ObjectMapper.class);
      for (String name : SOLVER) {
        needed.add(Class.forName(name, false, Command.class.getClassLoader()));
      }
      for (Class<?> one : needed) {
        places.add(text(Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI())));
      }
    } catch (ClassNotFoundException | URISyntaxException e) {
      throw new IllegalStateException("not found for the solver's process: " + e.getMessage(), e);
    }
    return String.join(File.pathSeparator, places);
  }

  /** A path as text from which the other process gets the same path. */
  static String text(Path path) throws IOException {
    String text = path.toString();
    Charset ofCommands = Runtime.version().feature() < 18 ? Charset.defaultCharset() : OF_PATHS;
    try {
      if (Path.of(text).equals(path)
          && new String(text.getBytes(ofCommands), OF_PATHS).equals(text)) {
        return text;
      }
    } catch (InvalidPathException e) {
      // Said below.
    }
    throw new IOException(
        "the path "
            + text
            + " has characters that cannot be handed to the solver's process in this locale ("
            + OF_PATHS
            + ", file.encoding "
            + ofCommands
            + "); set LC_ALL to one of UTF-8, such as C.UTF-8, or use a path without them");
  }
}
