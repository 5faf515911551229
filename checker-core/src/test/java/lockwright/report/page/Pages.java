package lockwright.report.page;

import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.xml.parsers.DocumentBuilderFactory;
import lockwright.check.Check;
import lockwright.check.EntryTrials;
import lockwright.check.Searcher;
import lockwright.proof.Knowledge;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Connections;
import lockwright.railway.locking.Entry;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.spec.Span;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Results of small boxes, and pages read by a parser of another make, strictly, as XML. */
public final class Pages {
  private static final BoxBuilder.Built JUNCTION = built("e1-junction");

  /** Proved, shown, broken, empty and impossible: a lever is stuck, and an entry is left out. */
  public static final byte[] STUCK = result(stuck(JUNCTION.box().orElseThrow()), Limits.usual());

  /** Hardly looked at. */
  public static final byte[] UNDECIDED = result(JUNCTION.box().orElseThrow(), new Limits(60, 1, 0));

  /** With a token section. */
  public static final byte[] SECTION =
      result(built("calling-on-into-section").box().orElseThrow(), Limits.usual());

  /** A loop with sprung points at either end. */
  public static final byte[] SPRUNG =
      result(built("sprung-points").box().orElseThrow(), Limits.usual());

  /** With gates on a lever and gates with a lock, which one of the signals does not need. */
  public static final byte[] GATES =
      result(built("two-level-crossings").box().orElseThrow(), Limits.usual());

  /** With a frame that is restored only after a token was withdrawn. */
  public static final byte[] STRANDED =
      result(built("restored-by-a-token").box().orElseThrow(), Limits.usual());

  /** With a frame that a way back restores; it passes. */
  public static final byte[] BACK = result(inOrder(), Limits.usual());

  /** A junction of which each entry was left out once. */
  public static final byte[] ENTRIES = entries(JUNCTION.box().orElseThrow());

  /** With a siding under the lock of a token, where a second token can be out. */
  public static final byte[] SIDING =
      result(built("token-siding-without-consent").box().orElseThrow(), Limits.usual());

  /** A junction without detection, where the rod of its points may break. */
  public static final byte[] ROD =
      result(
          built("broken-rod")
              .box()
              .orElseThrow()
              .withConnections(new Connections(List.of(), List.of("4"), List.of())),
          Limits.usual());

  public static final List<byte[]> ALL =
      List.of(STUCK, UNDECIDED, SECTION, GATES, ENTRIES, STRANDED, BACK, SIDING, ROD);

  private Pages() {}

  static BoxBuilder.Built built(String name) {
    return BoxBuilder.read(Path.of("src", "test", "resources", "boxes", name));
  }

  /** The example of points that are not put back, without the entry that holds them. */
  private static Box inOrder() {
    Path example = Path.of("..", "examples", "broken", "points-not-put-back", "box");
    Box box = BoxBuilder.read(example).box().orElseThrow();
    return box.withLocking(box.locking().stream().filter(e -> !e.kind().ofMovement()).toList());
  }

  static byte[] result(Box box, Limits limits) {
    try {
      return ResultJson.bytes(
          new Check(limits, new InThisProcess(), text -> {}).run(box, JUNCTION.digests()));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] entries(Box box) {
    try {
      InThisProcess here = new InThisProcess();
      Findings findings = new Check(Limits.usual(), here, here).run(box, JUNCTION.digests());
      return ResultJson.bytes(new EntryTrials(Limits.usual(), here, here).run(findings));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** In a class of its own: entries are tried by threads, which could not wait for this one. */
  private static final class InThisProcess implements Searcher, Consumer<String> {
    @Override
    public void accept(String progress) {}

    @Override
    public Found search(Job job, Consumer<String> progress) {
      Knowledge known = job.run(progress);
      return new Found(known.verdicts(), known.decidedBy(), "in this process");
    }
  }

  private static Box stuck(Box box) {
    List<Entry> entries = new ArrayList<>(box.locking());
    entries.removeIf(e -> e.words().equals("1 locks 4"));
    Span at = new Span("locking.csv", 99, 1);
    for (Entry.Kind kind : List.of(Entry.Kind.RELEASED_BY, Entry.Kind.LOCKS)) {
      entries.add(new Entry(kind, "2", List.of("1"), List.of(), false, "stuck", at));
    }
    return box.withLocking(entries);
  }

  public static JsonNode json(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** With escapes for all beyond ASCII, so that half a pair of surrogates can be written too. */
  public static byte[] bytes(JsonNode json) {
    try {
      return JsonMapper.builder()
          .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
          .build()
          .writeValueAsBytes(json);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The same tree with every text in it, and every name of a field, changed. */
  public static JsonNode changed(JsonNode node, UnaryOperator<String> change) {
    if (node.isTextual()) {
      return JsonNodeFactory.instance.textNode(change.apply(node.textValue()));
    } else if (node.isArray()) {
      ArrayNode array = JsonNodeFactory.instance.arrayNode();
      node.forEach(n -> array.add(changed(n, change)));
      return array;
    } else if (node.isObject()) {
      ObjectNode object = JsonNodeFactory.instance.objectNode();
      node.properties()
          .forEach(f -> object.set(change.apply(f.getKey()), changed(f.getValue(), change)));
      return object;
    }
    return node;
  }

  public static Document parse(String page) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("the page is not well formed: " + e.getMessage(), e);
    }
  }

  /** All elements, in order. */
  public static List<Element> elements(Document page) {
    NodeList all = page.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
    return elements;
  }

  /** The elements that have this among their classes. */
  public static List<Element> ofClass(Document page, String name) {
    return elements(page).stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  /** The text that a reader sees. */
  public static String text(Document page) {
    return ((Element) page.getElementsByTagName("body").item(0)).getTextContent();
  }

  /** The result with an expectation of an instance, counted, and with the outcome that follows. */
  public static byte[] expecting(byte[] result, String id, String state, String reason) {
    ObjectNode json = (ObjectNode) json(result);
    boolean passes = true;
    for (JsonNode instance : json.get("requirements")) {
      if (instance.get("id").textValue().equals(id)) {
        String verdict = instance.get("verdict").textValue();
        boolean good = List.of("proved", "shown").contains(verdict);
        ((ObjectNode) instance)
            .putObject("expectation")
            .put("kind", "waived")
            .put("verdict", good ? "broken" : verdict)
            .put("reason", reason)
            .put("role", "signal engineer")
            .put("until", "2031-04-30")
            .put("state", state)
            .putObject("at")
            .put("file", "waivers.yaml")
            .put("line", 2)
            .put("column", 3);
      }
      passes &=
          instance.has("expectation")
              ? instance.at("/expectation/state").textValue().equals("holds")
              : List.of("proved", "shown").contains(instance.get("verdict").textValue());
    }
    return bytes(json.put("passes", passes));
  }
}
