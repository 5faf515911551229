package lockwright.railway.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/** What is advised on random pieces of double line is what {@link NaiveAdvice} finds. */
class AdviceProperties {
  private static final Map<String, Integer> SEEN = new TreeMap<>();

  @Property(tries = 40, seed = "1898", shrinking = ShrinkingMode.OFF)
  void advice_equals_what_is_found_naively(@ForAll("lines") RandomDrawing lines) {
    Derived derived = Derivation.derive(lines.layout(), lines.frame(), List.of());

    NaiveWalk naive = new NaiveWalk(lines.layout());
    List<String> flanks = new NaiveFlank(naive, lines.layout()).instances();
    assertThat(derived.advice().stream().map(DerivationProperties::words).toList())
        .isEqualTo(new NaiveAdvice(naive, lines.layout(), lines.frame(), flanks).instances());
    for (Requirement r : derived.advice()) {
      Requirement.PointsToPoints p = (Requirement.PointsToPoints) r;
      seen(p.firstLie() + " and " + p.secondLie(), true);
      seen("of several points of a lever", p.first().size() + p.second().size() > 2);
    }
    seen("layouts with advice", !derived.advice().isEmpty());
    seen("layouts with several", derived.advice().size() > 1);
  }

  @Provide
  Arbitrary<RandomDrawing> lines() {
    return Arbitraries.randomValue(RandomLines::of);
  }

  private static void seen(String what, boolean is) {
    SEEN.merge(what, is ? 1 : 0, Integer::sum);
  }

  @AfterContainer
  static void no_case_is_rare() {
    System.out.println("advice on pieces of double line: " + SEEN);
    assertThat(SEEN).hasSize(6);
    assertThat(SEEN.values()).allMatch(n -> n > 0);
  }
}
