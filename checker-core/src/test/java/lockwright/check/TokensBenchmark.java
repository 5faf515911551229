package lockwright.check;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lockwright.railway.Box;

/**
 * Prints how much longer a box takes with 70 tokens a section than with 5, in processor time of
 * this thread: the least of some rounds, after one that is not counted. No test, since it measures.
 * Arguments: the folder of the box, and how many rounds.
 */
public final class TokensBenchmark {
  private TokensBenchmark() {}

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    Path box = Path.of(args[0]);
    int rounds = Integer.parseInt(args[1]);
    Path work = Files.createTempDirectory("tokens");
    List<Box> boxes = List.of(with(5, box, work), with(70, box, work));
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
    for (int round = 0; round <= rounds; round++) {
      for (int i = 0; i < least.length; i++) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Boxes.check(boxes.get(i));
        long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        least[i] = round == 0 ? least[i] : Math.min(least[i], (end - start) / 1e9);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%s: %.2f s with 5 tokens, %.2f s with 70, ratio %.2f%n",
        box,
        least[0],
        least[1],
        least[1] / least[0]);
  }

  /** The box with so many tokens in each section. */
  static Box with(int tokens, Path box, Path work) throws IOException {
    Path folder = Files.createDirectories(work.resolve(Integer.toString(tokens)));
    try (Stream<Path> files = Files.list(box)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(file).replaceAll("tokens: [0-9]+", "tokens: " + tokens);
        Files.writeString(folder.resolve(file.getFileName().toString()), text);
      }
    }
    return Boxes.read(folder);
  }
}
