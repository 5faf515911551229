package lockwright.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import lockwright.railway.Box;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Kind;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.section.Section;

/**
 * Some random boxes with other kinds of lever: an arm that two levers give, or two levers made into
 * one push-pull lever ({@code docs/meaning.md} 2.7). Draws nothing from the random numbers of the
 * box, so that all others stay what they are.
 */
final class RandomLevers {
  private static final int MOST = 4;

  private final Box box;
  private final Random random;
  private final List<Lever> levers;
  private final Set<Entry> entries;

  private RandomLevers(Box box, Random random) {
    this.box = box;
    this.random = random;
    levers = new ArrayList<>(box.frame().levers());
    entries = new LinkedHashSet<>(box.locking());
  }

  static Box in(Box box) {
    List<String> words = box.locking().stream().map(Entry::words).toList();
    Random random = new Random(31L * Objects.hash(words) + box.routes().size());
    boolean small = box.frame().levers().size() <= (box.sections().isEmpty() ? MOST : MOST - 1);
    List<Lever> arms =
        box.frame().levers().stream().filter(l -> l.work() instanceof Work.OfSignal).toList();
    int kind = random.nextInt(4);
    if (kind == 0) {
      return new RandomLevers(box, random).pushPull();
    } else if (kind > 2 || !small || arms.isEmpty()) {
      return box;
    }
    return new RandomLevers(box, random).shared(arms.get(random.nextInt(arms.size())));
  }

  /** Two levers made into the ways of one. */
  private Box pushPull() {
    List<Lever> some = new ArrayList<>(levers);
    some.removeIf(l -> !l.work().moves() || l.work() instanceof Work.OfClosing);
    if (some.size() < 2) {
      return box;
    }
    Collections.shuffle(some, random);
    String pull = some.get(0).id();
    String push = some.get(1).id();
    UnaryOperator<String> named =
        l -> l.equals(pull) ? pull + Lever.PULL : l.equals(push) ? pull + Lever.PUSH : l;
    levers.removeIf(l -> l.id().equals(push));
    int at = levers.indexOf(some.get(0));
    levers.set(at, lever(some.get(0), named.apply(pull), some.get(0).work()));
    levers.add(at + 1, lever(some.get(1), named.apply(push), some.get(1).work()));
    entries.clear();
    for (Entry e : box.locking()) {
      List<String> others = e.others().stream().map(named).toList();
      boolean itself = Lever.otherWay(named.apply(e.lever())).filter(others::contains).isPresent();
      if (!itself || e.kind() == Kind.NOT_AGAIN_BEFORE) {
        List<Entry.Condition> when =
            e.when().stream()
                .map(c -> new Entry.Condition(named.apply(c.lever()), c.position()))
                .toList();
        Entry renamed = RandomBox.entry(e.kind(), named.apply(e.lever()), others);
        entries.add(RandomBox.when(renamed, when, e.holds()));
      }
    }
    List<Section> sections =
        box.sections().stream()
            .map(
                s ->
                    s.release()
                        .map(
                            r ->
                                s.withRelease(
                                    new Section.Release(
                                        r.levers().stream().map(named).toList(),
                                        r.lasts(),
                                        r.begins())))
                        .orElse(s))
            .toList();
    return with(sections, named);
  }

  /** Another lever to an arm: each for some of its routes, or slotted. */
  private Box shared(Lever lever) {
    String signal = ((Work.OfSignal) lever.work()).signal();
    List<Route> routes = box.routesOf(signal);
    boolean intoSection = routes.stream().anyMatch(r -> r.end() instanceof Route.End.InSection);
    boolean slotted = routes.isEmpty() || !intoSection && random.nextInt(2) == 0;
    String other = Integer.toString(levers.size() + 1);
    levers.add(lever(lever, other, work(signal, routes, routes.size() - 1, slotted)));
    levers.set(
        box.frame().levers().indexOf(lever),
        lever(lever, lever.id(), work(signal, routes, 0, slotted)));
    for (Entry entry : box.locking()) {
      copy(entry, lever.id(), other, slotted);
    }
    if (!slotted) {
      needs(routes.get(0), lever.id());
      needs(routes.get(routes.size() - 1), other);
    }
    List<Section> sections =
        box.sections().stream().map(s -> releasing(s, lever.id(), other)).toList();
    return with(sections, UnaryOperator.identity());
  }

  private static Work work(String signal, List<Route> routes, int route, boolean slotted) {
    return new Work.OfSignal(
        signal, slotted ? List.of() : List.of(last(routes.get(route).tracks())), slotted);
  }

  private static String last(List<String> tracks) {
    return tracks.get(tracks.size() - 1);
  }

  /** The entry for the other lever too, most times; of slotted ones, one that is locked will do. */
  private void copy(Entry entry, String lever, String other, boolean slotted) {
    if (random.nextInt(100) >= (slotted ? 50 : 85)) {
      return;
    }
    if (entry.kind() == Kind.RELEASED_BY && entry.others().contains(lever)) {
      List<String> others = new ArrayList<>(entry.others());
      if (slotted) {
        others.remove(lever);
      } else {
        entries.remove(entry);
      }
      others.add(other);
      add(entry, entry.lever(), others);
    } else if (entry.others().contains(lever)) {
      add(entry, entry.lever(), List.of(other));
    } else if (entry.lever().equals(lever) && !entry.others().contains(other)) {
      add(entry, other, entry.others());
    }
  }

  private void add(Entry like, String lever, List<String> others) {
    entries.add(
        RandomBox.when(RandomBox.entry(like.kind(), lever, others), like.when(), like.holds()));
  }

  /** The lever is for this route alone, most times locked for it. */
  private void needs(Route route, String lever) {
    for (PointsOnRoute p : route.points()) {
      if (random.nextInt(100) < 85) {
        Kind kind = p.lie() == Lie.REVERSE ? Kind.RELEASED_BY : Kind.LOCKS;
        box.frame()
            .ofPoints(p.points())
            .ifPresent(b -> entries.add(RandomBox.entry(kind, lever, List.of(b.id()))));
      }
    }
  }

  private Section releasing(Section section, String lever, String other) {
    boolean too = section.release().filter(r -> r.levers().contains(lever)).isPresent();
    if (!too || random.nextInt(5) == 0) {
      return section;
    }
    Section.Release old = section.release().get();
    List<String> both = new ArrayList<>(old.levers());
    both.add(other);
    return section.withRelease(new Section.Release(both, old.lasts(), old.begins()));
  }

  private static Lever lever(Lever like, String id, Work work) {
    return new Lever(id, id, work, like.at());
  }

  private Box with(List<Section> sections, UnaryOperator<String> named) {
    Frame frame = new Frame(levers, connections(named));
    Derived derived = Derivation.derive(box.layout(), frame, sections);
    return new Box(
            box.name(),
            box.layout(),
            frame,
            List.copyOf(entries),
            sections,
            derived.routes(),
            derived.notSignalled(),
            derived.conflicts(),
            derived.distantPaths(),
            derived.requirements())
        .exempting(box.exempted())
        .withControls(controls(named));
  }

  private Connections connections(UnaryOperator<String> named) {
    Connections before = box.frame().connections();
    return new Connections(
        before.detections().stream()
            .map(d -> new Detection(named.apply(d.lever()), d.points(), d.at()))
            .toList(),
        before.brokenRods(),
        before.electric().stream().map(named).toList());
  }

  private Controls controls(UnaryOperator<String> named) {
    Controls before = box.controls();
    return new Controls(
        before.conditions(),
        before.leverLocks().stream()
            .map(
                l ->
                    new LeverLock(
                        named.apply(l.lever()), l.leavingNormal(), l.leavingReversed(), l.at()))
            .toList(),
        before.armControls());
  }
}
