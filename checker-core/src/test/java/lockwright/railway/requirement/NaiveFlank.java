package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;

/**
 * `docs/meaning.md` 1.10 once more, for the tests: from everywhere that a vehicle may stand or come
 * from, it is sent on as it would run, and each way that ends in the side of a route is kept.
 */
final class NaiveFlank {
  private final NaiveWalk walk;
  private final Layout layout;
  private final Set<String> runOut = new TreeSet<>();

  NaiveFlank(NaiveWalk walk, Layout layout) {
    this.walk = walk;
    this.layout = layout;
    for (NaiveWalk.Found r : walk.routes()) {
      if (Set.of(" BLOCK", " BUFFER_STOP", " PLAN").contains(r.end())) {
        runOut.add(r.tracks().get(r.tracks().size() - 1));
      }
    }
  }

  /** "flank protected: signal 1, from siding [1 to main at points 5[][3][], ...]". */
  List<String> instances() {
    List<String> all = new ArrayList<>();
    for (Signal s : layout.signals()) {
      Map<String, Set<String>> from = new TreeMap<>();
      for (NaiveWalk.Found r : walk.routes()) {
        if (r.signal().equals(s.id())) {
          for (Track t : layout.tracks()) {
            for (int end = 0; end < 2; end++) {
              send(new Way(r, s), t, new TrackEnd(t.id(), end), from);
            }
          }
        }
      }
      for (Track t : layout.tracks()) {
        if (from.containsKey(t.id())) {
          all.add(
              "flank protected: signal " + s.id() + ", from " + t.id() + " " + from.get(t.id()));
        }
      }
    }
    return all;
  }

  private record Way(NaiveWalk.Found route, Signal signal) {
    Set<String> passed() {
      return route.points().stream().map(p -> p.split(" ")[0]).collect(Collectors.toSet());
    }
  }

  private void send(Way way, Track from, TrackEnd leaving, Map<String, Set<String>> found) {
    List<String> arms = arms(leaving);
    Attachment behind = layout.at(leaving.opposite());
    boolean limit = behind instanceof Attachment.AtLimit;
    if (arms.isEmpty() && !limit && !(behind instanceof Attachment.InSection)) {
      return;
    }
    for (List<NaiveWalk.Edge> run : runs(way, leaving, List.of())) {
      TrackEnd last = run.isEmpty() ? leaving : run.get(run.size() - 1).entered().opposite();
      boolean forPassengers = way.signal().arm() != Arm.SHUNTING && passengers(way, last);
      boolean goods = forPassengers && !from.passenger();
      boolean out =
          limit
              && !behind.equals(new Attachment.AtLimit(Attachment.Limit.BUFFER_STOP))
              && runOut.contains(from.id());
      if (arms.isEmpty() && out && !goods) {
        continue;
      }
      boolean overSpring =
          run.stream()
              .anyMatch(
                  e -> e.facing() && e.at(2).equals("R") && NaiveWalk.isSprung(layout, e.at(1)));
      if (!arms.isEmpty() && !goods && overSpring) {
        continue;
      }
      List<String> away = new ArrayList<>();
      for (NaiveWalk.Edge edge : run) {
        if (edge.facing()
            && !NaiveWalk.isSprung(layout, edge.at(1))
            && !way.passed().contains(edge.at(1))) {
          away.add(0, edge.at(1) + (edge.at(2).equals("N") ? " R" : " N"));
        }
      }
      found
          .computeIfAbsent(from.id(), f -> new TreeSet<>())
          .add(
              way.route().name()
                  + " at "
                  + joins(last)
                  + away
                  + (goods ? List.of() : arms)
                  + (goods ? arms : List.of()));
    }
  }

  /** Every run on from an end, unhindered, to an end in the side of the route. */
  private List<List<NaiveWalk.Edge>> runs(Way way, TrackEnd leaving, List<NaiveWalk.Edge> so) {
    boolean twice =
        so.stream()
                .limit(Math.max(0, so.size() - 1))
                .anyMatch(e -> e.entered().equals(leaving.opposite()))
            || !so.isEmpty() && so.get(0).left().equals(leaving);
    if (way.route().tracks().contains(leaving.track()) || twice) {
      return List.of();
    }
    if (!so.isEmpty() && !arms(leaving).isEmpty()) {
      return List.of();
    }
    List<List<NaiveWalk.Edge>> all = new ArrayList<>();
    if (sides(way).contains(leaving)) {
      all.add(so);
    }
    for (NaiveWalk.Edge edge : walk.onward(leaving)) {
      boolean across =
          way.route().points().stream()
              .anyMatch(
                  p -> p.split(" ")[0].equals(edge.at(1)) && !p.split(" ")[1].equals(edge.at(2)));
      boolean trap =
          edge.facing()
              && layout.points(edge.at(1)).trap().isPresent()
              && !way.passed().contains(edge.at(1));
      boolean turned = across && !NaiveWalk.isSprung(layout, edge.at(1));
      if (!(edge.facing() && turned) && !trap) {
        all.addAll(
            runs(
                way,
                edge.entered().opposite(),
                Stream.concat(so.stream(), Stream.of(edge)).toList()));
      }
    }
    return all;
  }

  private List<String> arms(TrackEnd leaving) {
    return layout.signals().stream()
        .filter(s -> s.stands().equals(leaving) && s.arm() != Arm.DISTANT)
        .map(Signal::id)
        .toList();
  }

  /** The ends at points and crossings of the route that it does not use. */
  private Set<TrackEnd> sides(Way way) {
    Set<TrackEnd> used =
        way.route().edges().stream()
            .flatMap(e -> Stream.of(e.left(), e.entered()))
            .collect(Collectors.toSet());
    return layout.attachments().keySet().stream()
        .filter(e -> !used.contains(e))
        .filter(
            e ->
                way.route().edges().stream()
                    .anyMatch(
                        r ->
                            !r.over().isEmpty()
                                && joins(e)
                                    .equals(
                                        (r.at(0).equals("p") ? "points " : "crossing ") + r.at(1))))
        .collect(Collectors.toSet());
  }

  private String joins(TrackEnd end) {
    Attachment at = layout.at(end);
    return at instanceof Attachment.AtPoints p
        ? "points " + p.points()
        : at instanceof Attachment.AtCrossing x ? "crossing " + x.crossing() : "";
  }

  /** Whether the points there are on a passenger line, or the way on over the crossing. */
  private boolean passengers(Way way, TrackEnd side) {
    String track =
        layout.at(side) instanceof Attachment.AtPoints p
            ? layout.endAt(p.points(), Leg.TOE).track()
            : way.route().edges().stream()
                .filter(e -> joins(side).equals("crossing " + e.at(1)))
                .map(e -> e.entered().track())
                .findFirst()
                .orElseThrow();
    return layout.track(track).passenger();
  }
}
