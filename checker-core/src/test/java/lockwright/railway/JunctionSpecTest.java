package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.locking.Entry;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;

/**
 * A published frame, read field by field. Source: Indian Railways Signal Engineering Manual,
 * chapter 12, para 12.26.7(c)(iii)-(iv), figure 1: "1 signal" for the straight, "2 signal" for the
 * diverging way, 3 a facing point lock standing normally unlocked, 4 the facing points; 1 is
 * released by 3 and locks 4, 2 is released by 3 and 4, 3 locks 4 both ways. Names, tracks and
 * limits are invented.
 */
class JunctionSpecTest {
  private final BoxBuilder.Built built = BoxBuilder.read(SpecsOnDisk.JUNCTION);
  private final Box box = built.box().orElseThrow();

  @Test
  void the_table_has_the_published_entries_in_their_order() {
    assertThat(box.locking().stream().map(Entry::words))
        .containsExactly(
            "1 released by 3",
            "1 locks 4",
            "2 released by 3",
            "2 released by 4",
            "3 locks both ways 4");
  }

  @Test
  void each_entry_stands_where_its_lever_is_named_in_the_cell() {
    assertThat(box.locking().stream().map(e -> e.at().toString()))
        .containsExactly(
            "locking.csv:2:3",
            "locking.csv:2:5",
            "locking.csv:3:3",
            "locking.csv:3:6",
            "locking.csv:4:5");
  }

  @Test
  void the_levers_work_what_the_figure_says() {
    assertThat(box.frame().levers().stream().map(Lever::work))
        .containsExactly(
            new Work.OfSignal("1"),
            new Work.OfSignal("2"),
            new Work.OfBolt(List.of("4"), false),
            new Work.OfPoints(List.of("4")));
    assertThat(box.frame().levers().stream().map(Lever::label))
        .containsExactly("Main home", "Branch home", "Bolt of 4", "Junction points");
  }

  @Test
  void the_tracks_are_joined_up() {
    TrackEnd junction = new TrackEnd("junction", 0);
    TrackEnd approach = new TrackEnd("approach", 0);
    assertThat(box.layout().attachments())
        .containsEntry(approach, new Attachment.Joint(junction))
        .containsEntry(junction, new Attachment.Joint(approach))
        .containsEntry(junction.opposite(), new Attachment.AtPoints("4", Leg.TOE))
        .containsEntry(new TrackEnd("main", 0), new Attachment.AtPoints("4", Leg.NORMAL))
        .containsEntry(new TrackEnd("branch", 0), new Attachment.AtPoints("4", Leg.REVERSE))
        .containsEntry(approach.opposite(), new Attachment.AtLimit(Attachment.Limit.BLOCK))
        .containsEntry(new TrackEnd("main", 1), new Attachment.AtLimit(Attachment.Limit.BLOCK))
        .hasSize(8);
    assertThat(box.layout().tracks().stream().map(Track::id))
        .containsExactly("approach", "junction", "main", "branch");
    assertThat(box.layout().tracks()).allMatch(Track::passenger);
  }

  @Test
  void both_arms_stand_on_one_post() {
    assertThat(box.layout().signals().stream().map(Signal::stands).distinct())
        .containsExactly(new TrackEnd("approach", 0));
    assertThat(box.layout().signals().stream().map(Signal::ways))
        .containsExactly(List.of("main"), List.of("branch"));
    assertThat(box.layout().signals())
        .allMatch(s -> s.arm() == Arm.STOP && s.into().equals("junction") && !s.fixed());
  }

  @Test
  void the_points_have_their_legs() {
    assertThat(box.layout().points()).hasSize(1);
    assertThat(box.layout().points("4").toe()).isEqualTo("junction");
    assertThat(box.layout().points("4").normal()).isEqualTo(Optional.of("main"));
    assertThat(box.layout().points("4").reverse()).isEqualTo(Optional.of("branch"));
    assertThat(box.layout().points("4").trap()).isEmpty();
    assertThat(box.layout().points("4").label()).isEqualTo("Junction points");
    assertThat(box.layout().points("4").at()).hasToString("plan.yaml:7:3");
  }

  @Test
  void nothing_else_is_there() {
    assertThat(box.name()).isEqualTo("Alder Fen");
    assertThat(box.sections()).isEmpty();
    assertThat(box.layout().crossings()).isEmpty();
    assertThat(box.layout().groundFrames()).isEmpty();
    assertThat(box.layout().limitsOfShunt()).isEmpty();
    assertThat(built.digests().keySet())
        .isEqualTo(Set.of("plan.yaml", "frame.yaml", "locking.csv"));
  }
}
