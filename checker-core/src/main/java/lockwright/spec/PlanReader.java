package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import lockwright.spec.PlanFile.Pair;
import lockwright.spec.form.PlanForm;

/** Reads the form of `plan.yaml`; `docs/spec.md`. */
final class PlanReader {
  private static final Pattern PLUS = Pattern.compile("\\+");
  private static final Pattern INTO = Pattern.compile(">");
  private static final int LONGEST_PAIR = 200;

  private final Problems problems;
  private final Shape shape;

  private PlanReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<PlanFile> read(Node root, Problems problems) {
    PlanReader reader = new PlanReader(problems);
    return reader.shape.fields(root, "the plan", PlanForm.PLAN).map(reader::plan);
  }

  /** Must be written, be it {@code []}: left out by mistake, no bolt would be asked for. */
  private static List<Written> passengerLines(Fields fields) {
    fields.need("passenger");
    return fields.texts("passenger");
  }

  private PlanFile plan(Fields fields) {
    fields.needText("lockwright").ifPresent(this::version);
    Optional<Written> box = fields.needText("box");
    refuseNone(fields, "tracks");
    refuseNone(fields, "signals");
    PlanFile plan =
        new PlanFile(
            box,
            tracks(fields),
            fields.eachOf("joints", node -> pair(node, PLUS, "a joint", "a + b")),
            fields.each("points", this::points),
            fields.each("crossings", this::crossing),
            fields.each("signals", this::signal),
            fields.each("limits", this::limit),
            fields.eachOf("limits of shunt", node -> pair(node, INTO, "a limit of shunt", "a > b")),
            fields.each("ground frames", this::groundFrame),
            fields.each("level crossings", this::levelCrossing),
            passengerLines(fields),
            fields.each("overlaps", this::overlaps));
    names("a box", box.stream().toList(), Function.identity());
    names("a track", plan.tracks(), PlanFile.Track::id);
    names("points", plan.points(), PlanFile.Points::id);
    names("a crossing", plan.crossings(), PlanFile.Crossing::id);
    names("a signal", plan.signals(), PlanFile.Signal::id);
    names("a ground frame", plan.groundFrames(), PlanFile.GroundFrame::id);
    names("a level crossing", plan.levelCrossings(), PlanFile.LevelCrossing::id);
    return plan;
  }

  private void refuseNone(Fields fields, String key) {
    Optional<Node> value = fields.need(key);
    boolean none =
        value.orElse(null) instanceof Node.Sequence list && list.items().isEmpty()
            || value.orElse(null) instanceof Node.Mapping mapping && mapping.fields().isEmpty();
    if (none) {
      problems.add(
          Message.NOTHING_WRITTEN,
          value.get().at(),
          "nothing is written for '" + key + "' of the plan",
          "write at least one here; of a plan without any, nothing is ever proved");
    }
  }

  private void version(Written version) {
    if (!version.text().equals("1")) {
      problems.add(
          Message.PLAN_VERSION,
          version.at(),
          "the spec is of version " + version.quoted() + ", but only version 1 is known",
          "write 'lockwright: 1', or use a release of Lockwright that knows this version");
    }
  }

  private List<PlanFile.Track> tracks(Fields fields) {
    List<PlanFile.Track> tracks =
        fields.get("tracks").orElse(null) instanceof Node.Mapping
            ? fields.each("tracks", this::labelledTrack)
            : fields.eachOf(
                "tracks",
                node -> shape.text(node, "a track").map(id -> new PlanFile.Track(id, "")));
    for (PlanFile.Track track : tracks) {
      if (track.id().text().toLowerCase(Locale.ROOT).equals(PlanFile.TRAP)) {
        problems.add(
            Message.PLAN_NAME,
            track.id().at(),
            "a track cannot be named "
                + track.id().quoted()
                + ", which stands for the leg of trap"
                + " points",
            "give the track another name");
      }
    }
    return tracks;
  }

  private Optional<PlanFile.Track> labelledTrack(Node.Field field) {
    Optional<Written> label =
        shape.text(field.value(), "the label of track " + field.key().quoted());
    return Optional.of(new PlanFile.Track(field.key(), label.map(Written::text).orElse("")));
  }

  private Optional<PlanFile.Points> points(Node.Field field) {
    return shape
        .fields(field.value(), "points " + field.key().quoted(), PlanForm.POINTS)
        .map(
            f ->
                new PlanFile.Points(
                    field.key(),
                    f.label(),
                    f.needText("toe"),
                    f.needText("normal"),
                    f.needText("reverse"),
                    f.word("worked")));
  }

  private Optional<PlanFile.Crossing> crossing(Node.Field field) {
    String thing = "crossing " + field.key().quoted();
    List<Node> ways = shape.list(field.value(), thing);
    if (ways.size() != 2 && field.value() instanceof Node.Sequence) {
      problems.add(
          Message.WRONG_KIND,
          field.value().at(),
          thing + " has " + ways.size() + " ways",
          "write its two ways: [a + b, c + d]");
    }
    if (ways.size() != 2) {
      return Optional.empty();
    }
    return Optional.of(
        new PlanFile.Crossing(
            field.key(),
            pair(ways.get(0), PLUS, "a way of a crossing", "a + b"),
            pair(ways.get(1), PLUS, "a way of a crossing", "a + b")));
  }

  private Optional<PlanFile.Signal> signal(Node.Field field) {
    return shape
        .fields(field.value(), "signal " + field.key().quoted(), PlanForm.SIGNAL)
        .map(
            f ->
                new PlanFile.Signal(
                    field.key(),
                    f.label(),
                    f.need("at").flatMap(n -> pair(n, INTO, "the place of a signal", "a > b")),
                    f.needWord("arm"),
                    f.get("for").isPresent() ? f.needTexts("for") : List.of(),
                    f.word("fixed").filter(w -> w.text().equals("yes"))));
  }

  private Optional<PlanFile.Limit> limit(Node.Field field) {
    return Optional.of(
        new PlanFile.Limit(
            field.key(),
            shape.word(
                field.value(),
                "the limit of track " + field.key().quoted(),
                PlanForm.LIMIT.words())));
  }

  private Optional<PlanFile.Overlaps> overlaps(Node.Field field) {
    String thing = "the overlaps of signal " + field.key().quoted();
    List<List<Written>> all = new ArrayList<>();
    for (Node one : shape.list(field.value(), thing)) {
      String of = "an overlap of signal " + field.key().quoted();
      refuseNoOverlap(one, of);
      List<Written> tracks = shape.texts(one, of);
      if (!tracks.isEmpty()) {
        all.add(tracks);
      }
    }
    refuseNoOverlap(field.value(), thing);
    return Optional.of(new PlanFile.Overlaps(field.key(), all));
  }

  private void refuseNoOverlap(Node node, String thing) {
    if (node instanceof Node.Sequence list && list.items().isEmpty()) {
      problems.add(
          Message.NOTHING_WRITTEN,
          list.at(),
          "nothing is written for " + thing,
          "write each overlap as a list of its tracks: [[a, b]]");
    }
  }

  private Optional<PlanFile.GroundFrame> groundFrame(Node.Field field) {
    return shape
        .fields(field.value(), "ground frame " + field.key().quoted(), PlanForm.GROUND_FRAME)
        .map(
            f ->
                new PlanFile.GroundFrame(
                    field.key(),
                    f.label(),
                    f.needTexts("points"),
                    f.word("released by").isPresent()));
  }

  private Optional<PlanFile.LevelCrossing> levelCrossing(Node.Field field) {
    return shape
        .fields(field.value(), "level crossing " + field.key().quoted(), PlanForm.LEVEL_CROSSING)
        .map(f -> new PlanFile.LevelCrossing(field.key(), f.label(), f.needTexts("tracks")));
  }

  /** The two tracks that a joint is named by. */
  static Optional<Pair> joint(Written name, Problems problems) {
    return new PlanReader(problems).pair(new Node.Scalar(name), PLUS, "a joint", "a + b");
  }

  private Optional<Pair> pair(Node node, Pattern sign, String thing, String form) {
    Optional<Written> text = shape.text(node, thing);
    List<Written> two =
        text.filter(t -> t.text().length() <= LONGEST_PAIR)
            .map(t -> t.split(sign))
            .orElse(List.of());
    if (two.size() == 2 && two.stream().noneMatch(t -> t.text().isEmpty())) {
      return Optional.of(new Pair(two.get(0), two.get(1)));
    }
    text.ifPresent(
        t ->
            problems.add(
                Message.PLAN_PAIR,
                t.at(),
                t.quoted() + " stands for " + thing,
                "name two tracks, so: " + form));
    return Optional.empty();
  }

  private <T> void names(String kind, List<T> things, Function<T, Written> id) {
    Names.check(
        kind,
        things.stream().map(id).toList(),
        Message.PLAN_NAME,
        Message.PLAN_NAMES_ALIKE,
        problems);
  }
}
