package lockwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Span;

/**
 * Lever locks and arm controls for some random boxes: in a fifth of the small ones locks, in a
 * quarter of them, and in more of those with signals into a section, controls, over one condition
 * from outside or two, and over other arms.
 */
final class RandomControls {
  private static final Span HERE = new Span("random", 2, 1);

  private final Box box;
  private final Random random;
  private final List<OutsideCondition> conditions = new ArrayList<>();

  private final List<String> intoSection = new ArrayList<>();

  /**
   * The signals that levers work, those into a section first; one proves only those after it, so
   * that there is no ring.
   */
  private final List<String> signals = new ArrayList<>();

  private RandomControls(Box box, Random random) {
    this.box = box;
    this.random = random;
    for (Requirement requirement : box.requirements()) {
      if (requirement instanceof Requirement.SectionSignalEarned earned) {
        intoSection.add(earned.signal());
      }
    }
    signals.addAll(intoSection);
    for (Lever lever : box.frame().levers()) {
      if (lever.work() instanceof Work.OfSignal work && !signals.contains(work.signal())) {
        signals.add(work.signal());
      }
    }
  }

  static Controls of(Box box, Random random) {
    return new RandomControls(box, random).controls();
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private Controls controls() {
    boolean small = box.frame().levers().size() <= 5;
    boolean locks = small && chance(20);
    boolean arms = small && chance(intoSection.isEmpty() ? 25 : 75);
    if (!locks && !arms) {
      return Controls.NONE;
    }
    conditions.add(condition("a"));
    if (box.sections().isEmpty() && chance(25)) {
      conditions.add(condition("b"));
    }
    List<LeverLock> leverLocks = locks ? leverLocks() : List.of();
    List<ArmControl> armControls = arms ? armControls() : List.of();
    return new Controls(conditions, leverLocks, armControls);
  }

  private OutsideCondition condition(String name) {
    OutsideCondition.Kind kind =
        OutsideCondition.Kind.values()[random.nextInt(OutsideCondition.Kind.values().length)];
    boolean onePull = kind == OutsideCondition.Kind.RELEASE && chance(70);
    return new OutsideCondition(name, kind, List.of("x"), onePull, HERE);
  }

  private List<LeverLock> leverLocks() {
    List<LeverLock> locks = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      if (lever.work().moves() && (locks.isEmpty() || chance(30))) {
        boolean back = chance(30);
        List<Contact> pull = back && chance(60) ? List.of() : contacts(true, signals);
        locks.add(
            new LeverLock(lever.id(), pull, back ? contacts(false, signals) : List.of(), HERE));
      }
    }
    return locks;
  }

  private List<ArmControl> armControls() {
    List<ArmControl> controls = new ArrayList<>();
    for (int i = 0; i < signals.size(); i++) {
      List<Contact> needs = contacts(false, signals.subList(i + 1, signals.size()));
      if (!needs.isEmpty() && (controls.isEmpty() || chance(40))) {
        controls.add(new ArmControl(signals.get(i), needs, HERE));
      }
    }
    return controls;
  }

  /** Some conditions, and some of these arms. */
  private List<Contact> contacts(boolean usesUp, List<String> arms) {
    List<Contact> outside =
        conditions.stream()
            .filter(c -> usesUp || !c.onePull())
            .filter(c -> chance(60))
            .map(c -> (Contact) new Contact.Outside(c.name()))
            .toList();
    List<Contact> proved =
        arms.stream()
            .filter(s -> chance(40))
            .limit(1)
            .map(s -> chance(65) ? new Contact.ArmAtDanger(s) : (Contact) new Contact.ArmOff(s))
            .toList();
    return Stream.concat(outside.stream(), proved.stream()).toList();
  }
}
