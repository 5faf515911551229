package lockwright.report.text;

import java.util.Locale;
import lockwright.audit.Audited;

/** The one word of a verdict. */
enum Word {
  PROVED,
  EMPTY,
  BROKEN,
  UNDECIDED,
  SHOWN,
  IMPOSSIBLE;

  private static final Audited.Cases<Word> OF =
      new Audited.Cases<>() {
        @Override
        public Word proved(Audited.Proved proved) {
          return PROVED;
        }

        @Override
        public Word empty(Audited.Empty empty) {
          return EMPTY;
        }

        @Override
        public Word broken(Audited.Broken broken) {
          return BROKEN;
        }

        @Override
        public Word undecided(Audited.Undecided undecided) {
          return UNDECIDED;
        }

        @Override
        public Word shown(Audited.Shown shown) {
          return SHOWN;
        }

        @Override
        public Word impossible(Audited.Impossible impossible) {
          return IMPOSSIBLE;
        }

        @Override
        public Word restorable(Audited.Restorable restorable) {
          return SHOWN;
        }

        @Override
        public Word stranded(Audited.Stranded stranded) {
          return BROKEN;
        }
      };

  static Word of(Audited audited) {
    return audited.fold(OF);
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
