package lockwright.spec;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lockwright.spec.ControlsFile.Need;
import lockwright.spec.ControlsFile.Proves;
import lockwright.spec.form.ControlsForm;

/** Reads the form of `controls.yaml`; `docs/spec.md`. */
final class ControlsReader {
  private static final List<String> KINDS = ControlsForm.KINDS;
  private static final String FOR = "for";
  private static final String FROM_NORMAL = "normal to reverse";
  private static final String FROM_REVERSED = "reverse to normal";
  private static final String BOTH = "both";
  private static final Pattern ARM = Pattern.compile("arm (.+?) (at danger|off)");

  private final Problems problems;
  private final Shape shape;

  private ControlsReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<ControlsFile> read(Node root, Problems problems) {
    ControlsReader reader = new ControlsReader(problems);
    return reader.shape.fields(root, "the controls", ControlsForm.CONTROLS).map(reader::controls);
  }

  private ControlsFile controls(Fields fields) {
    ControlsFile file =
        new ControlsFile(
            fields.each("conditions", this::condition),
            fields.each("lever locks", this::leverLock),
            fields.each("arm controls", this::armControl));
    Names.check(
        "a condition",
        file.conditions().stream().map(ControlsFile.Condition::name).toList(),
        Message.CONDITION_NAME,
        Message.CONDITIONS_ALIKE,
        problems);
    for (ControlsFile.Condition condition : file.conditions()) {
      if (ARM.matcher(condition.name().text()).matches()) {
        problems.add(
            Message.CONDITION_NAME,
            condition.name().at(),
            condition.name().quoted() + " is no name for a condition, but the proving of an arm",
            "take it away: an arm is proved wherever these words are needed, or write another name");
      }
    }
    return file;
  }

  private Optional<ControlsFile.Condition> condition(Node.Field field) {
    String thing = "condition " + field.key().quoted();
    List<String> keys = ControlsForm.CONDITION.names();
    Optional<Fields> fields = shape.fields(field.value(), thing, ControlsForm.CONDITION);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    List<Written> written =
        ((Node.Mapping) field.value()).fields().stream().map(Node.Field::key).toList();
    List<Written> kinds = written.stream().filter(k -> KINDS.contains(k.text())).toList();
    boolean misspelt = !keys.containsAll(written.stream().map(Written::text).toList());
    if (kinds.size() > 1 || (kinds.isEmpty() && !misspelt)) {
      problems.add(
          Message.CONDITION_KIND,
          kinds.isEmpty() ? field.value().at() : kinds.get(1).at(),
          thing + (kinds.isEmpty() ? " is of no kind" : " is of two kinds"),
          "write just one of: " + String.join(", ", KINDS) + "; and what it is read off");
    }
    Optional<Written> kind = kinds.stream().findFirst();
    return Optional.of(
        new ControlsFile.Condition(
            field.key(),
            kind,
            kind.map(k -> of(k.text(), fields.get())).orElse(List.of()),
            onePull(fields.get(), kind)));
  }

  /** Tracks of a track circuit may be several; anything else is one name. */
  private List<Written> of(String kind, Fields fields) {
    List<Written> of =
        kind.equals("track circuit") ? fields.needTexts(kind) : fields.text(kind).stream().toList();
    for (Written name : of) {
      if (!Names.isName(name.text())) {
        problems.add(
            Message.CONDITION_NAME,
            name.at(),
            name.quoted() + " does not name the " + kind,
            "write another: " + Names.RULE);
      }
    }
    return of;
  }

  private Optional<Written> onePull(Fields fields, Optional<Written> kind) {
    Optional<Written> onePull = fields.word(FOR);
    if (onePull.isPresent() && kind.filter(k -> !k.text().equals("release")).isPresent()) {
      problems.add(
          Message.ONE_PULL,
          onePull.get().at(),
          "a " + kind.get().text() + " is not used up by a pull",
          "take 'for' away; only a release of another box is for one pull");
    }
    return onePull;
  }

  private Optional<ControlsFile.LeverLock> leverLock(Node.Field field) {
    String thing = "the lock of lever " + field.key().quoted();
    Optional<Fields> fields = shape.fields(field.value(), thing, ControlsForm.LEVER_LOCK);
    if (field.value() instanceof Node.Mapping mapping && mapping.fields().isEmpty()) {
      problems.add(
          Message.NOTHING_WRITTEN,
          mapping.at(),
          "nothing is written for " + thing,
          "write '"
              + FROM_NORMAL
              + ":', '"
              + FROM_REVERSED
              + ":' or '"
              + BOTH
              + ":' and its needs");
    }
    return fields.map(
        f ->
            new ControlsFile.LeverLock(
                field.key(), needs(f, FROM_NORMAL), needs(f, FROM_REVERSED), needs(f, BOTH)));
  }

  private List<Need> needs(Fields fields, String stroke) {
    return fields.get(stroke).isPresent() ? needs(fields.needTexts(stroke)) : List.of();
  }

  private Optional<ControlsFile.ArmControl> armControl(Node.Field field) {
    String thing = "the control of signal " + field.key().quoted();
    if (field.value() instanceof Node.Sequence list && list.items().isEmpty()) {
      problems.add(
          Message.NOTHING_WRITTEN,
          list.at(),
          "nothing is written for " + thing,
          "name at least one between the brackets");
    }
    return Optional.of(
        new ControlsFile.ArmControl(field.key(), needs(shape.texts(field.value(), thing))));
  }

  private static List<Need> needs(List<Written> texts) {
    return texts.stream().map(ControlsReader::need).toList();
  }

  private static Need need(Written text) {
    Matcher arm = ARM.matcher(text.text());
    if (!arm.matches()) {
      return new Need(Proves.CONDITION, text, text);
    }
    return new Need(
        arm.group(2).equals("off") ? Proves.ARM_OFF : Proves.ARM_AT_DANGER,
        text,
        new Written(arm.group(1), text.placeOf(arm.start(1)), text.asItStands()));
  }
}
