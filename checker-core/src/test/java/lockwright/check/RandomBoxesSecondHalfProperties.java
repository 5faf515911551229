package lockwright.check;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

/** The second half of the random boxes. */
@Tag("long")
class RandomBoxesSecondHalfProperties extends RandomBoxes {
  @Property(tries = HALF, seed = "1892", shrinking = ShrinkingMode.OFF)
  void the_flow_agrees_with_brute_force(@ForAll long seed) throws Exception {
    flowAgreesWithBruteForce(seed);
  }
}
