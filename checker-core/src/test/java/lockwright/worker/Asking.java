package lockwright.worker;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The build's side, as a process of its own that can be killed. It asks for a search without end in
 * the one folder that the given folder has, and says which process searches, or why none does.
 */
final class Asking {
  private Asking() {}

  public static void main(String[] arguments) throws Exception {
    Path within;
    try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
      within = all.findFirst().orElseThrow();
    }
    Children children = Children.ofThisBuild();
    Job endless = new Job(HandMade.withFarTarget(), new Limits(120, 0, 16));
    Consumer<String> progress =
        words -> {
          // From here on the child says nothing, and so does not notice by itself that none
          // listens.
          if (words.endsWith("reachability: far")) {
            System.out.println("child " + children.handles().get(0).pid());
          }
        };
    try {
      children.search(endless, within, progress);
    } catch (IOException e) {
      System.out.println("no child: " + e.getMessage());
    }
  }
}
