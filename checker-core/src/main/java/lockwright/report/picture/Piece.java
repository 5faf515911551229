package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A track, or one of the halves of a track that is cut, between the node on its left and that on
 * its right.
 *
 * @param index its place in the order of the box
 * @param leftPort how it is attached on its left: toe, normal or reverse of points, the way of a
 *     crossing, else empty
 * @param named whether the name of the track stands here
 */
record Piece(
    int index,
    JsonNode track,
    Node left,
    String leftPort,
    Node right,
    String rightPort,
    boolean named) {

  String id() {
    return track.get("id").asText();
  }

  boolean passenger() {
    return track.get("passenger").asBoolean();
  }

  Node at(Side side) {
    return side == Side.LEFT ? left : right;
  }

  String port(Side side) {
    return side == Side.LEFT ? leftPort : rightPort;
  }
}
