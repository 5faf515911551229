package lockwright.worker;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;

/**
 * The children of this build. A job goes to one that is idle, or to a new one; over all modules, at
 * most as many work at once as there are processors. A child that is lost is replaced, and its job
 * is undecided. For several threads.
 */
public final class Children {
  /**
   * How children are started and what they are allowed.
   *
   * @param start seconds that a child may take until it is ready
   * @param grace seconds that it may go on beyond the limit of its job
   * @param most how many may work at once
   */
  record Rules(Launch launch, int start, int grace, int most) {}

  /** Gives the command of a child, to which its folder and its secret are added. */
  interface Launch {
    List<String> command(Path folder) throws IOException;
  }

  private static final Children OF_THIS_BUILD =
      new Children(new Rules(Command::write, 60, 10, Runtime.getRuntime().availableProcessors()));

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(OF_THIS_BUILD::close, "end solver processes"));
  }

  private final Rules rules;
  private final Semaphore permits;
  private final Deque<ChildProcess> idle = new ArrayDeque<>();
  private final Set<ChildProcess> all = new HashSet<>();
  private boolean closed;

  Children(Rules rules) {
    this.rules = rules;
    permits = new Semaphore(rules.most());
  }

  public static Children ofThisBuild() {
    return OF_THIS_BUILD;
  }

  /**
   * Has a job searched by a child. Whatever happens to the child, its targets are then unknown.
   *
   * @param within the folder in which the children have theirs
   * @throws UnfitMachine if the solver cannot run on this machine
   * @throws IOException if no process can be started or no file written
   */
  public Found search(Job job, Path within, Consumer<String> progress)
      throws UnfitMachine, IOException, InterruptedException {
    permits.acquire();
    try {
      return search(job, take(within), progress);
    } catch (ChildProcess.Lost lost) {
      return Found.nothing(job.system(), lost.getMessage());
    } finally {
      permits.release();
    }
  }

  private Found search(Job job, ChildProcess child, Consumer<String> progress)
      throws ChildProcess.Lost, IOException, InterruptedException {
    boolean kept = false;
    try {
      Found found = child.work(job, rules.grace(), progress);
      kept = true;
      return found;
    } finally {
      giveBack(child, kept);
    }
  }

  private ChildProcess take(Path within)
      throws IOException, ChildProcess.Lost, UnfitMachine, InterruptedException {
    ChildProcess waiting = takeIdle();
    if (waiting != null) {
      return waiting;
    }
    Path folder = Folders.create(within.toAbsolutePath());
    ChildProcess child = start(folder);
    boolean ready = false;
    try {
      child.awaitReady(rules.start());
      ready = true;
      return child;
    } finally {
      if (!ready) {
        giveBack(child, false);
      }
    }
  }

  /** An idle child that can still work, or null. */
  private synchronized ChildProcess takeIdle() {
    while (!idle.isEmpty()) {
      ChildProcess child = idle.pop();
      if (child.isFit()) {
        return child;
      }
      all.remove(child);
      child.end();
    }
    return null;
  }

  private ChildProcess start(Path folder) throws IOException, ChildProcess.Lost {
    ChildProcess child = null;
    try {
      List<String> command = rules.launch().command(folder);
      synchronized (this) {
        if (closed) {
          throw new ChildProcess.Lost("the build was ended");
        }
        child = new ChildProcess(folder, command);
        all.add(child);
      }
      return child;
    } finally {
      if (child == null) {
        Folders.delete(folder);
      }
    }
  }

  private void giveBack(ChildProcess child, boolean kept) {
    synchronized (this) {
      if (kept && all.contains(child)) {
        idle.push(child);
        return;
      }
      all.remove(child);
    }
    child.end();
  }

  /** Ends all children, and takes their folders away. Those at work leave their job undecided. */
  public void endAll() {
    List<ChildProcess> ending;
    synchronized (this) {
      ending = List.copyOf(all);
      all.clear();
      idle.clear();
    }
    ending.forEach(ChildProcess::end);
  }

  /** Ends all children, and lets none start any more. */
  private void close() {
    synchronized (this) {
      closed = true;
    }
    endAll();
  }

  /** The processes of the children that live, for those who watch over them. */
  synchronized List<ProcessHandle> handles() {
    return all.stream()
        .map(ChildProcess::process)
        .filter(Process::isAlive)
        .map(Process::toHandle)
        .toList();
  }
}
