package lockwright.spec;

import java.util.List;

/** A YAML file as a tree with places. Scalars are the text that was written, never converted. */
sealed interface Node {
  Span at();

  /** A piece of text; empty where nothing is written. */
  record Scalar(Written written) implements Node {
    @Override
    public Span at() {
      return written.at();
    }
  }

  record Sequence(Span at, List<Node> items) implements Node {}

  /** Fields in the order written; no key twice. */
  record Mapping(Span at, List<Field> fields) implements Node {}

  /** A key and its value. */
  record Field(Written key, Node value) {}
}
