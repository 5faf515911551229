package lockwright.check;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.report.Findings;
import lockwright.worker.Limits;

public final class TokensBenchmark {
  public static void main(String[] args) throws Exception {
    Path box = Path.of(args[0]);
    int rounds = Integer.parseInt(args[1]);
    int[] tokens = {5, 70};
    Path work = Files.createTempDirectory("tokens");
    Map<Integer, Box> boxes = new LinkedHashMap<>();
    for (int n : tokens) {
      boxes.put(n, Boxes.read(with(n, box, work.resolve("" + n))));
    }
    Map<Integer, List<Map<String, Double>>> all = new LinkedHashMap<>();
    for (int r = 0; r < rounds; r++) {
      for (int n : tokens) {
        Map<String, Double> phases = new LinkedHashMap<>();
        double start = cpu();
        double[] last = {start};
        String[] what = {"before"};
        java.util.function.Consumer<String> tell =
            p -> {
              double now = cpu();
              phases.merge(what[0], now - last[0], Double::sum);
              last[0] = now;
              what[0] = p;
            };
        Findings f =
            new Check(
                    Limits.usual(),
                    (job, progress) -> {
                      var known = job.run(tell);
                      tell.accept("after search");
                      return new lockwright.worker.Found(
                          known.verdicts(), known.decidedBy(), "in this process");
                    },
                    tell)
                .run(boxes.get(n), new TreeMap<>());
        tell.accept("json");
        int bytes = lockwright.report.json.ResultJson.bytes(f).length;
        tell.accept("end");
        phases.put("total", cpu() - start);
        all.computeIfAbsent(n, k -> new ArrayList<>()).add(phases);
        System.out.printf(
            Locale.ROOT, "%d tokens: %.2f s %s json %d%n", n, cpu() - start, f.tally(), bytes);
        if (r == rounds - 1) {
          phases.forEach((k, v) -> System.out.printf(Locale.ROOT, "   %.3f %s%n", v, k));
        }
      }
    }
  }

  private static double cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }

  private static Path with(int tokens, Path box, Path folder) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> files = Files.list(box)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(file);
        if (file.getFileName().toString().equals("sections.yaml")) {
          text = text.replaceAll("tokens: [0-9]+", "tokens: " + tokens);
        }
        Files.writeString(folder.resolve(file.getFileName().toString()), text);
      }
    }
    return folder;
  }
}
