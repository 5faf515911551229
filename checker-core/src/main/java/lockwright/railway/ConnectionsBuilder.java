package lockwright.railway;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.spec.FrameFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problem;
import lockwright.spec.Problems;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Makes what lies between levers and what they work, and tells what of it cannot be. */
record ConnectionsBuilder(FrameFile file, SpecFolder spec, Problems problems) {
  static Connections build(FrameFile file) {
    return new Connections(
        file.detections().stream()
            .map(d -> new Detection(d.lever().text(), texts(d.points()), d.lever().at()))
            .toList(),
        texts(file.brokenRods()),
        texts(file.electric()));
  }

  private static List<String> texts(List<Written> written) {
    return written.stream().map(Written::text).toList();
  }

  /**
   * What the plan alone tells.
   *
   * @param byGroundFrame the points that a ground frame works, with its name
   * @param plan all points
   */
  void check(Map<String, Written> byGroundFrame, Collection<PlanFile.Points> plan) {
    List<String> points = plan.stream().map(p -> p.id().text()).toList();
    List<String> byHand = ids(plan, PlanFile.Points::byHand);
    List<String> sprung = ids(plan, PlanFile.Points::sprung);
    for (Written rod : file.brokenRods()) {
      known("a rod breaks of points ", rod, points);
      if (byGroundFrame.containsKey(rod.text())) {
        problems.add(
            Message.ROD_OF_NO_LEVER,
            rod.at(),
            "points "
                + rod.quoted()
                + " are worked by ground frame "
                + byGroundFrame.get(rod.text()).quoted()
                + ", and have no rod from a lever of the box",
            "take them out: points of a ground frame have a position of their own already");
      }
      if (byHand.contains(rod.text())) {
        problems.add(
            Message.ROD_OF_NO_LEVER,
            rod.at(),
            "points " + rod.quoted() + " are worked by hand, and have no rod from a lever",
            "take them out: points worked by hand have a position of their own already");
      }
      if (sprung.contains(rod.text())) {
        problems.add(
            Message.ROD_OF_NO_LEVER,
            rod.at(),
            "points " + rod.quoted() + " are held by a spring, and have no rod from a lever",
            "take them out: a spring that fails is not in the model");
      }
      electrically(rod)
          .ifPresent(
              lever ->
                  problems.add(
                      Message.ROD_OF_NO_LEVER,
                      rod.at(),
                      "points "
                          + rod.quoted()
                          + " are worked electrically by lever "
                          + lever.quoted()
                          + ", and have no rod from it",
                      "take them out: its stroke is checked until the points answer"));
    }
    for (FrameFile.Detection detection : file.detections()) {
      String thing = "lever " + detection.lever().quoted() + " detects points ";
      detection.points().forEach(p -> known(thing, p, points));
      detection.points().stream()
          .filter(p -> sprung.contains(p.text()))
          .forEach(p -> detectsSprung(thing, p));
    }
  }

  private static List<String> ids(
      Collection<PlanFile.Points> points, Predicate<PlanFile.Points> which) {
    return points.stream().filter(which).map(p -> p.id().text()).toList();
  }

  private void detectsSprung(String thing, Written points) {
    problems.add(
        Message.DETECTION_OF_SPRUNG_POINTS,
        points.at(),
        thing + points.quoted() + ", which a spring holds: here they never lie otherwise",
        "take them out: what a detector at sprung points sees is not in the model, and nothing that"
            + " is proved rests on it");
  }

  private Optional<Written> electrically(Written points) {
    return file.levers().stream()
        .filter(
            l ->
                l.work().orElse(null) instanceof FrameFile.OfPoints of
                    && texts(of.points()).contains(points.text()))
        .map(FrameFile.Lever::id)
        .filter(file.electric()::contains)
        .findFirst();
  }

  private void known(String thing, Written points, Collection<String> all) {
    if (!all.contains(points.text()) && spec.isWhole(SpecFolder.PLAN)) {
      problems.add(
          Message.FRAME_UNKNOWN_THING,
          points.at(),
          thing + points.quoted() + ", which are not in plan.yaml",
          Problems.didYouMean(points.text(), all, "add them to plan.yaml"));
    }
  }

  /** What only the routes tell: points that an arm detects are on a route of it. */
  void checkRoutes(Box box) {
    for (FrameFile.Detection detection : file.detections()) {
      Lever lever = box.frame().lever(detection.lever().text());
      String arm = ((Work.OfSignal) lever.work()).signal();
      List<String> passed =
          box.routesOf(arm).stream()
              .filter(r -> box.giving(r).contains(lever))
              .flatMap(r -> r.points().stream())
              .map(PointsOnRoute::points)
              .distinct()
              .sorted()
              .toList();
      detection.points().stream()
          .filter(p -> !passed.contains(p.text()))
          .forEach(p -> offRoute(detection, arm, p, passed));
    }
  }

  private void offRoute(
      FrameFile.Detection detection, String arm, Written points, List<String> passed) {
    problems.add(
        Message.DETECTION_OFF_ROUTE,
        points.at(),
        "lever "
            + detection.lever().quoted()
            + " detects points "
            + points.quoted()
            + ", which are on no route of signal "
            + Problem.quote(arm)
            + " that it is for",
        passed.isEmpty()
            ? "take the detection away: there is no such route over points"
            : "name points on its routes: " + String.join(", ", passed));
  }
}
