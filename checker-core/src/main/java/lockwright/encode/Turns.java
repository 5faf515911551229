package lockwright.encode;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Kind;
import lockwright.railway.words.Quantity;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/** The rules of how levers move; `docs/meaning.md` 3.4. */
record Turns(List<Entry> entries, Vocabulary words) {
  Turns {
    entries = entries.stream().filter(e -> e.kind().ofMovement()).toList();
  }

  void declare() {
    turns().forEach(words::add);
  }

  Term beginning() {
    return Term.and(turns().map(t -> words.is(t, "come")).toList());
  }

  private Stream<Quantity> turns() {
    return entries.stream()
        .filter(e -> e.kind() == Kind.NOT_AGAIN_BEFORE)
        .map(Turns::turn)
        .distinct();
  }

  private static Quantity turn(Entry entry) {
    return Quantity.turn(entry.lever(), entry.others().get(0));
  }

  /** What a lever needs to leave N. */
  List<Term> needs(String lever) {
    return entries.stream()
        .filter(e -> e.lever().equals(lever))
        .map(
            e -> {
              Term unmet =
                  e.kind() == Kind.NOT_AGAIN_BEFORE
                      ? Term.not(words.is(turn(e), "come"))
                      : words.isNot(Quantity.lever(e.others().get(0)), Position.N);
              return Term.not(Term.and(unmet, conditions(e)));
            })
        .toList();
  }

  private Term conditions(Entry entry) {
    return Term.and(
        entry.when().stream()
            .map(
                c ->
                    words.isNot(
                        Quantity.lever(c.lever()),
                        c.position() == Position.N ? Position.R : Position.N))
            .toList());
  }

  /** What a stroke of a lever does: it begins the wait for others, and ends that for itself. */
  List<Effect> does(String lever, Strokes.Stroke stroke) {
    return turns()
        .flatMap(
            turn -> {
              UnaryOperator<String> next = UnaryOperator.identity();
              if (isOf(turn, lever, true) && stroke.from() == Position.N) {
                next = value -> "pull awaited";
              } else if (isOf(turn, lever, false)) {
                next = value -> after(value, stroke);
              }
              Effect effect = words.turn(turn, next);
              return effect.next().equals(List.of(0, 1, 2)) ? Stream.empty() : Stream.of(effect);
            })
        .toList();
  }

  private boolean isOf(Quantity turn, String lever, boolean waits) {
    return entries.stream()
        .filter(e -> e.kind() == Kind.NOT_AGAIN_BEFORE && turn(e).equals(turn))
        .anyMatch(e -> lever.equals(waits ? e.lever() : e.others().get(0)));
  }

  /** The lever waited for is at R before or after the stroke; then it comes to N. */
  private static String after(String value, Strokes.Stroke stroke) {
    boolean reversed = stroke.from() == Position.R || stroke.to() == Position.R;
    String pulled = value.equals("pull awaited") && reversed ? "return awaited" : value;
    return pulled.equals("return awaited") && stroke.to() == Position.N ? "come" : pulled;
  }
}
