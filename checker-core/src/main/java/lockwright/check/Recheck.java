package lockwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Disagreement;
import lockwright.audit.EntryAudit;
import lockwright.audit.EntryVerdict;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Quantity;
import lockwright.report.Entries;
import lockwright.report.Expectations;
import lockwright.report.Findings;
import lockwright.report.json.Recorded;
import lockwright.report.json.RecordedEntries;
import lockwright.report.json.ResultJson;
import lockwright.working.Working;

/**
 * Checks an existing {@code result.json} again, without a search: its runs are played and its
 * certificates checked, by the same audit that a search has to pass, on the box as its files give
 * it now.
 *
 * <ol>
 *   <li>The files must have the digests that the result names.
 *   <li>Each verdict is read as a claim, and audited.
 *   <li>The result that follows is written anew, and must be the one at hand, byte for byte. So
 *       nothing else in it can have been altered either, but for what no audit looks at: which
 *       engine found a thing, the solver's name, that a sequence is the shortest, and what is said
 *       to be undecided.
 * </ol>
 */
public final class Recheck {
  private static final int LONGEST = 300;

  private Recheck() {}

  /** What came of it. */
  public sealed interface Outcome {
    /** All of the result stands. */
    record Stands(Findings findings) implements Outcome {}

    /** It does not, or it cannot be told; why, a line each. */
    record Refused(List<String> why) implements Outcome {
      public Refused {
        why = List.copyOf(why);
      }
    }
  }

  /**
   * Checks a result again.
   *
   * @param digests of the files that the box was read from
   * @param expectations of the same files; with a date only where one is needed, which must be the
   *     one that the check was given
   * @param result the bytes of {@code result.json}
   */
  public static Outcome of(
      Box box, SortedMap<String, String> digests, Expectations expectations, byte[] result) {
    try {
      Recorded recorded = Recorded.read(result, quantities(box));
      List<String> changed = changed(recorded.files(), digests);
      if (!changed.isEmpty()) {
        return new Outcome.Refused(changed);
      }
      List<Audited> audited = Auditor.audit(box, recorded.claims());
      Findings bare = new Findings(box, digests, audited, recorded.decidedBy(), recorded.solver());
      Set<String> tried =
          bare.keeping().checked().stream()
              .filter(r -> !r.possibility())
              .map(Requirement::id)
              .collect(Collectors.toSet());
      Findings findings = bare.with(entries(bare, recorded.entries(tried))).against(expectations);
      String difference = recorded.firstDifference(ResultJson.bytes(findings));
      return difference.isEmpty()
          ? new Outcome.Stands(findings)
          : refused("what result.json says is not what the checks of this run give, " + difference);
    } catch (Disagreement e) {
      return refused("a claim of result.json does not stand: " + firstLine(e));
    } catch (IllegalArgumentException e) {
      return refused("result.json cannot be read as a result of this box: " + firstLine(e));
    }
  }

  /** The entries of the table, each audited again without it, if they were tried. */
  private static Entries entries(Findings findings, RecordedEntries recorded) {
    Box box = findings.keeping();
    boolean holds =
        findings.audited().stream()
            .allMatch(
                a ->
                    a instanceof Audited.Proved
                        || a instanceof Audited.Shown
                        || a instanceof Audited.Restorable);
    if (recorded.notTried().equals(Entries.NOT_ASKED_FOR.notTried())) {
      return Entries.NOT_ASKED_FOR;
    } else if (!recorded.notTried().isEmpty()) {
      if (holds && findings.audited().stream().anyMatch(a -> a instanceof Audited.Proved)) {
        throw new IllegalArgumentException(
            "the entries were not tried, for a reason that is not so");
      }
      return Entries.DOES_NOT_HOLD;
    } else if (!holds || recorded.entries().size() != box.locking().size()) {
      throw new IllegalArgumentException("verdicts on the entries of another table, or too early");
    }
    List<EntryVerdict> verdicts = new ArrayList<>();
    for (int i = 0; i < box.locking().size(); i++) {
      RecordedEntries.Of of = recorded.entries().get(i);
      Entry entry = box.locking().get(i);
      verdicts.add(
          of.undecided().isEmpty()
              ? EntryAudit.audit(box, entry, of.claims())
              : EntryAudit.undecided(entry, of.undecided()));
    }
    return Entries.of(verdicts);
  }

  private static Outcome refused(String why) {
    return new Outcome.Refused(List.of(why));
  }

  private static String firstLine(Exception e) {
    String message = String.valueOf(e.getMessage());
    String line = message.lines().findFirst().orElse("");
    return line.length() > LONGEST ? line.substring(0, LONGEST) + " ..." : line;
  }

  /** All that a certificate by half-strokes, or one by whole strokes, may speak of. */
  private static Set<Quantity> quantities(Box box) {
    Set<Quantity> all = new LinkedHashSet<>(Working.parted(box).quantities());
    all.addAll(Working.whole(box).quantities());
    return all;
  }

  private static List<String> changed(
      SortedMap<String, String> checked, SortedMap<String, String> now) {
    Set<String> names = new TreeSet<>(checked.keySet());
    names.addAll(now.keySet());
    List<String> changed = new ArrayList<>();
    for (String name : names) {
      if (!now.containsKey(name)) {
        changed.add(name + " was checked, and is not there now");
      } else if (!checked.containsKey(name)) {
        changed.add(name + " is there now, and was not checked");
      } else if (!now.get(name).equals(checked.get(name))) {
        changed.add(name + " is not the file that was checked: its SHA-256 is another");
      }
    }
    return changed;
  }
}
