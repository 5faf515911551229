package lockwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.audit.Played;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.report.json.ResultJson;
import lockwright.report.readback.ReadBack;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/** What a movement does to controlled arms is told, also where no lever of theirs is moved. */
class ControlsInWordsTest {
  private static final Box BOX =
      BoxBuilder.read(Path.of("src", "test", "resources", "boxes", "arms-proved"))
          .box()
          .orElseThrow();
  private static final Working WORKING = Working.parted(BOX);

  private static Event lever(String lever, Position from, Position to) {
    return new Event.LeverMoves(lever, from, to);
  }

  private static Played played() {
    return Played.of(
        WORKING,
        WORKING.beginnings().iterator().next().values(),
        List.of(
            lever("8", Position.N, Position.M),
            lever("8", Position.M, Position.R),
            lever("2", Position.N, Position.M)));
  }

  @Test
  void a_pull_tells_of_the_arm_that_it_puts_on() {
    assertThat(Sequence.of(BOX, played()).told())
        .extracting(Sequence.Told::moved)
        .containsExactly(
            "signal 8 off",
            "signal 2 part-way, taken as off; signal 8 on, held by its control: arm 2 at danger");
  }

  /** The same from the tree of a result, which knows no box. */
  @Test
  void a_result_tells_the_same() throws Exception {
    Box bare =
        new Box(
            BOX.name(),
            BOX.layout(),
            BOX.frame(),
            BOX.locking(),
            BOX.sections(),
            BOX.routes(),
            BOX.notSignalled(),
            BOX.conflicts(),
            BOX.distantPaths(),
            List.of(),
            List.of(),
            BOX.drawing(),
            BOX.controls(),
            List.of(),
            List.of());
    Findings findings = new Findings(bare, new TreeMap<>(), List.of(), Map.of(), "none");
    JsonNode json = new JsonMapper().readTree(ResultJson.bytes(findings));
    JsonNode run =
        new JsonMapper()
            .readTree(
                """
                {"beginning": {"lever 2": "N", "lever 8": "N"},
                 "steps": [
                  {"event": {"kind": "lever", "lever": "8", "from": "N", "to": "M"},
                   "after": {"lever 2": "N", "lever 8": "M"}},
                  {"event": {"kind": "lever", "lever": "8", "from": "M", "to": "R"},
                   "after": {"lever 2": "N", "lever 8": "R"}},
                  {"event": {"kind": "lever", "lever": "2", "from": "N", "to": "M"},
                   "after": {"lever 2": "M", "lever 8": "R"}}]}
                """);
    assertThat(new Movements(new Parts(json)).lines(run))
        .extracting(Movements.Line::moved)
        .containsExactly(
            "signal 8 off",
            "signal 2 part-way, taken as off; signal 8 on, held by its control: arm 2 at danger");
  }

  @Test
  void the_read_back_has_every_lock_and_control() {
    assertThat(ReadBack.csv(BOX))
        .contains("lever lock,7,to leave N,needs arm 2 at danger,")
        .contains("arm controls,,1,\"off only with arm 2 off, arm 3 off\",")
        .contains("arm controls,,8,off only with arm 2 at danger,");
  }

  @Test
  void conditions_are_told_by_their_kind() {
    assertThat(ConditionWords.change("Clear", "track circuit", List.of("a", "b"), false))
        .isEqualTo("Clear: the track circuit of a, b shows occupied");
    assertThat(ConditionWords.change("Accepts", "release", List.of("Holm"), true))
        .isEqualTo("Accepts: Holm gives the release");
    assertThat(ConditionWords.change("Slot", "slot", List.of("Holm"), false))
        .isEqualTo("Slot: Holm takes back the slot");
  }
}
