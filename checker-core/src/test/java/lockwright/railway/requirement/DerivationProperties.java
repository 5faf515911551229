package lockwright.railway.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/** What is derived from a layout is what {@link NaiveWalk} and {@link NaiveInstances} find. */
class DerivationProperties {
  private static final int LAYOUTS = 800;
  private static final TreeMap<String, Integer> SEEN = new TreeMap<>();

  @Property(tries = LAYOUTS, seed = "1889", shrinking = ShrinkingMode.OFF)
  void all_that_is_derived_equals_what_a_naive_walk_finds(@ForAll("drawn") RandomDrawing drawn) {
    Derived derived = Derivation.derive(drawn.layout(), drawn.frame(), drawn.sections());
    NaiveWalk naive = new NaiveWalk(drawn.layout());

    assertThat(derived.routes().stream().map(DerivationProperties::words).toList())
        .isEqualTo(naive.routes().stream().map(NaiveWalk.Found::toString).toList());
    assertThat(derived.routes().stream().map(Route::name).toList()).doesNotHaveDuplicates();
    assertThat(
            derived.notSignalled().stream()
                .map(n -> n.signals() + "" + n.tracks() + words(n.points()))
                .toList())
        .isEqualTo(naive.notSignalled());
    assertThat(
            derived.conflicts().stream()
                .map(
                    c ->
                        c.first().name()
                            + " | "
                            + c.second().name()
                            + " | "
                            + c.possible()
                            + (c.opposed() ? " opposed" : "")
                            + " | "
                            + new TreeSet<>(List.of(c.reason().split(", "))))
                .toList())
        .isEqualTo(naive.conflicts());
    assertThat(derived.distantPaths().stream().map(DerivationProperties::words).toList())
        .isEqualTo(naive.distants());
    List<String> instances =
        NaiveInstances.of(naive, drawn.layout(), drawn.frame(), drawn.sections());
    assertThat(derived.requirements().stream().map(DerivationProperties::words).toList())
        .isEqualTo(instances);
    assertThat(derived.advice().stream().map(DerivationProperties::words).toList())
        .isEqualTo(new NaiveAdvice(naive, drawn.layout(), drawn.frame(), instances).instances());
    count(drawn, derived);
  }

  @Provide
  Arbitrary<RandomDrawing> drawn() {
    return Arbitraries.randomValue(RandomDrawing::of);
  }

  private static String words(Route r) {
    String end =
        r.end() instanceof Route.End.AtSignals s
            ? " signals " + s.signals()
            : r.end() instanceof Route.End.AtLimit l
                ? " " + l.limit()
                : r.end() instanceof Route.End.InSection s
                    ? " section " + s.section()
                    : " limit of shunt";
    TreeSet<String> traps =
        r.flankTraps().stream()
            .map(t -> t.points() + " " + words(t.lie()))
            .collect(Collectors.toCollection(TreeSet::new));
    return r.name()
        + " of "
        + r.signal()
        + ": "
        + r.tracks()
        + words(r.points())
        + r.crossings()
        + end
        + traps;
  }

  private static List<String> words(Collection<PointsOnRoute> points) {
    return points.stream()
        .map(p -> p.points() + " " + words(p.lie()) + (p.facing() ? " facing" : " trailing"))
        .toList();
  }

  private static String words(Lie lie) {
    return lie == Lie.NORMAL ? "N" : "R";
  }

  private static String words(DistantPath path) {
    return path.distant()
        + " "
        + path.posts()
        + path.beyond()
        + path.facing().stream().map(p -> p.points() + " " + words(p.lie())).toList();
  }

  static String words(Requirement requirement) {
    String id = requirement.id();
    if (requirement instanceof Requirement.PointsSet r) {
      return id + " " + names(r.routes());
    }
    if (requirement instanceof Requirement.PointsBolted r) {
      return id + " " + new TreeSet<>(names(r.routes()));
    }
    if (requirement instanceof Requirement.FlankProtected r) {
      TreeSet<String> paths = new TreeSet<>();
      r.flanks().forEach(f -> f.paths().forEach(p -> paths.add(f.route().name() + words(p))));
      return id + " " + paths;
    }
    if (requirement instanceof Requirement.OverlapSet r) {
      return id + " " + new TreeSet<>(r.permitted().stream().map(o -> words(o)).toList());
    }
    if (requirement instanceof Requirement.OverlapsApart r) {
      TreeSet<String> pairs = new TreeSet<>();
      for (Requirement.OverlapsApart.Pair p : r.pairs()) {
        TreeSet<String> apart = new TreeSet<>();
        p.apart().forEach(c -> apart.add(words(c.first()) + " and " + words(c.second())));
        pairs.add(p.first().name() + " | " + p.second().name() + " | " + apart);
      }
      return id + " " + pairs;
    }
    if (requirement instanceof Requirement.NoConflict r) {
      return id + " " + r.conflicts().size() + " " + r.always() + r.closing().orElse("");
    }
    if (requirement instanceof Requirement.PointsToPoints r) {
      TreeSet<String> pairs = new TreeSet<>();
      r.meetings().forEach(c -> pairs.add(c.first().name() + " | " + c.second().name()));
      return id + " " + pairs;
    }
    if (requirement instanceof Requirement.BoxClosed r) {
      return id + " " + r.signals();
    }
    if (requirement instanceof Requirement.DistantFollows r) {
      return id + " " + words(r.path()) + r.passenger();
    }
    if (requirement instanceof Requirement.ReleaseHome r) {
      return id + " " + names(r.routes());
    }
    if (requirement instanceof Requirement.RoadClosed r) {
      return id + " " + names(r.routes());
    }
    return id;
  }

  private static String words(Beyond overlap) {
    return overlap.tracks()
        + ""
        + overlap.points().stream().map(p -> p.points() + " " + words(p.lie())).toList()
        + overlap.crossings();
  }

  private static String words(FlankPath path) {
    return " at "
        + path.joins()
        + path.away().stream().map(p -> p.points() + " " + words(p.lie())).toList()
        + path.guards()
        + path.notEnough();
  }

  private static List<String> names(List<Route> routes) {
    return routes.stream().map(Route::name).toList();
  }

  private static void count(RandomDrawing drawn, Derived derived) {
    seen("with a route", !derived.routes().isEmpty());
    seen(
        "with a facing passage",
        any(derived, r -> r.points().stream().anyMatch(PointsOnRoute::facing)));
    seen(
        "with a trailing passage",
        any(derived, r -> r.points().stream().anyMatch(p -> !p.facing())));
    seen("with a crossing passed", any(derived, r -> !r.crossings().isEmpty()));
    seen("with a flank trap", any(derived, r -> !r.flankTraps().isEmpty()));
    List<FlankPath> flanks =
        derived.requirements().stream()
            .filter(Requirement.FlankProtected.class::isInstance)
            .flatMap(r -> ((Requirement.FlankProtected) r).flanks().stream())
            .flatMap(f -> f.paths().stream())
            .toList();
    List<Requirement.OverlapsApart.Pair> pairs =
        derived.requirements().stream()
            .filter(Requirement.OverlapsApart.class::isInstance)
            .flatMap(r -> ((Requirement.OverlapsApart) r).pairs().stream())
            .toList();
    seen("with overlaps never apart", pairs.stream().anyMatch(p -> p.apart().isEmpty()));
    seen("with overlaps apart by choice", pairs.stream().anyMatch(p -> !p.apart().isEmpty()));
    seen(
        "with a flank guarded by signals alone",
        flanks.stream().anyMatch(p -> !p.guards().isEmpty() && p.away().isEmpty()));
    seen("with a flank guarded by points", flanks.stream().anyMatch(p -> !p.away().isEmpty()));
    seen("with a flank guarded by two points", flanks.stream().anyMatch(p -> p.away().size() > 1));
    seen(
        "with a flank where no signal will do",
        flanks.stream().anyMatch(p -> !p.notEnough().isEmpty()));
    seen(
        "with an open flank without a signal",
        flanks.stream().anyMatch(p -> p.open() && p.notEnough().isEmpty()));
    seen("with two routes to one track", any(derived, r -> r.name().contains(" by ")));
    seen(
        "with a route to a limit of shunt",
        any(derived, r -> r.end() instanceof Route.End.AtLimitOfShunt));
    seen("with a route into a section", any(derived, r -> r.end() instanceof Route.End.InSection));
    seen(
        "with a route over a level crossing",
        derived.requirements().stream().anyMatch(Requirement.RoadClosed.class::isInstance));
    seen(
        "with sprung points trailed through from reverse",
        any(derived, r -> r.points().stream().anyMatch(p -> p.sprung() && p.lie() == Lie.REVERSE)));
    seen(
        "with sprung points passed facing",
        any(derived, r -> r.points().stream().anyMatch(p -> p.sprung() && p.facing())));
    seen(
        "with a conflict over both legs of sprung points",
        derived.conflicts().stream().anyMatch(c -> c.reason().contains("sprung")));
    seen(
        "with a sprung flank trap",
        any(
            derived,
            r -> r.flankTraps().stream().anyMatch(t -> drawn.layout().sprung(t.points()))));
    seen("with a path not signalled", !derived.notSignalled().isEmpty());
    seen("with advice", !derived.advice().isEmpty());
    seen("with a conflict", !derived.conflicts().isEmpty());
    seen(
        "with a conflict by points alone",
        derived.conflicts().stream().anyMatch(c -> !c.possible()));
    seen("with opposed routes", derived.conflicts().stream().anyMatch(Conflict::opposed));
    seen(
        "with opposed routes of a closing lever",
        derived.requirements().stream()
            .anyMatch(r -> r instanceof Requirement.NoConflict n && n.closing().isPresent()));
    seen(
        "with a conflict at a joint",
        derived.conflicts().stream().anyMatch(c -> c.reason().endsWith("(opposed)")));
    seen(
        "with a distant for two posts",
        derived.distantPaths().stream().anyMatch(d -> d.posts().size() > 1));
    seen(
        "with a distant over facing points",
        derived.distantPaths().stream().anyMatch(d -> !d.facing().isEmpty()));
    seen(
        "with a distant diverted",
        derived.distantPaths().stream()
            .anyMatch(
                d ->
                    d.facing().stream()
                        .anyMatch(
                            p ->
                                p.lie() == Lie.REVERSE
                                    && drawn.layout().points(p.points()).trap().isEmpty())));
    derived.requirements().stream()
        .map(Requirement::name)
        .distinct()
        .forEach(n -> seen("with '" + n + "'", true));
    SEEN.merge("routes in all", derived.routes().size(), Integer::sum);
    SEEN.merge("conflicts in all", derived.conflicts().size(), Integer::sum);
    SEEN.merge("requirements in all", derived.requirements().size(), Integer::sum);
  }

  private static boolean any(Derived derived, java.util.function.Predicate<Route> which) {
    return derived.routes().stream().anyMatch(which);
  }

  private static void seen(String what, boolean is) {
    SEEN.merge("layouts " + what, is ? 1 : 0, Integer::sum);
  }

  /** Each case must be met in more than a few layouts, or the comparison says little about it. */
  @AfterContainer
  static void no_case_is_rare() {
    SEEN.forEach((what, times) -> System.out.println(what + ": " + times));
    assertThat(SEEN)
        .allSatisfy((what, times) -> assertThat(times).as(what).isGreaterThan(LAYOUTS / 100));
    assertThat(SEEN.keySet().stream().filter(w -> w.contains("'"))).hasSize(20);
  }
}
