package lockwright.audit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lockwright.encode.names.Certificate;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;

/**
 * A verdict that has been audited; 7 of {@code docs/meaning.md}. Only this package makes one. Look
 * at it with {@link #fold}, so that no case is forgotten.
 */
public abstract sealed class Audited {
  private final Requirement requirement;

  private Audited(Requirement requirement) {
    this.requirement = requirement;
  }

  public Requirement requirement() {
    return requirement;
  }

  /** The answer of the case that this is. */
  public abstract <T> T fold(Cases<T> cases);

  /** An answer for each case. */
  public interface Cases<T> {
    T proved(Proved proved);

    T empty(Empty empty);

    T broken(Broken broken);

    T undecided(Undecided undecided);

    T shown(Shown shown);

    T impossible(Impossible impossible);

    T restorable(Restorable restorable);

    T stranded(Stranded stranded);
  }

  /** Safety: can never be broken, and each thing that it speaks about comes about in some run. */
  public static final class Proved extends Audited {
    private final Certificate certificate;
    private final Set<CheckedBy> checkedBy;
    private final List<Played> witnesses;

    Proved(
        Requirement requirement,
        Certificate certificate,
        Set<CheckedBy> checkedBy,
        List<Played> witnesses) {
      super(requirement);
      this.certificate = certificate;
      this.checkedBy = EnumSet.copyOf(checkedBy);
      this.witnesses = List.copyOf(witnesses);
    }

    public Certificate certificate() {
      return certificate;
    }

    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }

    /** One for each subject of the requirement, in their order. */
    public List<Played> witnesses() {
      return witnesses;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.proved(this);
    }
  }

  /** Safety: can never be broken, but something that it speaks about never comes about. */
  public static final class Empty extends Audited {
    private final Certificate certificate;
    private final Set<CheckedBy> checkedBy;
    private final List<Never> never;

    Empty(
        Requirement requirement,
        Certificate certificate,
        Set<CheckedBy> checkedBy,
        List<Never> never) {
      super(requirement);
      this.certificate = certificate;
      this.checkedBy = EnumSet.copyOf(checkedBy);
      this.never = List.copyOf(never);
    }

    public Certificate certificate() {
      return certificate;
    }

    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }

    /** The subjects that never come about: one or more. */
    public List<Never> never() {
      return never;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.empty(this);
    }
  }

  /** A subject that never comes about, and the checked reason. */
  public record Never(Subject subject, Certificate certificate, Set<CheckedBy> checkedBy) {}

  /** Safety: broken by this run. */
  public static final class Broken extends Audited {
    private final Played played;
    private final boolean shortest;

    Broken(Requirement requirement, Played played, boolean shortest) {
      super(requirement);
      this.played = played;
      this.shortest = shortest;
    }

    /** For a movement breach the last movement is the forbidden one. */
    public Played played() {
      return played;
    }

    /** Whether the search says that none is shorter; that is not audited. */
    public boolean shortest() {
      return shortest;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.broken(this);
    }
  }

  /** Neither was found. */
  public static final class Undecided extends Audited {
    private final String reason;

    Undecided(Requirement requirement, String reason) {
      super(requirement);
      this.reason = reason;
    }

    public String reason() {
      return reason;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.undecided(this);
    }
  }

  /** Possibility: shown by this run. */
  public static final class Shown extends Audited {
    private final Played played;
    private final boolean shortest;

    Shown(Requirement requirement, Played played, boolean shortest) {
      super(requirement);
      this.played = played;
      this.shortest = shortest;
    }

    /** By whole strokes. */
    public Played played() {
      return played;
    }

    /** Whether the search says that none is shorter; that is not audited. */
    public boolean shortest() {
      return shortest;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.shown(this);
    }
  }

  /** Possibility: never comes about. */
  public static final class Impossible extends Audited {
    private final Certificate certificate;
    private final Set<CheckedBy> checkedBy;

    Impossible(Requirement requirement, Certificate certificate, Set<CheckedBy> checkedBy) {
      super(requirement);
      this.certificate = certificate;
      this.checkedBy = EnumSet.copyOf(checkedBy);
    }

    public Certificate certificate() {
      return certificate;
    }

    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.impossible(this);
    }
  }

  /** Possibility: the frame can be restored from every state. */
  public static final class Restorable extends Audited {
    private final List<List<Event>> ways;
    private final Certificate certificate;
    private final Set<CheckedBy> checkedBy;

    Restorable(
        Requirement requirement,
        List<List<Event>> ways,
        Certificate certificate,
        Set<CheckedBy> checkedBy) {
      super(requirement);
      this.ways = ways.stream().map(List::copyOf).toList();
      this.certificate = certificate;
      this.checkedBy = EnumSet.copyOf(checkedBy);
    }

    /** The ways back, besides single strokes to N: each leaves less away from N. */
    public List<List<Event>> ways() {
      return ways;
    }

    /** Where it holds, the frame is never stuck. */
    public Certificate certificate() {
      return certificate;
    }

    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.restorable(this);
    }
  }

  /** Possibility: this run leads to where strokes alone do not restore the frame. */
  public static final class Stranded extends Audited {
    private final Played played;
    private final Certificate noWayBack;
    private final Set<CheckedBy> checkedBy;
    private final Optional<Played> helped;

    Stranded(
        Requirement requirement,
        Played played,
        Certificate noWayBack,
        Set<CheckedBy> checkedBy,
        Optional<Played> helped) {
      super(requirement);
      this.played = played;
      this.noWayBack = noWayBack;
      this.checkedBy = EnumSet.copyOf(checkedBy);
      this.helped = helped;
    }

    /** By whole strokes. A shorter one may lead to such a state too. */
    public Played played() {
      return played;
    }

    /** Holds where the run ends, and wherever strokes lead to from there. */
    public Certificate noWayBack() {
      return noWayBack;
    }

    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }

    /** The same run, gone on with to all levers N by events of the sections too. */
    public Optional<Played> helped() {
      return helped;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.stranded(this);
    }
  }
}
