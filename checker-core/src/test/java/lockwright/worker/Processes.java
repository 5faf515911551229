package lockwright.worker;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** What the tests do to processes, and see of them. */
final class Processes {
  private Processes() {}

  /** The command of a Java program on the class path of the tests. */
  static List<String> java(Class<?> main, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(main.getName());
    command.addAll(List.of(arguments));
    return command;
  }

  static void signal(ProcessHandle process, String name) throws Exception {
    int code =
        new ProcessBuilder("sh", "-c", "kill -" + name + " " + process.pid()).start().waitFor();
    if (code != 0) {
      throw new IllegalStateException("kill -" + name + " failed: " + code);
    }
  }

  /** Whether it is stopped, by Linux's account; elsewhere the signal is believed. */
  static boolean isStopped(ProcessHandle process) throws IOException {
    return state(process, 'T') == 'T';
  }

  /** Whether it has ended, be it that nobody has asked yet how. */
  static boolean isGone(ProcessHandle process) {
    try {
      return !process.isAlive() || state(process, 'R') == 'Z';
    } catch (IOException e) {
      return true;
    }
  }

  private static char state(ProcessHandle process, char elsewhere) throws IOException {
    if (!Files.exists(Path.of("/proc/self/stat"))) {
      return elsewhere;
    }
    String stat =
        Files.readString(Path.of("/proc/" + process.pid() + "/stat"), StandardCharsets.ISO_8859_1);
    return stat.charAt(stat.lastIndexOf(')') + 2);
  }

  /** Whether something comes true within some seconds. */
  static boolean within(int seconds, Callable<Boolean> something) throws Exception {
    long limit = System.nanoTime() + seconds * 1_000_000_000L;
    while (!something.call()) {
      if (System.nanoTime() > limit) {
        return false;
      }
      Thread.sleep(20);
    }
    return true;
  }
}
