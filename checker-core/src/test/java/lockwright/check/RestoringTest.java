package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.worker.Limits;
import org.junit.jupiter.api.Test;

/**
 * Whether the frame can be restored, searched for and audited: on every published case and other
 * box of the tests; the build of the examples looks at those. That a frame which is worked can be
 * put back to normal is common practice, no source; so the frames that their sources print as right
 * must be.
 */
class RestoringTest {
  private static final String ID = "frame can be restored: all levers";

  private static Audited audited(Box box, Limits limits) {
    try {
      Claim claim =
          new Restoration(limits, (job, p) -> Boxes.search(job), p -> {}, box, Encoder.whole(box))
              .claim();
      return Auditor.audit(box, new Claims(Map.of(), Map.of(), Map.of(ID, claim))).stream()
          .filter(a -> a.requirement().id().equals(ID))
          .findFirst()
          .orElseThrow();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> keys(List<Event> events) {
    return events.stream().map(Event::key).toList();
  }

  @Test
  void the_published_cases_are_restored() throws IOException {
    Map<String, Integer> ways = new TreeMap<>();
    for (Path folder : Boxes.all()) {
      if (folder.toString().contains("examples")) {
        continue;
      }
      String name = folder.getFileName().toString();
      Audited audited = audited(Boxes.read(folder), Limits.usual());
      if (name.equals("restored-by-a-token")) { // made so that it is not
        assertThat(audited).as(name).isInstanceOf(Audited.Stranded.class);
      } else {
        assertThat(audited).as(name).isInstanceOf(Audited.Restorable.class);
        ways.put(name, ((Audited.Restorable) audited).ways().size());
      }
    }
    assertThat(ways).hasSizeGreaterThan(8);
    ways.values().removeIf(n -> n == 0);
    assertThat(ways).containsOnlyKeys("every-form");
  }

  /** Common practice, no source: a bolt that stands in is drawn to put back the points. */
  @Test
  void the_bolt_is_drawn_again_to_put_the_points_back() {
    Box stranded = Boxes.example("broken/points-not-put-back");
    List<Entry> right =
        stranded.locking().stream()
            .filter(e -> e.kind() != Entry.Kind.STARTS_ONLY_WITH_NORMAL)
            .toList();
    Audited audited = audited(stranded.withLocking(right), Limits.usual());
    assertThat(((Audited.Restorable) audited).ways())
        .extracting(RestoringTest::keys)
        .containsExactly(List.of("lever 3 N>R", "lever 4 R>N", "lever 3 R>N"));
  }

  @Test
  void an_order_that_keeps_the_bolt_in_leaves_the_points_reversed() {
    Audited audited = audited(Boxes.example("broken/points-not-put-back"), Limits.usual());
    Audited.Stranded stranded = (Audited.Stranded) audited;
    assertThat(keys(stranded.played().run().events()))
        .containsExactly("lever 3 N>R", "lever 4 N>R", "lever 3 R>N");
    assertThat(stranded.helped()).isEmpty();
  }

  /** The frame is stuck only when lever 1 is put back too, but lost as the bolt goes in. */
  @Test
  void the_sequence_ends_with_the_movement_after_which_nothing_helps() {
    Box box = Boxes.example("broken/points-not-put-back");
    List<Entry> entries =
        new ArrayList<>(box.locking().stream().filter(e -> e.lever().equals("3")).toList());
    entries.add(RandomBox.entry(Entry.Kind.RELEASED_BY, "3", List.of("1")));
    Audited audited = audited(box.withLocking(entries), Limits.usual());
    assertThat(keys(((Audited.Stranded) audited).played().run().events()))
        .containsExactly("lever 1 N>R", "lever 3 N>R", "lever 4 N>R", "lever 3 R>N");
  }

  @Test
  void what_others_must_do_is_named() {
    Audited audited = audited(Boxes.test("restored-by-a-token"), Limits.usual());
    Audited.Stranded stranded = (Audited.Stranded) audited;
    assertThat(keys(stranded.played().run().events()))
        .containsExactly("lever 1 N>R", "lever 2 N>R", "lever 1 R>N");
    List<String> helped = keys(stranded.helped().orElseThrow().run().events());
    assertThat(helped)
        .startsWith("lever 1 N>R", "lever 2 N>R", "lever 1 R>N")
        .contains("section Withy to Holm: finish the withdrawal at Withy Moor")
        .endsWith("lever 3 N>R", "lever 3 R>N", "lever 1 N>R", "lever 2 R>N", "lever 1 R>N");
  }

  @Test
  void a_limit_leaves_it_undecided() {
    Audited audited = audited(Boxes.example("broken/points-not-put-back"), new Limits(60, 1, 0));
    assertThat(((Audited.Undecided) audited).reason()).contains("limit met");
  }
}
