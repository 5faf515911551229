package lockwright.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;
import lockwright.railway.locking.Entry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Labels that would break a careless writer stay what they are, even those a reader refuses. */
abstract class HostileLabelsChecks {

  static Stream<String> labels() {
    return Stream.of(
        "\"}], \"passes\": true, \"x\": [{\"",
        "</script><script>alert(1)</script>",
        "]]><!-- &amp; &#34; ' \\ \\u0041 %s ${label}",
        "two\nlines\r\nand\ta tab",
        "turned \u202e round \u2066 and \u200b nothing",
        "a \u2028 line \u2029 end, a bell \u0007 and a nought \u0000",
        "  blanks around \t",
        "beyond the plane: \ud83d\ude82",
        "");
  }

  @ParameterizedTest
  @MethodSource("labels")
  void a_label_survives_as_data(String label) {
    JsonNode json = Results.json(Results.check(junction(label)));
    assertThat(json.get("box").textValue()).isEqualTo("Box " + label);
    List<String> labels = json.findValuesAsText("label");
    assertThat(labels).hasSize(4 + 1 + 2 + 4).allMatch(label::equals);
    assertThat(json.get("locking").findValuesAsText("note")).isNotEmpty().allMatch(label::equals);
    assertThat(json.get("passes").booleanValue()).isFalse();
    assertThat(ResultSchemaChecks.errors(json)).isEmpty();
  }

  /** The junction with its bolt free, so that it does not pass. */
  private static Box junction(String label) {
    Box box = Results.box(BoxBuilder.read(Results.boxes("e1-junction")));
    Layout old = box.layout();
    Layout layout =
        new Layout(
            old.tracks().stream()
                .map(t -> new Track(t.id(), label, t.passenger(), t.at()))
                .toList(),
            old.points().stream()
                .map(
                    p ->
                        new Points(
                            p.id(),
                            label,
                            p.toe(),
                            p.normal(),
                            p.reverse(),
                            p.trap(),
                            p.byHand(),
                            p.at()))
                .toList(),
            old.crossings(),
            old.signals().stream()
                .map(
                    s ->
                        new Signal(
                            s.id(),
                            label,
                            s.stands(),
                            s.into(),
                            s.arm(),
                            s.ways(),
                            s.fixed(),
                            s.at()))
                .toList(),
            old.groundFrames(),
            old.levelCrossings(),
            old.attachments(),
            old.limitsOfShunt());
    return new Box(
        "Box " + label,
        layout,
        new Frame(
            box.frame().levers().stream()
                .map(l -> new Lever(l.id(), label, l.work(), l.at()))
                .toList()),
        box.locking().stream()
            .filter(e -> !e.lever().equals("3"))
            .map(
                e -> new Entry(e.kind(), e.lever(), e.others(), e.when(), e.holds(), label, e.at()))
            .toList(),
        box.sections(),
        box.routes(),
        box.notSignalled(),
        box.conflicts(),
        box.distantPaths(),
        box.requirements());
  }
}
