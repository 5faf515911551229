package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A lock under ten conditions in sets, as written in a table, does what its words say, read here a
 * second time. (That one lever of a real frame has ten conditions is common practice, no source.)
 */
class ConditionSetsProperties {
  private static final int LEVERS = 12;

  /** Lever 1 locks lever 2 when one of the sets holds. */
  private record Sets(List<List<String>> sets) {
    static Sets random(Random random) {
      List<List<String>> sets = new ArrayList<>(List.of(new ArrayList<>()));
      for (int lever = 3; lever <= LEVERS; lever++) {
        List<String> last = sets.get(sets.size() - 1);
        if (!last.isEmpty() && random.nextInt(3) == 0) {
          sets.add(last = new ArrayList<>());
        }
        last.add(lever + (random.nextBoolean() ? " N" : " R"));
      }
      return new Sets(sets);
    }

    String words() {
      return sets.stream().map(s -> String.join(" and ", s)).collect(Collectors.joining(" or "));
    }

    /** A lever part-way satisfies either condition. */
    boolean hold(Position[] positions) {
      return sets.stream()
          .anyMatch(
              set ->
                  set.stream()
                      .map(c -> c.split(" "))
                      .allMatch(
                          c -> {
                            Position p = positions[Integer.parseInt(c[0])];
                            return p == Position.M || p == Position.valueOf(c[1]);
                          }));
    }
  }

  @Property(tries = 100)
  void lever_1_is_held_just_when_a_set_of_conditions_holds(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    Sets sets = Sets.random(random);
    Working working = Working.parted(BoxBuilder.read(spec(sets.words())).box().orElseThrow());
    Movement pull =
        working.movement(new Event.LeverMoves("1", Position.N, Position.M)).orElseThrow();
    for (int i = 0; i < 200; i++) {
      Position[] positions = new Position[LEVERS + 1];
      int[] values = new int[working.quantities().size()];
      for (int lever = 1; lever <= LEVERS; lever++) {
        positions[lever] = lever == 1 ? Position.N : Position.values()[random.nextInt(3)];
        values[working.quantities().indexOf(Quantity.lever(Integer.toString(lever)))] =
            positions[lever].ordinal();
      }
      boolean held = positions[2] != Position.N && sets.hold(positions);
      assertThat(pull.needs().evaluate(values)).as(sets.words()).isEqualTo(!held);
    }
  }

  /** A line with a signal at each joint. */
  private static Path spec(String when) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "conditions"));
    String tracks =
        IntStream.rangeClosed(0, LEVERS).mapToObj(i -> "t" + i).collect(Collectors.joining(", "));
    StringBuilder plan =
        new StringBuilder("lockwright: 1\nbox: Long Reach\ntracks: [" + tracks + "]\njoints:\n");
    StringBuilder signals = new StringBuilder("signals:\n");
    StringBuilder frame = new StringBuilder("levers:\n");
    for (int i = 1; i <= LEVERS; i++) {
      String a = "t" + (i - 1);
      plan.append("  - " + a + " + t" + i + "\n");
      signals.append("  " + i + ": {at: " + a + " > t" + i + ", arm: stop}\n");
      frame.append("  " + i + ": {signal: " + i + "}\n");
    }
    plan.append(signals).append("limits: {t0: block, t" + LEVERS + ": block}\npassenger: []\n");
    Files.writeString(folder.resolve("plan.yaml"), plan);
    Files.writeString(folder.resolve("frame.yaml"), frame);
    Files.writeString(folder.resolve("locking.csv"), "lever;locks;when\n1;2;" + when + "\n");
    return folder;
  }
}
