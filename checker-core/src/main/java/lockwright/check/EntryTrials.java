package lockwright.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import lockwright.audit.Audited;
import lockwright.audit.EntryAudit;
import lockwright.audit.EntryVerdict;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.report.Advised;
import lockwright.report.Entries;
import lockwright.report.Findings;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;

/**
 * Leaves out each entry of a locking table alone, and says what it is there for; 10 of {@code
 * docs/meaning.md}.
 *
 * @param limits the seconds are those of all entries together
 */
public record EntryTrials(Limits limits, Searcher searcher, Consumer<String> progress) {
  private static final int TOLD = 10;

  /**
   * The findings with a verdict on each entry, if each requirement is proved or shown.
   *
   * @throws lockwright.audit.Disagreement if a claim fails its audit, which is a fault of this
   *     program
   */
  public Findings run(Findings findings) throws UnfitMachine, IOException, InterruptedException {
    List<Certificate> known = new ArrayList<>();
    for (Audited audited : findings.audited()) {
      if (audited instanceof Audited.Proved proved) {
        known.add(proved.certificate());
      } else if (!(audited instanceof Audited.Shown || audited instanceof Audited.Restorable)) {
        return findings.with(Entries.DOES_NOT_HOLD);
      }
    }
    if (known.isEmpty()) {
      return findings.with(Entries.DOES_NOT_HOLD);
    }
    for (Audited kept : findings.advice(Advised.KEPT)) {
      known.add(((Audited.Proved) kept).certificate());
    }
    return findings.with(Entries.of(all(findings.keeping(), known.stream().distinct().toList())));
  }

  private List<EntryVerdict> all(Box box, List<Certificate> known)
      throws UnfitMachine, IOException, InterruptedException {
    progress.accept("entries: " + box.locking().size() + " left out one at a time");
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(limits.seconds());
    AtomicInteger done = new AtomicInteger();
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Future<EntryVerdict>> trials = new ArrayList<>();
      for (Entry entry : box.locking()) {
        trials.add(
            threads.submit(
                () -> {
                  EntryVerdict verdict =
                      EntryAudit.audit(box, entry, claims(box, entry, known, end));
                  tell(done.incrementAndGet(), box.locking().size());
                  return verdict;
                }));
      }
      List<EntryVerdict> verdicts = new ArrayList<>();
      for (Future<EntryVerdict> trial : trials) {
        verdicts.add(get(trial));
      }
      return verdicts;
    } finally {
      threads.shutdownNow();
    }
  }

  private void tell(int done, int of) {
    if (done % TOLD == 0 || done == of) {
      progress.accept("entries: " + done + " of " + of + " looked at");
    }
  }

  /** What proved the box with the entry is tried for the box without it. */
  private Map<String, Claim> claims(Box box, Entry entry, List<Certificate> known, long end)
      throws UnfitMachine, IOException, InterruptedException {
    Encoded without = Encoder.parted(box, entry);
    for (Certificate certificate : known) {
      without = without.trying(certificate);
    }
    int left = (int) TimeUnit.NANOSECONDS.toSeconds(end - System.nanoTime());
    if (left < 1) {
      Map<String, Claim> open = new TreeMap<>();
      Claim unknown = new Claim.Unknown("the time for all entries together is over");
      without.system().targets().forEach(t -> open.put(t.name(), unknown));
      return open;
    }
    Limits own = new Limits(left, limits.effort(), limits.depth());
    Found found = searcher.search(new Job(without.system(), own), text -> {});
    return without.names().claims(found.verdicts());
  }

  private static EntryVerdict get(Future<EntryVerdict> trial)
      throws UnfitMachine, IOException, InterruptedException {
    try {
      return trial.get();
    } catch (ExecutionException e) {
      Throwable cause = e.getCause();
      if (cause instanceof UnfitMachine unfit) {
        throw unfit;
      } else if (cause instanceof IOException io) {
        throw io;
      } else if (cause instanceof InterruptedException interrupted) {
        throw interrupted;
      } else if (cause instanceof RuntimeException fault) {
        throw fault;
      } else if (cause instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(cause);
    }
  }
}
