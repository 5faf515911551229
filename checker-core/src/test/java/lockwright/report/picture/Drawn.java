package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Pictures as a strict parser reads them, and where things are in them. */
final class Drawn {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path TESTS = Path.of("src", "test", "resources");

  private static final Map<Path, JsonNode> READ = new ConcurrentHashMap<>();

  private Drawn() {}

  /**
   * The box of each example, and of each spec among the test resources; of boxes with the same
   * plan, one.
   */
  static List<Path> boxes() throws IOException {
    try (Stream<Path> examples = Files.walk(EXAMPLES, 4);
        Stream<Path> tests = Files.walk(TESTS, 3)) {
      return Stream.concat(examples, tests)
          .filter(p -> p.endsWith("plan.yaml"))
          .map(Path::getParent)
          .filter(p -> !p.toString().contains("rejected") && !p.toString().contains("target"))
          .sorted(Comparator.reverseOrder())
          .collect(Collectors.toMap(Drawn::plan, box -> box, (one, other) -> one, TreeMap::new))
          .values()
          .stream()
          .sorted()
          .toList();
    }
  }

  private static String plan(Path box) {
    try {
      return Files.readString(box.resolve("plan.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode station() {
    return result(TESTS.resolve("plans").resolve("station"));
  }

  static JsonNode quillby() {
    return proved("quillby");
  }

  static JsonNode proved(String name) {
    return result(EXAMPLES.resolve("proved").resolve(name).resolve("box"));
  }

  /** Each box is read once; who changes a result takes a copy. */
  static JsonNode result(Path folder) {
    return READ.computeIfAbsent(folder, Drawn::read);
  }

  private static JsonNode read(Path folder) {
    BoxBuilder.Built built = BoxBuilder.read(folder);
    assertThat(built.problems()).as(folder.toString()).isEmpty();
    return result(built.box().orElseThrow());
  }

  /** What a result says of a box, without any verdict. */
  static JsonNode result(Box box) {
    Box bare =
        new Box(
                box.name(),
                box.layout(),
                box.frame(),
                box.locking(),
                box.sections(),
                box.routes(),
                box.notSignalled(),
                box.conflicts(),
                box.distantPaths(),
                List.of())
            .withDrawing(box.drawing())
            .withControls(box.controls());
    try {
      Findings findings = new Findings(bare, new TreeMap<>(), List.of(), Map.of(), "none");
      return new JsonMapper().readTree(ResultJson.bytes(findings));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static List<String> pictures(JsonNode result, Map<String, String> state) {
    return List.of(
        Pictures.diagram(result, state), Pictures.frame(result, state), Pictures.matrix(result));
  }

  static Element parsed(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      return factory
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new AssertionError(svg, e);
    }
  }

  static List<Element> all(Element root, String element) {
    List<Element> found = new ArrayList<>();
    NodeList list = root.getElementsByTagName(element);
    for (int i = 0; i < list.getLength(); i++) {
      found.add((Element) list.item(i));
    }
    return found;
  }

  /** The groups that say what they draw, by an attribute. */
  static List<Element> that(Element root, String attribute) {
    return all(root, "g").stream().filter(g -> g.hasAttribute(attribute)).toList();
  }

  static Element the(Element root, String attribute, String value) {
    List<Element> found =
        that(root, attribute).stream()
            .filter(g -> g.getAttribute(attribute).equals(value))
            .toList();
    assertThat(found).as(attribute + " " + value).hasSize(1);
    return found.get(0);
  }

  static List<String> ids(JsonNode things) {
    List<String> ids = new ArrayList<>();
    things.forEach(t -> ids.add(t.get("id").asText()));
    return ids;
  }

  /** A text and about where it stands, measured by other numbers than the pictures' own. */
  record Label(String text, Rectangle2D box) {}

  static List<Label> labels(Element root) {
    return all(root, "text").stream().map(Drawn::label).toList();
  }

  private static Label label(Element text) {
    String kind = text.getAttribute("class");
    boolean small = List.of("number", "name", "own", "label", "place", "work").contains(kind);
    double size = small ? 11 : 12;
    double width = text.getTextContent().length() * size * (kind.equals("number") ? 0.64 : 0.57);
    double shift =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> -width / 2;
          case "end" -> -width;
          default -> 0;
        };
    double height = 0.74 * size;
    String turned = text.getAttribute("transform");
    if (turned.isEmpty()) {
      double x = Double.parseDouble(text.getAttribute("x"));
      double y = Double.parseDouble(text.getAttribute("y"));
      return new Label(
          text.getTextContent(), new Rectangle2D.Double(x + shift, y - height, width, height));
    }
    String[] at = turned.substring("translate(".length(), turned.indexOf(')')).split(" ");
    double x = Double.parseDouble(at[0]);
    double y = Double.parseDouble(at[1]);
    return new Label(
        text.getTextContent(),
        new Rectangle2D.Double(x - height, y - shift - width, height, width));
  }

  /** The straight parts of each track, by its name. */
  static Map<String, List<Line2D>> rails(Element root) {
    Map<String, List<Line2D>> rails = new TreeMap<>();
    for (Element track : that(root, "data-track")) {
      List<Line2D> lines = new ArrayList<>();
      for (Element path : all(track, "path")) {
        String[] points = path.getAttribute("d").substring(1).split("L");
        for (int i = 1; i < points.length; i++) {
          String[] a = points[i - 1].split(" ");
          String[] b = points[i].split(" ");
          lines.add(
              new Line2D.Double(
                  Double.parseDouble(a[0]),
                  Double.parseDouble(a[1]),
                  Double.parseDouble(b[0]),
                  Double.parseDouble(b[1])));
        }
      }
      rails.put(track.getAttribute("data-track"), lines);
    }
    return rails;
  }

  /** How far from the top a track begins. */
  static double height(Element root, String track) {
    return rails(root).get(track).get(0).getY1();
  }

  /** Two tracks that cross elsewhere than at their ends. */
  static List<String> crossings(Element root) {
    List<String> found = new ArrayList<>();
    Map<String, List<Line2D>> rails = Drawn.rails(root);
    rails.forEach(
        (a, linesOfA) ->
            rails.forEach(
                (b, linesOfB) -> {
                  if (a.compareTo(b) < 0 && linesOfA.stream().anyMatch(l -> cross(l, linesOfB))) {
                    found.add(a + " and " + b);
                  }
                }));
    return found;
  }

  private static boolean cross(Line2D line, List<Line2D> others) {
    return others.stream()
        .anyMatch(
            o ->
                o.intersectsLine(line)
                    && o.getP1().distance(line.getP1()) > 1
                    && o.getP1().distance(line.getP2()) > 1
                    && o.getP2().distance(line.getP1()) > 1
                    && o.getP2().distance(line.getP2()) > 1);
  }

  /** Fails if a label lies on another, on a rail, or beyond the edge. */
  static void readable(String svg) {
    Element root = parsed(svg);
    List<Label> labels = labels(root);
    Map<String, List<Line2D>> rails = rails(root);
    String[] view = root.getAttribute("viewBox").split(" ");
    Rectangle2D whole =
        new Rectangle2D.Double(0, 0, Double.parseDouble(view[2]), Double.parseDouble(view[3]));
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      Label label = labels.get(i);
      for (int j = 0; j < i; j++) {
        if (label.box().intersects(labels.get(j).box())) {
          faults.add(label + " on " + labels.get(j));
        }
      }
      if (!label.text().isEmpty() && !whole.contains(label.box())) {
        faults.add(label + " beyond " + whole);
      }
      rails.forEach(
          (track, lines) -> {
            if (lines.stream().anyMatch(l -> l.intersects(label.box()))) {
              faults.add(label + " on track " + track);
            }
          });
    }
    assertThat(faults).isEmpty();
  }

  /** All text inside an element. */
  static String text(Node element) {
    return element.getTextContent();
  }
}
