package lockwright.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import lockwright.worker.Children;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.UnfitMachine;

/** Where a search is done. */
public interface Searcher {
  Found search(Job job, Consumer<String> progress)
      throws UnfitMachine, IOException, InterruptedException;

  /** In child processes, which have their folders within the given one. */
  static Searcher inChildren(Path within) {
    return (job, progress) -> Children.ofThisBuild().search(job, within, progress);
  }
}
