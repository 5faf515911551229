package lockwright.report.json;

import lockwright.spec.Span;

/** Where something is written: a file of the spec, a line and a column, both from 1. */
record Place(String file, int line, int column) {
  static Place of(Span at) {
    return new Place(at.file(), at.line(), at.column());
  }
}
