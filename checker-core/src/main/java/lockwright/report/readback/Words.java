package lockwright.report.readback;

import java.util.Collection;
import java.util.Locale;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;

/** How single things are put into words. */
final class Words {
  private Words() {}

  /** Names joined by commas; "none" if there are none. */
  static String list(Collection<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  static String lie(Lie lie) {
    return lie == Lie.NORMAL ? "N" : "R";
  }

  static String arm(Arm arm) {
    return arm.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String passed(PointsOnRoute points) {
    String way = points.facing() ? "facing" : "trailing";
    return points.sprung()
        ? way + ", by the leg " + lie(points.lie()) + "; sprung, need lie no way"
        : lie(points.lie()) + ", " + way;
  }

  static String end(Route.End end) {
    if (end instanceof Route.End.AtSignals signals) {
      return (signals.signals().size() == 1 ? "signal " : "signals ") + list(signals.signals());
    }
    if (end instanceof Route.End.AtLimit limit) {
      return limit.limit().words();
    }
    if (end instanceof Route.End.InSection section) {
      return "section " + section.section();
    }
    return "limit of shunt";
  }
}
