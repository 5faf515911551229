package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/** The track diagram. */
final class DiagramPicture {
  private DiagramPicture() {}

  static String of(JsonNode result, BoxState state) {
    double y = 20;
    Svg svg =
        new Svg(
            "img",
            "diagram",
            600,
            30 + 20 * result.at("/layout/tracks").size(),
            "Track diagram of " + result.path("box").asText(),
            StateWords.ofRailway(result, state));
    for (JsonNode track : result.at("/layout/tracks")) {
      svg.open("g", "class", "track");
      svg.line("rail", 10, y, 300, y);
      svg.text("name", 310, y + 4, "start", track.get("id").asText());
      svg.close();
      y += 20;
    }
    return svg.end();
  }
}
