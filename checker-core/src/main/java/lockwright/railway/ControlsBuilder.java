package lockwright.railway;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;
import lockwright.spec.ControlsFile;
import lockwright.spec.ControlsFile.Need;
import lockwright.spec.ControlsFile.Proves;
import lockwright.spec.FrameFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Makes the lever locks and arm controls; `docs/meaning.md` 2.9. */
final class ControlsBuilder {
  private final ControlsFile file;
  private final SpecFolder spec;
  private final Problems problems;
  private final Map<String, ControlsFile.Condition> conditions = new LinkedHashMap<>();
  private final Set<String> needed = new TreeSet<>();

  private ControlsBuilder(ControlsFile file, SpecFolder spec, Problems problems) {
    this.file = file;
    this.spec = spec;
    this.problems = problems;
    file.conditions().forEach(c -> conditions.putIfAbsent(c.name().text(), c));
  }

  /** The controls; only worth having if no problem was told. */
  static Controls build(ControlsFile file, SpecFolder spec, Problems problems) {
    ControlsBuilder builder = new ControlsBuilder(file, spec, problems);
    file.conditions().forEach(builder::check);
    file.leverLocks().forEach(builder::check);
    file.armControls().forEach(builder::check);
    builder.checkAllNeeded();
    new ArmRings(file.armControls(), problems).tell();
    return problems.isEmpty() ? builder.controls() : Controls.NONE;
  }

  private void check(ControlsFile.Condition condition) {
    String kind = condition.kind().map(Written::text).orElse("");
    Optional<PlanFile> plan = spec.plan();
    if (List.of("track circuit", "treadle").contains(kind) && spec.isWhole(SpecFolder.PLAN)) {
      List<String> tracks = plan.orElseThrow().tracks().stream().map(t -> t.id().text()).toList();
      condition.of().stream()
          .filter(t -> !tracks.contains(t.text()))
          .forEach(
              t ->
                  problems.add(
                      Message.CONDITION_UNKNOWN_TRACK,
                      t.at(),
                      "there is no track " + t.quoted(),
                      Problems.didYouMean(t.text(), tracks, "name a track of plan.yaml")));
    }
    if (List.of("release", "slot").contains(kind)) {
      condition.of().stream()
          .filter(
              b -> plan.flatMap(PlanFile::box).filter(n -> n.text().equals(b.text())).isPresent())
          .forEach(
              b ->
                  problems.add(
                      Message.CONDITION_OF_THIS_BOX,
                      b.at(),
                      "the " + kind + " is given by " + b.quoted() + ", which is this box",
                      "name the other box; what levers of this box do to each other is locking"));
    }
  }

  private void check(ControlsFile.LeverLock lock) {
    if (spec.isWhole(SpecFolder.FRAME)) {
      List<FrameFile.Lever> levers = spec.frame().orElseThrow().levers();
      Optional<FrameFile.Lever> known =
          levers.stream().filter(l -> l.id().text().equals(lock.lever().text())).findFirst();
      FrameFile.Work work = known.flatMap(FrameFile.Lever::work).orElse(null);
      if (known.isEmpty()
          || work instanceof FrameFile.Spare
          || work instanceof FrameFile.OutOfUse) {
        problems.add(
            Message.LOCKED_LEVER,
            lock.lever().at(),
            known.isEmpty()
                ? "the frame has no lever " + lock.lever().quoted()
                : "lever " + lock.lever().quoted() + " does not move, and has nothing to lock",
            "name a lever of frame.yaml that works something");
      }
    }
    check(lock.leavingNormal(), true);
    check(lock.leavingReversed(), false);
    check(lock.both(), false);
    checkOnce(Stream.concat(lock.both().stream(), lock.leavingNormal().stream()).toList());
    checkOnce(Stream.concat(lock.both().stream(), lock.leavingReversed().stream()).toList());
  }

  private void check(ControlsFile.ArmControl control) {
    checkSignal(control.signal(), Message.CONTROLLED_SIGNAL);
    check(control.needs(), false);
    checkOnce(control.needs());
  }

  /** An arm that a lever works. */
  private void checkSignal(Written signal, Message unknown) {
    if (!spec.isWhole(SpecFolder.PLAN)) {
      return;
    }
    List<PlanFile.Signal> signals = spec.plan().orElseThrow().signals();
    Optional<PlanFile.Signal> known =
        signals.stream().filter(s -> s.id().text().equals(signal.text())).findFirst();
    if (known.isEmpty()) {
      problems.add(
          unknown,
          signal.at(),
          "there is no signal " + signal.quoted(),
          Problems.didYouMean(
              signal.text(),
              signals.stream().map(s -> s.id().text()).toList(),
              "name a signal of plan.yaml"));
    } else if (known.get().isFixed()) {
      problems.add(
          Message.CONTROLLED_SIGNAL,
          signal.at(),
          "signal " + signal.quoted() + " is fixed, and always at danger",
          "take this away, or name the signal that was meant");
    }
  }

  /**
   * Whether what is needed is there.
   *
   * @param usesUp whether a release for one pull may stand there
   */
  private void check(List<Need> needs, boolean usesUp) {
    for (Need need : needs) {
      if (need.proves() != Proves.CONDITION) {
        checkSignal(need.name(), Message.NEED_UNKNOWN);
        continue;
      }
      needed.add(need.name().text());
      ControlsFile.Condition condition = conditions.get(need.name().text());
      if (condition == null) {
        problems.add(
            Message.NEED_UNKNOWN,
            need.name().at(),
            "there is no condition " + need.name().quoted(),
            Problems.didYouMean(
                need.name().text(),
                conditions.keySet(),
                "add it to the conditions, or write 'arm N at danger' or 'arm N off'"));
      } else if (condition.onePull().isPresent() && !usesUp) {
        problems.add(
            Message.ONE_PULL,
            need.name().at(),
            need.name().quoted() + " is for one pull, and is not used up here",
            "let a lever need it from normal to reverse, or take its 'for' away");
      }
    }
  }

  /** One list may come from two keys; and an arm is not at danger and off at once. */
  private void checkOnce(Collection<Need> needs) {
    Map<String, Need> seen = new LinkedHashMap<>();
    for (Need need : needs) {
      boolean arm = need.proves() != Proves.CONDITION;
      Need earlier = seen.putIfAbsent((arm ? "arm " : "condition ") + need.name().text(), need);
      if (earlier != null && !earlier.written().at().equals(need.written().at())) {
        boolean same = earlier.proves() == need.proves();
        problems.add(
            Message.NEED_TWICE,
            need.written().at(),
            same
                ? need.written().quoted() + " is needed twice for one movement"
                : "arm " + need.name().quoted() + " is needed at danger and off at once",
            "take one of the two away");
      }
    }
  }

  private void checkAllNeeded() {
    for (ControlsFile.Condition condition : file.conditions()) {
      if (!needed.contains(condition.name().text())) {
        problems.add(
            Message.CONDITION_NOT_NEEDED,
            condition.name().at(),
            "nothing needs condition " + condition.name().quoted(),
            "take it away, or name it under the lever locks or the arm controls");
      }
    }
  }

  private Controls controls() {
    return new Controls(
        file.conditions().stream().map(ControlsBuilder::condition).toList(),
        file.leverLocks().stream()
            .map(
                l ->
                    new LeverLock(
                        l.lever().text(),
                        contacts(l.both(), l.leavingNormal()),
                        contacts(l.both(), l.leavingReversed()),
                        l.lever().at()))
            .toList(),
        file.armControls().stream()
            .map(
                c ->
                    new ArmControl(
                        c.signal().text(), contacts(c.needs(), List.of()), c.signal().at()))
            .toList());
  }

  private static OutsideCondition condition(ControlsFile.Condition condition) {
    String kind = condition.kind().orElseThrow().text();
    return new OutsideCondition(
        condition.name().text(),
        OutsideCondition.Kind.valueOf(kind.toUpperCase(Locale.ROOT).replace(' ', '_')),
        condition.of().stream().map(Written::text).toList(),
        condition.onePull().isPresent(),
        condition.name().at());
  }

  private static List<Contact> contacts(List<Need> needs, List<Need> more) {
    return Stream.concat(needs.stream(), more.stream())
        .map(ControlsBuilder::contact)
        .distinct()
        .toList();
  }

  private static Contact contact(Need need) {
    String name = need.name().text();
    return switch (need.proves()) {
      case CONDITION -> new Contact.Outside(name);
      case ARM_AT_DANGER -> new Contact.ArmAtDanger(name);
      case ARM_OFF -> new Contact.ArmOff(name);
    };
  }
}
