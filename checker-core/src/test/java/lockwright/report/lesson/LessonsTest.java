package lockwright.report.lesson;

import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class LessonsTest {
  @Test
  void time() throws Exception {
    for (String s : List.of("facing-points-unbolted", "opposing-signals", "token-without-consent")) {
      long t = System.nanoTime();
      Taught x = Taught.broken(s);
      System.out.println(s + " " + (System.nanoTime() - t) / 1e9);
      Path d = Path.of("/tmp/lessons-look", s);
      Files.createDirectories(d);
      for (var e : x.pages().entrySet()) Files.writeString(d.resolve(e.getKey()), e.getValue());
    }
    long t = System.nanoTime();
    Taught x = Taught.without("e1-junction", "1 locks 4");
      System.out.println("junction " + (System.nanoTime() - t) / 1e9);
      Path d = Path.of("/tmp/lessons-look", "junction");
      Files.createDirectories(d);
      for (var e : x.pages().entrySet()) Files.writeString(d.resolve(e.getKey()), e.getValue());
  }
}
