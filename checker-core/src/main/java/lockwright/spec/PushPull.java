package lockwright.spec;

import java.util.List;
import lockwright.spec.form.FrameForm;

/**
 * Reads a push-pull lever of {@code frame.yaml} as its two ways, {@code 5-pull} and {@code 5-push};
 * `docs/meaning.md` 2.7.
 */
record PushPull(Problems problems, Shape shape) {
  private static final List<String> WAYS = FrameForm.PUSH_PULL.names();

  /** Whether a lever is written as one. */
  static boolean is(Node.Field lever) {
    return lever.value() instanceof Node.Mapping mapping
        && mapping.fields().stream().anyMatch(f -> WAYS.contains(f.key().text()));
  }

  /** Its ways, each with what it works; a way that is missing or works nothing is told. */
  List<Node.Field> ways(Node.Field lever) {
    String thing = "lever " + lever.key().quoted();
    Node.Mapping written = (Node.Mapping) lever.value();
    shape.fields(written, thing, FrameForm.PUSH_PULL);
    for (String way : WAYS) {
      boolean works =
          written.fields().stream()
              .filter(f -> f.key().text().equals(way))
              .anyMatch(f -> f.value() instanceof Node.Mapping m && moves(m));
      if (!works) {
        problems.add(
            Message.PUSH_PULL_WAY,
            lever.key().at(),
            thing + " is a push-pull lever, and its way '" + way + "' works nothing",
            "write what each way works: {pull: {signal: 3}, push: {signal: 4}}; a lever that is moved"
                + " one way only is written without 'pull' and 'push'");
      }
    }
    return written.fields().stream()
        .filter(f -> WAYS.contains(f.key().text()))
        .filter(f -> f.value() instanceof Node.Mapping m && moves(m))
        .map(f -> new Node.Field(named(lever.key(), f.key().text()), f.value()))
        .toList();
  }

  private static boolean moves(Node.Mapping work) {
    return FrameForm.NEVER_OF_A_WAY.stream()
        .noneMatch(no -> work.fields().stream().anyMatch(f -> f.key().text().equals(no)));
  }

  private static Written named(Written lever, String way) {
    return new Written(lever.text() + "-" + way, lever.at(), false);
  }
}
