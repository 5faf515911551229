package lockwright.report.lesson;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.audit.Played;
import lockwright.check.Check;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.proof.Knowledge;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.words.Event;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What was found of a box, and the lessons made of it, read strictly as XML. */
record Taught(Findings findings, byte[] result, SortedMap<String, String> pages) {
  private static final Path EXAMPLES = Path.of("..", "examples", "broken");
  private static final Path TESTS = Path.of("src", "test", "resources", "boxes");

  /** The junction without '1 locks 4': broken, and its routes shown. */
  static final Taught JUNCTION = searched(without(box("e1-junction"), "1 locks 4"));

  static Taught of(Findings findings) {
    byte[] result = ResultJson.bytes(findings);
    return new Taught(findings, result, Lessons.of(findings, result, Teaching.NONE).pages());
  }

  /** The lessons of the same findings, with what a trainer has written. */
  Lessons.Outcome with(Teaching teaching) {
    return Lessons.of(findings, result, teaching);
  }

  static Box box(String name) {
    return BoxBuilder.read(TESTS.resolve(name)).box().orElseThrow();
  }

  static Box without(Box box, String entry) {
    return box.withLocking(box.locking().stream().filter(e -> !e.words().equals(entry)).toList());
  }

  static Taught searched(Box box) {
    try {
      return of(
          new Check(Limits.usual(), (job, progress) -> search(job), text -> {})
              .run(box, new TreeMap<>()));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static Found search(Job job) {
    Knowledge known = job.run(progress -> {});
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  /**
   * An example, of which nothing is claimed but that the sequence in its expected.txt breaks a
   * requirement, which is audited.
   *
   * @param given what is not usual in the beginning
   * @param keys the movements of that sequence; a whole stroke may stand for its halves
   */
  static Taught example(
      String folder, String requirement, Map<String, String> given, List<String> keys) {
    return claimed(example(folder), requirement, given, keys);
  }

  static Box example(String folder) {
    return BoxBuilder.read(EXAMPLES.resolve(folder).resolve("box")).box().orElseThrow();
  }

  /** The same of any box. */
  static Taught claimed(Box box, String requirement, Map<String, String> given, List<String> keys) {
    Working working = Working.parted(box);
    State begins =
        StreamSupport.stream(working.beginnings().spliterator(), false)
            .filter(s -> s.values().entrySet().containsAll(given.entrySet()))
            .findFirst()
            .orElseThrow();
    List<Event> events = new ArrayList<>();
    for (String key : keys) {
      for (String half : key.endsWith("N>R") ? List.of("N>M", "M>R") : List.of("")) {
        String wanted = half.isEmpty() ? key : key.replace("N>R", half);
        events.add(
            working.movements().stream()
                .map(Movement::event)
                .filter(e -> e.key().equals(wanted))
                .findFirst()
                .orElseThrow());
      }
    }
    Claim claim = new Claim.Reached(new Run(begins.values(), events), true);
    Claims claims = new Claims(Map.of(requirement, claim), Map.of(), Map.of());
    return of(new Findings(box, new TreeMap<>(), Auditor.audit(box, claims), Map.of(), "by hand"));
  }

  /** A box of which nothing is claimed but that these whole strokes show a possibility. */
  static Taught shown(Box box, String possibility, List<String> keys) {
    Working working = Working.whole(box);
    List<Event> events =
        keys.stream()
            .map(
                key ->
                    working.movements().stream()
                        .map(Movement::event)
                        .filter(e -> e.key().equals(key))
                        .findFirst()
                        .orElseThrow())
            .toList();
    Run run = new Run(working.beginnings().iterator().next().values(), events);
    Claims claims =
        new Claims(Map.of(), Map.of(), Map.of(possibility, new Claim.Reached(run, true)));
    return of(new Findings(box, new TreeMap<>(), Auditor.audit(box, claims), Map.of(), "by hand"));
  }

  /** A box of which nothing is claimed, so that everything is undecided. */
  static Taught unclaimed(Box box) {
    Claims none = new Claims(Map.of(), Map.of(), Map.of());
    return of(new Findings(box, new TreeMap<>(), Auditor.audit(box, none), Map.of(), "nothing"));
  }

  Box box() {
    return findings.box();
  }

  /** The verdicts that have a lesson. */
  List<Audited> taught() {
    return findings.audited().stream().filter(a -> run(a) != null).toList();
  }

  /** The run of a lesson; null where there is none. */
  static Played run(Audited audited) {
    if (audited instanceof Audited.Broken broken) {
      return broken.played();
    }
    boolean route = audited.requirement().name().equals("route can be cleared");
    return route && audited instanceof Audited.Shown shown ? shown.played() : null;
  }

  Document page(Audited audited) {
    return parse(pages.get(FileNames.of(audited.requirement().name(), audited.requirement().id())));
  }

  static Document parse(String page) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("the page is not well formed: " + e.getMessage(), e);
    }
  }

  /** The elements within a node that have this among their classes, in order. */
  static List<Element> ofClass(Document page, String name) {
    return elements(page.getDocumentElement()).stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  static List<Element> elements(Element within) {
    NodeList all = within.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
    return elements;
  }

  static List<Element> elements(Element within, String tag) {
    return elements(within).stream().filter(e -> e.getTagName().equals(tag)).toList();
  }
}
