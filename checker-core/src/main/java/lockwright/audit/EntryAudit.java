package lockwright.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Names;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.working.Breach;
import lockwright.working.Working;

/**
 * Audits what the search claims of a box without one of its entries; 10 of {@code docs/meaning.md}.
 *
 * <ol>
 *   <li>A run is played on the working without the entry and must end in what it claims. Then it is
 *       played on the working with the entry, where this entry, and nothing else, must hold it.
 *   <li>A certificate is checked on the working without the entry.
 *   <li>What was not claimed, or could not be checked within the limits, is open.
 * </ol>
 *
 * The box is one whose requirements of safety, and whose advice, have all been proved: advice that
 * is not kept with the entry has to be taken from it first.
 */
public final class EntryAudit {
  private static final String FORBIDDEN = Names.FORBIDDEN_BY_ENTRY;

  private final Entry entry;
  private final Map<String, Claim> claims;
  private final Working with;
  private final Working without;
  private final CertificateAudit certificates;
  private final List<Requirement> safety;
  private final List<Requirement> advice;

  private EntryAudit(Box box, Entry entry, Map<String, Claim> claims) {
    this.entry = entry;
    this.claims = claims;
    with = Working.parted(box);
    without = Working.parted(box, entry);
    certificates = new CertificateAudit(without);
    safety = box.requirements().stream().filter(r -> !r.possibility()).toList();
    advice = box.advice();
  }

  /**
   * The verdict on an entry.
   *
   * @param claims by the ids of requirements of safety and of advice (their breaches), and {@link
   *     Names#FORBIDDEN_BY_ENTRY}
   * @throws Disagreement if a claim does not stand, or two of them contradict each other: a fault
   *     of this program
   * @throws IllegalArgumentException if the box has no such entry
   */
  public static EntryVerdict audit(Box box, Entry entry, Map<String, Claim> claims) {
    EntryAudit audit = new EntryAudit(box, entry, claims);
    audit.refuseStrayClaims();
    return audit.verdict();
  }

  /** The verdict that nothing is known of an entry, which claims nothing that could be audited. */
  public static EntryVerdict undecided(Entry entry, List<String> reasons) {
    return new EntryVerdict.Undecided(entry, reasons);
  }

  private void refuseStrayClaims() {
    Set<String> stray = new HashSet<>(claims.keySet());
    stray.remove(FORBIDDEN);
    safety.forEach(r -> stray.remove(r.id()));
    advice.forEach(r -> stray.remove(r.id()));
    if (!stray.isEmpty()) {
      throw new Disagreement(entry.words() + ": claims about nothing that was asked: " + stray);
    }
  }

  private EntryVerdict verdict() {
    List<EntryVerdict.Break> breaks = breaks(safety);
    List<EntryVerdict.Break> advised = breaks(advice);
    List<String> open = new ArrayList<>();
    Optional<EntryVerdict.Never> never = never(FORBIDDEN, without.forbidden(entry), open);
    if (never.isPresent()) {
      List<EntryVerdict.Break> all = new ArrayList<>(breaks);
      all.addAll(advised);
      if (!all.isEmpty()) {
        throw new Disagreement(
            "without '"
                + entry.words()
                + "' the same movements are made, and yet it breaks "
                + all.get(0).requirement().id());
      }
      return new EntryVerdict.Implied(entry, never.get());
    }
    if (!breaks.isEmpty()) {
      return new EntryVerdict.Needed(
          entry, breaks, advised, safety.stream().filter(r -> !decided(r.id())).toList());
    }
    return withoutBreak(advised, open);
  }

  private EntryVerdict withoutBreak(List<EntryVerdict.Break> advised, List<String> open) {
    List<EntryVerdict.Kept> kept = kept(safety, open);
    if (!advised.isEmpty() && kept.size() == safety.size()) {
      return new EntryVerdict.NeededByAdvice(entry, advised, kept);
    }
    kept.addAll(kept(advice, open));
    if (claims.get(FORBIDDEN) instanceof Claim.Reached reached
        && kept.size() == safety.size() + advice.size()) {
      return new EntryVerdict.NotNeeded(
          entry, play(FORBIDDEN, without.forbidden(entry), reached), kept);
    }
    return new EntryVerdict.Undecided(entry, open);
  }

  private List<EntryVerdict.Kept> kept(List<Requirement> some, List<String> open) {
    List<EntryVerdict.Kept> kept = new ArrayList<>();
    for (Requirement r : some) {
      never(r.id(), without.breach(r), open).ifPresent(n -> kept.add(new EntryVerdict.Kept(r, n)));
    }
    return kept;
  }

  private boolean decided(String target) {
    return claims.get(target) instanceof Claim.Reached || claims.get(target) instanceof Claim.Never;
  }

  private List<EntryVerdict.Break> breaks(List<Requirement> some) {
    List<EntryVerdict.Break> breaks = new ArrayList<>();
    for (Requirement r : some) {
      if (claims.get(r.id()) instanceof Claim.Reached reached) {
        breaks.add(new EntryVerdict.Break(r, play(r.id(), without.breach(r), reached)));
      }
    }
    return breaks;
  }

  /** Plays a run without the entry, and again with it. */
  private EntryVerdict.Allowed play(String target, Breach breach, Claim.Reached claim) {
    String what = "without '" + entry.words() + "': " + target;
    Played played = Auditor.broken(what, without, breach, claim);
    Played again = Played.of(with, played.run());
    Optional<Played.Step> held = again.firstHeld();
    if (held.isEmpty() || !again.begins()) {
      throw new Disagreement(what + ": the run is possible with the entry too\n" + again.text());
    }
    for (Played.Held by : held.get().heldBy()) {
      if (!by.entry().equals(Optional.of(entry))) {
        throw new Disagreement(what + ": something else holds the run\n" + again.text());
      }
    }
    return new EntryVerdict.Allowed(played, claim.shortest(), MissingEntry.stopsAt(again));
  }

  /** The checked reason why something never comes about; else what is open is added. */
  private Optional<EntryVerdict.Never> never(String target, Breach breach, List<String> open) {
    Claim claim = claims.get(target);
    if (claim instanceof Claim.Never never) {
      CertificateAudit.Result result =
          certificates.proves(
              "without '" + entry.words() + "': " + target,
              never.certificate(),
              Auditor.targets(without, breach));
      if (result instanceof CertificateAudit.Result.Proves proves) {
        return Optional.of(new EntryVerdict.Never(never.certificate(), proves.by()));
      }
      open.add(target + ": its certificate: " + ((CertificateAudit.Result.Open) result).reason());
    } else if (!(claim instanceof Claim.Reached)) {
      open.add(target + ": " + Auditor.reason(claim));
    }
    return Optional.empty();
  }
}
