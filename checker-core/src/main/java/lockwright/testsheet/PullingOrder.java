package lockwright.testsheet;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.Condition;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * How a route is cleared from all levers normal, with fewest movements: whole strokes, and events
 * at instruments.
 */
public record PullingOrder(Route route, Outcome outcome) {

  /** One for each route, in their order. */
  static List<PullingOrder> all(Box box, Working whole, int most) {
    List<State> beginnings = Walks.beginnings(box, whole, most);
    Walks walks = new Walks(box, whole, whole.movements(), most);
    List<PullingOrder> orders = new ArrayList<>();
    for (Requirement requirement : box.requirements()) {
      if (requirement instanceof Requirement.RouteCanBeCleared r) {
        Condition goal = whole.goal(r);
        List<Condition> parts = goal instanceof Condition.All all ? all.parts() : List.of(goal);
        Outcome outcome = walks.shortest(beginnings, parts);
        if (outcome instanceof Outcome.Never && beginnings.size() == most) {
          outcome = new Outcome.NotWithin(0);
        }
        orders.add(new PullingOrder(r.route(), outcome));
      }
    }
    return orders;
  }

  /**
   * What the plate of a lever would read: the levers pulled before its first pull, in order; empty
   * if it is not pulled.
   */
  public List<String> plate(String lever) {
    List<String> before = new ArrayList<>();
    if (outcome instanceof Outcome.Found found) {
      for (Event event : found.walk().events()) {
        if (event instanceof Event.LeverMoves move) {
          if (move.lever().equals(lever)) {
            return before;
          }
          before.add(move.lever());
        }
      }
    }
    return List.of();
  }
}
