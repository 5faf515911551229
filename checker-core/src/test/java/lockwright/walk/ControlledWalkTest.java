package lockwright.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.words.Event;
import lockwright.spec.Span;
import lockwright.working.Condition;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * A walk to a lever reversed with its token still fresh: the control of the arm has to be taken
 * away before, which a search that looks at the section alone would not see; 4.3 of
 * docs/meaning.md.
 */
class ControlledWalkTest {
  private static final Span HERE = new Span("test", 1, 1);
  private static final String IN = "section Tarn to Holm: ";

  private final Box box =
      BoxBuilder.read(Path.of("src", "test", "resources", "boxes", "calling-on-proved"))
          .box()
          .orElseThrow()
          .withControls(
              new Controls(
                  List.of(
                      new OutsideCondition(
                          "Given", OutsideCondition.Kind.SLOT, List.of("Holm"), false, HERE)),
                  List.of(),
                  List.of(new ArmControl("1", List.of(new Contact.Outside("Given")), HERE))));
  private final Working working = Working.whole(box);

  private Condition is(String key, String value) {
    for (int at = 0; at < working.quantities().size(); at++) {
      if (working.quantities().get(at).key().equals(key)) {
        BitSet values = new BitSet();
        values.set(working.quantities().get(at).values().indexOf(value));
        return Condition.oneOf(at, working.quantities().get(at), values);
      }
    }
    throw new AssertionError("no " + key);
  }

  @Test
  void a_walk_looks_at_the_conditions_on_which_a_token_is_used_up() {
    Map<String, String> values = new TreeMap<>(working.beginnings().iterator().next().values());
    values.put("condition Given", "met");
    values.put(IN + "phase", "out");
    values.put(IN + "tokens in Holm", "1");
    values.put(IN + "tokens out", "1");
    values.put(IN + "fresh tokens", "1");
    values.put(IN + "release", "given");
    State state = working.state(values);
    Outcome outcome =
        new Walks(box, working, working.movements(), 1000)
            .shortest(List.of(state), List.of(is("lever 1", "R"), is(IN + "fresh tokens", "1")));
    assertThat(outcome)
        .isInstanceOfSatisfying(
            Outcome.Found.class,
            f ->
                assertThat(f.walk().events())
                    .extracting(Event::key)
                    .containsExactly("condition Given: ceases to be met", "lever 1 N>R"));
  }
}
