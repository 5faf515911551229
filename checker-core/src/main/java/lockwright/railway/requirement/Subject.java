package lockwright.railway.requirement;

import java.util.List;
import java.util.stream.Collectors;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Route;

/**
 * Something that a requirement speaks about, which must be able to come about for a proof of it not
 * to be empty; `docs/meaning.md` 7. {@link #id()} is unique in a box and stable.
 */
public sealed interface Subject {
  String id();

  /** The arm is off, where off is the goal. */
  record SignalOff(String signal) implements Subject {
    @Override
    public String id() {
      return "signal " + signal + " off";
    }
  }

  /** The arm is off, where off is the goal, and one of these routes of it lies. */
  record RouteSignalled(List<Route> routes) implements Subject {
    public RouteSignalled {
      routes = List.copyOf(routes);
    }

    @Override
    public String id() {
      return "signalled: " + routes.stream().map(Route::name).collect(Collectors.joining(" | "));
    }
  }

  /** A bolt of the points is surely in. */
  record Bolted(String points) implements Subject {
    @Override
    public String id() {
      return "points " + points + " bolted";
    }
  }

  /** The points lie neither way. */
  record PartWay(String points) implements Subject {
    @Override
    public String id() {
      return "points " + points + " part-way";
    }
  }

  /** Some of these points lie so, fully. */
  record PointsLie(List<String> points, Lie lie) implements Subject {
    public PointsLie {
      points = List.copyOf(points);
    }

    @Override
    public String id() {
      return "points " + String.join(" or ", points) + (lie == Lie.NORMAL ? " normal" : " reverse");
    }
  }

  /** The lever is fully reversed. */
  record LeverReversed(String lever) implements Subject {
    @Override
    public String id() {
      return "lever " + lever + " reversed";
    }
  }

  /** Some points of the ground frame lie reverse. */
  record FrameOpen(String groundFrame) implements Subject {
    @Override
    public String id() {
      return "ground frame " + groundFrame + " open";
    }
  }

  /** A token of the section is out. */
  record TokenOut(String section) implements Subject {
    @Override
    public String id() {
      return "section " + section + ": a token out";
    }
  }
}
