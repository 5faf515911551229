package lockwright.proof.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.encode.Encoder;
import lockwright.railway.BoxBuilder;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import org.junit.jupiter.api.Test;

/**
 * That the shortest are never shorter is tried against brute force, wherever random boxes are; here
 * that they are often just as long.
 */
class LandmarksTest {
  private static final TransitionSystem SYSTEM =
      Encoder.whole(
              BoxBuilder.read(Path.of("src", "test", "resources", "boxes", "e6-lever-plate"))
                  .box()
                  .orElseThrow())
          .system();

  private static Landmarks.Fewest fewest(String target) {
    return new Landmarks(SYSTEM)
        .fewest(
            SYSTEM.targets().stream()
                .filter(t -> t.name().equals(target))
                .findFirst()
                .orElseThrow());
  }

  /** Findlay, The Working and Management of an English Railway, p. 74: the plate reads 5, 7, 23. */
  @Test
  void a_chain_of_releases_is_counted_whole() {
    Landmarks.Fewest fewest = fewest("lever can be moved: lever 10");
    assertThat(fewest.transitions()).isEqualTo(4);
    assertThat(names(fewest.making()))
        .containsExactlyInAnyOrder("lever 10 N>R", "lever 5 N>R", "lever 7 N>R", "lever 23 N>R");
  }

  @Test
  void a_target_reached_by_making_is_not_counted_for() {
    for (Target target : SYSTEM.targets()) {
      if (!target.makings().isEmpty()) {
        assertThat(new Landmarks(SYSTEM).fewest(target).transitions()).isZero();
      }
    }
  }

  private static Set<String> names(Set<Integer> transitions) {
    List<String> all = SYSTEM.transitions().stream().map(t -> t.name()).toList();
    return transitions.stream().map(all::get).collect(Collectors.toSet());
  }
}
