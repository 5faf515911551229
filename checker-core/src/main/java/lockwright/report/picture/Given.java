package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A place that the author has given, in his units from the left and from the top.
 *
 * @param across not a number where only the height of a track is given
 * @param at where it is written
 */
record Given(String what, double across, double down, JsonNode at) {}
