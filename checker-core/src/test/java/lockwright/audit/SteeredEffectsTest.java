package lockwright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;
import lockwright.spec.Span;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Whether a signal with a control goes off as its lever is pulled, and so uses the token up, hangs
 * on a condition that a certificate may not speak of. Both checkers try it met and unmet; 4.3 of
 * docs/meaning.md.
 */
class SteeredEffectsTest {
  private static final Span HERE = new Span("test", 1, 1);

  private static Working working(LeverLock... locks) {
    Box box =
        BoxBuilder.read(Path.of("src", "test", "resources", "boxes", "calling-on-proved"))
            .box()
            .orElseThrow();
    return Working.parted(
        box.withControls(
            new Controls(
                List.of(
                    new OutsideCondition(
                        "Given", OutsideCondition.Kind.SLOT, List.of("Holm"), false, HERE)),
                List.of(locks),
                List.of(new ArmControl("1", List.of(new Contact.Outside("Given")), HERE)))));
  }

  /** That a fresh token stays fresh is spoiled by the pull with the slot given, and only so. */
  @Test
  void a_pull_that_uses_the_token_up_leads_out_of_the_invariant() {
    assertPullLeadsOut(working());
  }

  /** What the pull needs is then the same condition as that on which its effect hangs. */
  @Test
  void also_where_the_pull_itself_needs_the_slot() {
    assertPullLeadsOut(
        working(new LeverLock("1", List.of(new Contact.Outside("Given")), List.of(), HERE)));
  }

  private static void assertPullLeadsOut(Working working) {
    Invariant fresh =
        Invariant.read(
            working,
            new Certificate(
                List.of(List.of(new Fact("section Tarn to Holm: fresh tokens", "1", true)))));
    for (Checker checker : List.of(new Enumeration(fresh), new Solving(fresh))) {
      assertThat(checker.keeps())
          .isInstanceOfSatisfying(
              Outcome.Fails.class,
              f -> assertThat(f.words()).startsWith("lever 1 N>M leads out of the invariant"));
    }
  }
}
