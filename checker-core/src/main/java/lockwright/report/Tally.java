package lockwright.report;

import lockwright.audit.Audited;

/** How many requirements have each verdict, by its word. */
public record Tally(int proved, int empty, int broken, int undecided, int shown, int impossible) {
  static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0);

  static final Audited.Cases<Tally> OF_ONE =
      new Audited.Cases<>() {
        @Override
        public Tally proved(Audited.Proved proved) {
          return new Tally(1, 0, 0, 0, 0, 0);
        }

        @Override
        public Tally empty(Audited.Empty empty) {
          return new Tally(0, 1, 0, 0, 0, 0);
        }

        @Override
        public Tally broken(Audited.Broken broken) {
          return new Tally(0, 0, 1, 0, 0, 0);
        }

        @Override
        public Tally undecided(Audited.Undecided undecided) {
          return new Tally(0, 0, 0, 1, 0, 0);
        }

        @Override
        public Tally shown(Audited.Shown shown) {
          return new Tally(0, 0, 0, 0, 1, 0);
        }

        @Override
        public Tally impossible(Audited.Impossible impossible) {
          return new Tally(0, 0, 0, 0, 0, 1);
        }

        @Override
        public Tally restorable(Audited.Restorable restorable) {
          return new Tally(0, 0, 0, 0, 1, 0);
        }

        @Override
        public Tally stranded(Audited.Stranded stranded) {
          return new Tally(0, 0, 1, 0, 0, 0);
        }
      };

  Tally plus(Tally other) {
    return new Tally(
        proved + other.proved,
        empty + other.empty,
        broken + other.broken,
        undecided + other.undecided,
        shown + other.shown,
        impossible + other.impossible);
  }

  /** Of requirements of either kind. */
  public int all() {
    return proved + empty + broken + undecided + shown + impossible;
  }
}
