package lockwright.spec;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import lockwright.spec.DrawingFile.Position;
import lockwright.spec.form.DrawingForm;

/** Reads the form of `drawing.yaml`; `docs/spec.md`. */
final class DrawingReader {
  private static final Pattern NUMBER = Pattern.compile("(0|[1-9][0-9]{0,3})(\\.[0-9]{1,2})?");
  private static final String PLACE = "write how far from the left and how far from the top: ";

  private final Problems problems;
  private final Shape shape;

  private DrawingReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<DrawingFile> read(Node root, Problems problems) {
    DrawingReader reader = new DrawingReader(problems);
    return reader.shape.fields(root, "the drawing", DrawingForm.DRAWING).map(reader::drawing);
  }

  private DrawingFile drawing(Fields fields) {
    return new DrawingFile(
        fields.each("points", named("points")),
        fields.each("crossings", named("crossing")),
        fields.each("joints", this::joint),
        fields.each("ends", named("the end of track")),
        fields.each("tracks", this::level));
  }

  private Function<Node.Field, Optional<DrawingFile.Spot>> named(String kind) {
    return field ->
        position(field.value(), kind + " " + field.key().quoted())
            .map(position -> new DrawingFile.Spot(field.key(), position));
  }

  private Optional<DrawingFile.JointSpot> joint(Node.Field field) {
    Optional<PlanFile.Pair> tracks = PlanReader.joint(field.key(), problems);
    Optional<Position> position = position(field.value(), "joint " + field.key().quoted());
    return tracks.flatMap(
        pair -> position.map(p -> new DrawingFile.JointSpot(field.key(), pair, p)));
  }

  private Optional<DrawingFile.Level> level(Node.Field field) {
    return number(field.value(), "how far down track " + field.key().quoted() + " runs")
        .map(down -> new DrawingFile.Level(field.key(), down));
  }

  private Optional<Position> position(Node node, String thing) {
    List<Node> two = shape.list(node, "the place of " + thing);
    if (node instanceof Node.Sequence && two.size() != 2) {
      problems.add(
          Message.WRONG_KIND,
          node.at(),
          "the place of " + thing + " has " + two.size() + (two.size() == 1 ? " part" : " parts"),
          PLACE + "[12, 3]");
    }
    if (two.size() != 2) {
      return Optional.empty();
    }
    Optional<Double> across = number(two.get(0), "how far across " + thing + " stands");
    Optional<Double> down = number(two.get(1), "how far down " + thing + " stands");
    return across.flatMap(x -> down.map(y -> new Position(x, y, node.at())));
  }

  private Optional<Double> number(Node node, String thing) {
    Optional<Written> text = shape.text(node, thing);
    if (text.isPresent() && !NUMBER.matcher(text.get().text()).matches()) {
      problems.add(
          Message.DRAWING_NUMBER,
          text.get().at(),
          text.get().quoted() + " stands for " + thing,
          "write a number from 0 to 9999.99 without a unit, with a point if it is no whole one: 12"
              + " or 12.5");
      return Optional.empty();
    }
    return text.map(t -> Double.valueOf(t.text()));
  }
}
