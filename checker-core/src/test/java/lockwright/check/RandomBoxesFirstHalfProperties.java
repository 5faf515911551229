package lockwright.check;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

/** The first half of the random boxes. */
@Tag("long")
class RandomBoxesFirstHalfProperties extends RandomBoxes {
  @Property(tries = HALF, seed = "1889", shrinking = ShrinkingMode.OFF)
  void the_flow_agrees_with_brute_force(@ForAll long seed) throws Exception {
    flowAgreesWithBruteForce(seed);
  }
}
