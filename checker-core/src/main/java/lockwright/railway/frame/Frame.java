package lockwright.railway.frame;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * The levers, in order of their numbers; each thing is worked by one lever at most, but for arms
 * (`docs/meaning.md` 2.7).
 */
public record Frame(List<Lever> levers, Connections connections) {
  public Frame {
    levers = List.copyOf(levers);
  }

  /** A frame with a rod or a wire, in order, to everything. */
  public Frame(List<Lever> levers) {
    this(levers, Connections.PLAIN);
  }

  public Lever lever(String id) {
    return levers.stream()
        .filter(l -> l.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("lever " + id));
  }

  /**
   * The one lever that works a signal; none for a fixed distant.
   *
   * @throws IllegalStateException if several do: see {@link #giving}
   */
  public Optional<Lever> ofSignal(String signal) {
    List<Lever> all = giving(signal);
    if (all.size() > 1) {
      throw new IllegalStateException("several levers work signal " + signal);
    }
    return all.stream().findFirst();
  }

  /** The levers that give an arm, in order; none for a fixed distant. */
  public List<Lever> giving(String signal) {
    return levers.stream()
        .filter(l -> l.work() instanceof Work.OfSignal w && w.signal().equals(signal))
        .toList();
  }

  /** Whether the arm is off only while all its levers are over. */
  public boolean slotted(String signal) {
    return giving(signal).stream()
        .anyMatch(l -> l.work() instanceof Work.OfSignal w && w.slotted());
  }

  /** Whether several levers give the arm, each for some of its routes. */
  public boolean dividedAmongLevers(String signal) {
    return giving(signal).stream()
        .anyMatch(l -> l.work() instanceof Work.OfSignal w && !w.ways().isEmpty());
  }

  /** The lever that works points; none for points of a ground frame. */
  public Optional<Lever> ofPoints(String points) {
    return levers.stream()
        .filter(l -> l.work() instanceof Work.OfPoints w && w.points().contains(points))
        .findFirst();
  }

  /** The points whose answer checks the stroke of a lever; mostly none. */
  public List<String> answering(String lever) {
    return connections.electric().contains(lever) && lever(lever).work() instanceof Work.OfPoints w
        ? w.points()
        : List.of();
  }

  /** Whether a lever works points electrically, so that they have a position of their own. */
  public boolean electrically(String points) {
    return ofPoints(points).filter(l -> connections.electric().contains(l.id())).isPresent();
  }

  /** The lever that works points with an economical lock. */
  public Optional<Lever> ofEconomicalLock(String points) {
    return levers.stream()
        .filter(l -> l.work() instanceof Work.OfPoints w && w.economical().contains(points))
        .findFirst();
  }

  /** The lever of its own that works the bolt of points, if they have one. */
  public Optional<Lever> ofBolt(String points) {
    return levers.stream()
        .filter(l -> l.work() instanceof Work.OfBolt w && w.points().contains(points))
        .findFirst();
  }

  /** The lever that gives the release of a ground frame; none, where a token does. */
  public Optional<Lever> ofRelease(String groundFrame) {
    return levers.stream()
        .filter(l -> l.work() instanceof Work.OfRelease w && w.groundFrame().equals(groundFrame))
        .findFirst();
  }

  /** The first closing lever that names both signals, if there is one. */
  public Optional<Lever> closing(String first, String second) {
    return levers.stream()
        .filter(
            l ->
                l.work() instanceof Work.OfClosing c
                    && c.signals().containsAll(List.of(first, second)))
        .findFirst();
  }

  /** The lever that works the gates of a level crossing, or their lock. */
  public Lever ofLevelCrossing(String levelCrossing) {
    return levers.stream()
        .filter(
            l ->
                l.work() instanceof Work.OfGates g && g.levelCrossing().equals(levelCrossing)
                    || l.work() instanceof Work.OfGateLock k
                        && k.levelCrossing().equals(levelCrossing))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("gates of " + levelCrossing));
  }
}
