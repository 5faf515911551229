package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** A post with its arms, beside the line, on the left of the trains that it is for. */
final class PostShape {
  private final Svg svg;
  private final BoxState state;

  private PostShape(Svg svg, BoxState state) {
    this.svg = svg;
    this.state = state;
  }

  /**
   * Above the line for trains to the right, below it for those to the left: the post, then each
   * arm.
   */
  static List<BiConsumer<Svg, BoxState>> parts(
      Posts posts, boolean above, double left, double right, double y) {
    int way = above ? 1 : -1;
    double foot = above ? left : right;
    if (posts.arms().isEmpty()) {
      return List.of((svg, state) -> new PostShape(svg, state).limitOfShunt(foot, y, way));
    }
    List<BiConsumer<Svg, BoxState>> parts = new ArrayList<>();
    double post = y - way * Posts.STUB;
    double x = foot + way * 6;
    double reach = x;
    for (JsonNode signal : posts.arms()) {
      reach += way * Posts.slot(signal);
    }
    double top = reach - way * Posts.slot(posts.arms().get(0)) / 2;
    String stem =
        "M" + at(foot, y - way * 3) + "L" + at(foot, post) + "L" + at(top + way * 3, post);
    parts.add((svg, state) -> svg.path("stem", stem));
    for (int i = posts.arms().size() - 1; i >= 0; i--) {
      JsonNode signal = posts.arms().get(i);
      double middle = x + way * Posts.slot(signal) / 2;
      parts.add((svg, state) -> new PostShape(svg, state).arm(signal, middle, post, way));
      x += way * Posts.slot(signal);
    }
    return parts;
  }

  private void arm(JsonNode signal, double x, double y, int way) {
    String id = signal.get("id").asText();
    String kind = signal.get("arm").asText();
    BoxState.Place place = state.signal(id);
    int inclined =
        switch (place) {
          case NORMAL -> 0;
          case PART_WAY -> -25;
          case REVERSED -> -50;
        };
    String kinds = "arm " + kind + " " + Said.arm(place);
    svg.open("g", "class", kinds, "data-signal", id);
    svg.title(Said.of(kind + " signal " + id + ", " + Said.arm(place), signal));
    int turn = way == 1 ? inclined : 180 + inclined;
    svg.open("g", "transform", "translate(" + at(x, y) + ") rotate(" + turn + ")");
    switch (kind) {
      case "distant" -> {
        svg.path("blade", "M-4 1V-16L0 -11L4 -16V1Z");
        svg.path("stripe", "M-4 -10.5L0 -6L4 -10.5");
      }
      case "shunting" -> {
        svg.circle("disc", 0, -8, 7);
        svg.path("bar", "M0 -15V-1");
      }
      case "calling-on" -> {
        svg.path("blade", "M-3 1V-10H3V1Z");
        svg.path("stripe", "M0 -9V0");
      }
      default -> {
        svg.path("blade", "M-4 1V-16H4V1Z");
        svg.path("stripe", "M-4 -11H4");
      }
    }
    svg.close();
    double text = way == 1 ? y - Posts.ARM - 4 : y + Posts.ARM + 12;
    svg.text("number", x, text, "middle", Posts.number(signal));
    svg.close();
  }

  private void limitOfShunt(double foot, double y, int way) {
    svg.open("g", "class", "limit-of-shunt");
    svg.title("limit of shunt");
    svg.path("stem", "M" + at(foot, y - way * 3) + "L" + at(foot, y - way * 20));
    svg.rect("board", foot - 4, way == 1 ? y - 20 : y + 12, 8, 8);
    String anchor = way == 1 ? "start" : "end";
    double first = way == 1 ? y - 20 : y + 20;
    svg.text("own", foot + way * 8, first, anchor, "limit of");
    svg.text("own", foot + way * 8, first + 11, anchor, "shunt");
    svg.close();
  }

  private static String at(double x, double y) {
    return Svg.number(x) + " " + Svg.number(y);
  }
}
