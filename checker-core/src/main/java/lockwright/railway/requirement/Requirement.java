package lockwright.railway.requirement;

import java.util.List;
import java.util.Optional;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Route;

/**
 * One instance of a requirement; `docs/meaning.md` 6 says when it is broken. Carries what it speaks
 * about, never how the apparatus keeps it. {@link #id()} is unique in a box and stable.
 */
public sealed interface Requirement {
  /** The name in the catalogue (`specs/requirements.yaml`): "points set". */
  String name();

  /** What the instance is about, in words: "signal 2". */
  String subject();

  default String id() {
    return name() + ": " + subject();
  }

  /** Whether it is a possibility, shown by a played sequence, rather than safety. */
  default boolean possibility() {
    return false;
  }

  /** What must be able to come about for a proof not to be empty; none for a possibility. */
  List<Subject> speaksAbout();

  /**
   * @param routes those of the arm, or those that the lever is for
   * @param lever one of several levers that give the arm, each for some of its routes
   */
  record PointsSet(String signal, List<Route> routes, Optional<String> lever)
      implements Requirement {
    public PointsSet {
      routes = List.copyOf(routes);
    }

    public PointsSet(String signal, List<Route> routes) {
      this(signal, routes, Optional.empty());
    }

    @Override
    public String name() {
      return "points set";
    }

    @Override
    public String subject() {
      return "signal " + signal + lever.map(l -> ", lever " + l).orElse("");
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(
          lever
              .<Subject>map(Subject.LeverReversed::new)
              .orElseGet(() -> new Subject.SignalOff(signal)));
    }
  }

  /** The routes of the signal that pass the points facing. */
  record PointsBolted(String signal, String points, List<Route> routes) implements Requirement {
    @Override
    public String name() {
      return "points bolted";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", points " + points;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(routes));
    }
  }

  record BoltAndPointsAgree(String points) implements Requirement {
    @Override
    public String name() {
      return "bolt and points agree";
    }

    @Override
    public String subject() {
      return "points " + points;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.Bolted(points), new Subject.PartWay(points));
    }
  }

  record RouteHeld(Route route) implements Requirement {
    @Override
    public String name() {
      return "route held";
    }

    @Override
    public String subject() {
      return "route " + route.name();
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(List.of(route)));
    }
  }

  record PointsHeldInRear(String signal, String points) implements Requirement {
    @Override
    public String name() {
      return "points held in rear";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", points " + points;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(signal));
    }
  }

  /**
   * The arm, and the track from which a vehicle could come into a route of it.
   *
   * @param flanks for each route that it could come into from there, how
   */
  record FlankProtected(String signal, String from, List<Flank> flanks) implements Requirement {
    /** A route, and the flank paths from that track; one or more. */
    public record Flank(Route route, List<FlankPath> paths) {}

    @Override
    public String name() {
      return "flank protected";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", from " + from;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(routes()));
    }

    public List<Route> routes() {
      return flanks.stream().map(Flank::route).toList();
    }

    /** Whether a signal at danger is all, or a part, of what protects it. */
    public boolean bySignals() {
      return flanks.stream().flatMap(f -> f.paths().stream()).anyMatch(p -> !p.guards().isEmpty());
    }
  }

  /**
   * @param conflicts the conflicts between routes of the two
   * @param always whether every pair of routes of the two conflicts
   * @param closing the closing lever that names both arms, if there is one and some of the
   *     conflicts are opposed
   */
  record NoConflict(
      String first,
      String second,
      List<Conflict> conflicts,
      boolean always,
      Optional<String> closing)
      implements Requirement {
    @Override
    public String name() {
      return "no conflict";
    }

    @Override
    public String subject() {
      return "signals " + first + " and " + second;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(first), new Subject.SignalOff(second));
    }
  }

  /** A route, and the overlaps permitted beyond it; one or more. */
  record OverlapSet(Route route, List<Beyond> permitted) implements Requirement {
    @Override
    public String name() {
      return "overlap set";
    }

    @Override
    public String subject() {
      return "route " + route.name();
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(List.of(route)));
    }
  }

  /** Two arms, and the routes of theirs that overlaps keep apart or not; one pair or more. */
  record OverlapsApart(String first, String second, List<Pair> pairs) implements Requirement {
    /**
     * Two routes that are not in conflict, with the overlaps permitted beyond each; none where it
     * needs none.
     *
     * @param apart the choices of overlaps that share nothing
     */
    public record Pair(
        Route first,
        List<Beyond> beyondFirst,
        Route second,
        List<Beyond> beyondSecond,
        List<Choice> apart) {}

    /** An overlap beyond each; without tracks where a route needs none. */
    public record Choice(Beyond first, Beyond second) {}

    @Override
    public String name() {
      return "overlaps apart";
    }

    @Override
    public String subject() {
      return "signals " + first + " and " + second;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(first), new Subject.SignalOff(second));
    }
  }

  /**
   * @param passenger of the path's facing points, those on a passenger line
   */
  record DistantFollows(DistantPath path, List<String> passenger) implements Requirement {
    @Override
    public String name() {
      return "distant follows";
    }

    @Override
    public String subject() {
      return "signal " + path.distant();
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(path.distant()));
    }
  }

  /** The routes of the signal with points of the ground frame. */
  record ReleaseHome(String signal, String groundFrame, List<Route> routes) implements Requirement {
    @Override
    public String name() {
      return "release home";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", ground frame " + groundFrame;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(routes));
    }
  }

  /** The routes of the signal over the level crossing. */
  record RoadClosed(String signal, String levelCrossing, List<Route> routes)
      implements Requirement {
    @Override
    public String name() {
      return "road closed";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", level crossing " + levelCrossing;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.RouteSignalled(routes));
    }
  }

  /** The closing lever, and the signals of its through lines. */
  record BoxClosed(String lever, List<String> signals) implements Requirement {
    public BoxClosed {
      signals = List.copyOf(signals);
    }

    @Override
    public String name() {
      return "box closed";
    }

    @Override
    public String subject() {
      return "lever " + lever;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.LeverReversed(lever));
    }
  }

  record OneTokenOut(String section) implements Requirement {
    @Override
    public String name() {
      return "one token out";
    }

    @Override
    public String subject() {
      return "section " + section;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.TokenOut(section));
    }
  }

  record SectionSignalEarned(String section, String signal) implements Requirement {
    @Override
    public String name() {
      return "section signal earned";
    }

    @Override
    public String subject() {
      return "signal " + signal + ", section " + section;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(signal));
    }
  }

  record SectionSignalsApart(String section, String first, String second) implements Requirement {
    @Override
    public String name() {
      return "section signals apart";
    }

    @Override
    public String subject() {
      return "signals " + first + " and " + second + ", section " + section;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.SignalOff(first), new Subject.SignalOff(second));
    }
  }

  /** The section whose tokens release the ground frame. */
  record SidingLocked(String section, String groundFrame) implements Requirement {
    @Override
    public String name() {
      return "siding locked";
    }

    @Override
    public String subject() {
      return "ground frame " + groundFrame + ", section " + section;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(new Subject.FrameOpen(groundFrame));
    }
  }

  /**
   * Two lots of points, each worked by one lever and in order of the plan, that should not lie so
   * together. It is advice, unless the author asks for it.
   *
   * @param meetings the conflicts between a route over the one and a route over the other that lie
   *     so; one or more, each of which can come about
   */
  record PointsToPoints(
      List<String> first, Lie firstLie, List<String> second, Lie secondLie, List<Conflict> meetings)
      implements Requirement {
    public PointsToPoints {
      first = List.copyOf(first);
      second = List.copyOf(second);
      meetings = List.copyOf(meetings);
    }

    @Override
    public String name() {
      return "points to points";
    }

    @Override
    public String subject() {
      return words(first, firstLie) + ", " + words(second, secondLie);
    }

    /** "points 4 R", "points 10a and 10b N". */
    private static String words(List<String> points, Lie lie) {
      return "points " + String.join(" and ", points) + (lie == Lie.NORMAL ? " N" : " R");
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of(
          new Subject.PointsLie(first, firstLie), new Subject.PointsLie(second, secondLie));
    }
  }

  record RouteCanBeCleared(Route route) implements Requirement {
    @Override
    public String name() {
      return "route can be cleared";
    }

    @Override
    public String subject() {
      return "route " + route.name();
    }

    @Override
    public boolean possibility() {
      return true;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of();
    }
  }

  record LeverCanBeMoved(String lever) implements Requirement {
    @Override
    public String name() {
      return "lever can be moved";
    }

    @Override
    public String subject() {
      return "lever " + lever;
    }

    @Override
    public boolean possibility() {
      return true;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of();
    }
  }

  /**
   * @param levers those that are not spare or out of use, in the order of the frame
   */
  record FrameCanBeRestored(List<String> levers) implements Requirement {
    @Override
    public String name() {
      return "frame can be restored";
    }

    @Override
    public String subject() {
      return "all levers";
    }

    @Override
    public boolean possibility() {
      return true;
    }

    @Override
    public List<Subject> speaksAbout() {
      return List.of();
    }
  }
}
