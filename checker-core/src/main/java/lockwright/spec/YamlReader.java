package lockwright.spec;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds the located tree of a YAML file from parser events. Of YAML it takes mappings, lists and
 * text; anchors, aliases, merge keys, tags, directives, a second document, a key written twice,
 * deep nesting and an empty file are problems.
 */
final class YamlReader {
  static final int MOST_LEVELS = 10;

  private final String file;
  private final Problems problems;
  private final Parser parser;

  private YamlReader(String file, String text, Problems problems) {
    this.file = file;
    this.problems = problems;
    this.parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
  }

  /** The root of the tree; empty, with problems, if there is no tree. */
  static Optional<Node> read(String file, String text, Problems problems) {
    try {
      return Optional.of(new YamlReader(file, text, problems).document());
    } catch (Stop stop) {
      return Optional.empty();
    } catch (MarkedYAMLException e) {
      Mark mark = e.getProblemMark() != null ? e.getProblemMark() : e.getContextMark();
      Span at = mark == null ? new Span(file, 1, 1) : span(file, mark);
      syntax(at, e.getProblem() == null ? "" : ": " + Problem.quote(e.getProblem()), problems);
      return Optional.empty();
    } catch (YAMLException e) {
      syntax(new Span(file, 1, 1), "", problems);
      return Optional.empty();
    }
  }

  private static void syntax(Span at, String detail, Problems problems) {
    problems.add(
        Message.YAML_SYNTAX,
        at,
        "this is not YAML" + detail,
        "look here and on the line before for a missing colon, bracket, quote or space, or a wrong"
            + " indent");
  }

  private Node document() {
    next(); // start of the stream
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      throw stop(
          Message.NOTHING_WRITTEN,
          new Span(file, 1, 1),
          "nothing is written in the file",
          "write the file as docs/spec.md says, or take it away if it is not needed");
    }
    DocumentStartEvent start = (DocumentStartEvent) next();
    if (start.getVersion() != null || (start.getTags() != null && !start.getTags().isEmpty())) {
      throw stop(
          Message.YAML_TAG, span(start), "the file begins with a % directive", "take it out");
    }
    Node root = node(next(), 1);
    next(); // end of the document
    if (!parser.checkEvent(Event.ID.StreamEnd)) {
      throw stop(
          Message.SECOND_DOCUMENT,
          span(parser.peekEvent()),
          "a second YAML document begins here",
          "keep one document a file");
    }
    return root;
  }

  private Node node(Event event, int level) {
    refuseReferences(event);
    if (event instanceof ScalarEvent scalar) {
      return new Node.Scalar(written(scalar));
    }
    if (level > MOST_LEVELS) {
      throw stop(
          Message.TOO_DEEP,
          span(event),
          "lists and mappings are nested more than " + MOST_LEVELS + " deep",
          "write it as docs/spec.md says; nothing in a spec is nested so deep");
    }
    return event instanceof SequenceStartEvent
        ? sequence(span(event), level)
        : mapping((MappingStartEvent) event, level);
  }

  private Node sequence(Span at, int level) {
    List<Node> items = new ArrayList<>();
    for (Event event = next(); !event.is(Event.ID.SequenceEnd); event = next()) {
      items.add(node(event, level + 1));
    }
    return new Node.Sequence(at, List.copyOf(items));
  }

  private Node mapping(MappingStartEvent start, int level) {
    Map<String, Node.Field> fields = new LinkedHashMap<>();
    for (Event event = next(); !event.is(Event.ID.MappingEnd); event = next()) {
      Node key = node(event, level + 1);
      Node value = node(next(), level + 1);
      if (!(key instanceof Node.Scalar scalar)) {
        problems.add(
            Message.WRONG_KIND,
            key.at(),
            "a list or mapping stands where a name should stand before a colon",
            "write a name, then a colon, then the value");
        continue;
      }
      Written name = scalar.written();
      if (name.text().equals("<<")) {
        throw stop(
            Message.YAML_ALIAS,
            name.at(),
            "'<<' would merge another mapping into this one",
            "write out what should stand here");
      }
      Node.Field earlier = fields.putIfAbsent(name.text(), new Node.Field(name, value));
      if (earlier != null) {
        problems.add(
            Message.KEY_TWICE,
            name.at(),
            name.quoted() + " is written twice, first in line " + earlier.key().at().line(),
            "keep one of the two, or give one another name");
      }
    }
    return new Node.Mapping(span(start), List.copyOf(fields.values()));
  }

  private void refuseReferences(Event event) {
    if (event instanceof AliasEvent || ((NodeEvent) event).getAnchor() != null) {
      throw stop(
          Message.YAML_ALIAS,
          span(event),
          "an anchor (&) or alias (*) stands here",
          "write out what should stand here; if the text itself begins with & or *, put it in"
              + " quotes");
    }
    String tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : ((CollectionStartEvent) event).getTag();
    if (tag != null) {
      throw stop(
          Message.YAML_TAG,
          span(event),
          "a tag (!) stands here",
          "take it out; if the text itself begins with !, put it in quotes");
    }
  }

  private Written written(ScalarEvent event) {
    String text = event.getValue();
    Mark start = event.getStartMark();
    Mark end = event.getEndMark();
    boolean quoted =
        event.getScalarStyle() == ScalarStyle.SINGLE_QUOTED
            || event.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED;
    int width = text.codePointCount(0, text.length()) + (quoted ? 2 : 0);
    boolean asItStands =
        start.getLine() == end.getLine() && end.getColumn() - start.getColumn() == width;
    int shift = asItStands && quoted ? 1 : 0;
    Span at = new Span(file, start.getLine() + 1, start.getColumn() + 1 + shift);
    OptionalInt refused = Characters.firstRefused(text);
    if (refused.isPresent()) {
      Characters.report(text, refused.getAsInt(), at, problems);
    }
    return new Written(text, at, asItStands);
  }

  private Event next() {
    return parser.getEvent();
  }

  private Span span(Event event) {
    return span(file, event.getStartMark());
  }

  private static Span span(String file, Mark mark) {
    return new Span(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private Stop stop(Message message, Span at, String what, String fix) {
    problems.add(message, at, what, fix);
    return new Stop();
  }

  /** Ends the reading of the file, its problem told. */
  private static final class Stop extends RuntimeException {
    Stop() {
      super(null, null, false, false);
    }
  }
}
