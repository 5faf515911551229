package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lockwright.spec.form.FrameForm;

/** Reads the form of `frame.yaml`; `docs/spec.md`. */
final class FrameReader {
  private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,3}[A-Z]?");
  private static final String OUT_OF_USE = "out of use";
  private static final String CLOSING = "closing";
  private static final List<String> WORKS = FrameForm.NAMES_OF_WORKS;
  private static final String ACROSS_ROAD = "across the road";
  private static final String ECONOMICAL = "economical lock";
  private static final String DETECTION = "detection";
  private static final String WORKED = "worked";
  private static final String FAULTS = "faults";
  private static final String BROKEN_RODS = "broken rods";

  private final Problems problems;
  private final Shape shape;
  private final List<FrameFile.Detection> detections = new ArrayList<>();
  private final List<Written> electric = new ArrayList<>();

  private FrameReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static boolean isLeverNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** The number of a lever, or one way of a push-pull lever: 5-pull. */
  static boolean isLever(String text) {
    return isLeverNumber(text.replaceAll("-(pull|push)$", ""));
  }

  static Optional<FrameFile> read(Node root, Problems problems) {
    FrameReader reader = new FrameReader(problems);
    Optional<Fields> fields = reader.shape.fields(root, "the frame", FrameForm.FRAME);
    List<Written> brokenRods =
        fields
            .flatMap(f -> f.get(FAULTS))
            .flatMap(f -> reader.shape.fields(f, "'" + FAULTS + "'", FrameForm.FAULTS))
            .map(f -> f.needTexts(BROKEN_RODS))
            .orElse(List.of());
    return fields.flatMap(f -> f.need("levers")).map(l -> reader.levers(l, brokenRods));
  }

  private FrameFile levers(Node node, List<Written> brokenRods) {
    List<FrameFile.Lever> levers = new ArrayList<>();
    List<Node.Field> fields = shape.named(node, "'levers' of the frame");
    if (fields.isEmpty() && node instanceof Node.Mapping) {
      problems.add(
          Message.NOTHING_WRITTEN, node.at(), "the frame has no lever", "write its levers here");
    }
    if (fields.size() > FrameForm.MOST_LEVERS) {
      problems.add(
          Message.TOO_MANY_LEVERS,
          fields.get(FrameForm.MOST_LEVERS).key().at(),
          "the frame has " + fields.size() + " levers, over the limit of " + FrameForm.MOST_LEVERS,
          "describe one signal box in a spec");
    }
    for (Node.Field field : fields) {
      if (!isLeverNumber(field.key().text())) {
        problems.add(
            Message.LEVER_NUMBER,
            field.key().at(),
            field.key().quoted() + " is not the number of a lever",
            "write a number from 1 to 9999 without leading noughts, perhaps with a capital letter"
                + " after it: 12, 12A");
      }
      if (PushPull.is(field)) {
        new PushPull(problems, shape).ways(field).forEach(way -> levers.add(lever(way)));
      } else {
        levers.add(lever(field));
      }
    }
    return new FrameFile(
        List.copyOf(levers), List.copyOf(detections), brokenRods, List.copyOf(electric));
  }

  private FrameFile.Lever lever(Node.Field field) {
    if (field.value() instanceof Node.Scalar scalar && scalar.written().text().equals("spare")) {
      return new FrameFile.Lever(field.key(), "", Optional.of(new FrameFile.Spare()));
    }
    String thing = "lever " + field.key().quoted();
    List<String> works =
        field.value() instanceof Node.Mapping mapping
            ? mapping.fields().stream().map(f -> f.key().text()).filter(WORKS::contains).toList()
            : List.of();
    if (works.size() != 1) {
      problems.add(
          Message.LEVER_WORK,
          field.key().at(),
          thing
              + (works.isEmpty()
                  ? " works nothing"
                  : " works more than one thing: " + String.join(", ", works)),
          "write one of: " + String.join(", ", WORKS) + "; or the word spare in place of them all");
      return new FrameFile.Lever(field.key(), "", Optional.empty());
    }
    String work = works.get(0);
    Optional<Fields> fields = shape.fields(field.value(), thing, FrameForm.working(work));
    fields.ifPresent(f -> connections(field.key(), f));
    return new FrameFile.Lever(
        field.key(), fields.map(Fields::label).orElse(""), fields.flatMap(f -> work(work, f)));
  }

  /** What lies between the lever and what it works. */
  private void connections(Written lever, Fields fields) {
    if (fields.mayHave(DETECTION) && fields.get(DETECTION).isPresent()) {
      detections.add(new FrameFile.Detection(lever, fields.needTexts(DETECTION)));
    }
    if (fields.mayHave(WORKED)) {
      fields.word(WORKED).ifPresent(w -> electric.add(lever));
    }
  }

  private static Optional<FrameFile.Work> work(String work, Fields fields) {
    return switch (work) {
      case "signal" -> {
        List<Written> ways = fields.get("for").isPresent() ? fields.needTexts("for") : List.of();
        boolean slotted = fields.yes("slotted", false);
        yield fields.text(work).map(s -> new FrameFile.OfSignal(s, ways, slotted));
      }
      case "points" ->
          Optional.of(new FrameFile.OfPoints(fields.needTexts(work), fields.texts(ECONOMICAL)));
      case "bolt" -> {
        boolean in = normallyIn(fields);
        yield Optional.of(new FrameFile.OfBolt(fields.needTexts(work), in));
      }
      case "gates" -> {
        boolean across =
            fields.needWord("normal").filter(w -> w.text().equals(ACROSS_ROAD)).isPresent();
        yield fields.text(work).map(crossing -> new FrameFile.OfGates(crossing, across));
      }
      case "gate lock" -> {
        boolean in = normallyIn(fields);
        yield fields.text(work).map(crossing -> new FrameFile.OfGateLock(crossing, in));
      }
      case CLOSING -> Optional.of(new FrameFile.OfClosing(fields.needTexts(work)));
      case OUT_OF_USE -> fields.text(work).map(was -> new FrameFile.OutOfUse(was.text()));
      case "wickets" -> fields.text(work).map(FrameFile.OfWickets::new);
      default -> {
        boolean held = fields.needYes("held while open");
        yield fields.text(work).map(frame -> new FrameFile.OfRelease(frame, held));
      }
    };
  }

  private static boolean normallyIn(Fields fields) {
    return fields.needWord("normal").filter(w -> w.text().equals("in")).isPresent();
  }
}
