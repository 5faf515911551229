package lockwright.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A long single line of the same junction over and over, as spec files: six levers a junction. All
 * of it is invented.
 *
 * <pre>
 *   ... a1 --H1,B1--> t1 --P1-- n1 (U1 against) --- a2 --H2,B2--> t2 --P2-- ...
 *                          \--- r1 (X1 against)
 * </pre>
 */
final class LongLine {
  private LongLine() {}

  /** Writes the files of a box of so many junctions into an empty folder. */
  static Path write(Path folder, int junctions) throws IOException {
    List<String> tracks = new ArrayList<>();
    List<String> joints = new ArrayList<>();
    StringBuilder points = new StringBuilder();
    StringBuilder signals = new StringBuilder();
    StringBuilder limits = new StringBuilder("limits:\n  a1: block\n");
    StringBuilder levers = new StringBuilder("levers:\n");
    StringBuilder table = new StringBuilder("lever;released by;locks;locks both ways\n");
    for (int i = 1; i <= junctions; i++) {
      boolean last = i == junctions;
      for (String track : List.of("a", "t", "n", "r")) {
        tracks.add(track + i);
      }
      joints.add("a" + i + " + t" + i);
      if (!last) {
        joints.add("n" + i + " + a" + (i + 1));
      }
      limits.append("  r").append(i).append(": buffer stop\n");
      points.append("  P%1$d: {toe: t%1$d, normal: n%1$d, reverse: r%1$d}\n".formatted(i));
      signals.append("  H%1$d: {at: a%1$d > t%1$d, arm: stop, for: n%1$d}\n".formatted(i));
      signals.append("  B%1$d: {at: a%1$d > t%1$d, arm: stop, for: r%1$d}\n".formatted(i));
      signals.append("  U%1$d: {at: n%1$d > t%1$d, arm: stop}\n".formatted(i));
      signals.append("  X%1$d: {at: r%1$d > t%1$d, arm: stop}\n".formatted(i));
      int h = 6 * i - 5;
      levers.append("  %d: {signal: H%d}\n".formatted(h, i));
      levers.append("  %d: {signal: B%d}\n".formatted(h + 1, i));
      levers.append("  %d: {signal: U%d}\n".formatted(h + 2, i));
      levers.append("  %d: {signal: X%d}\n".formatted(h + 3, i));
      levers.append("  %d: {points: P%d}\n".formatted(h + 4, i));
      levers.append("  %d: {bolt: P%d, normal: out}\n".formatted(h + 5, i));
      String ahead = last ? "" : ", %d, %d".formatted(h + 8, h + 9);
      table.append("%d;%d;%d, %d, %d%s;\n".formatted(h, h + 5, h + 2, h + 3, h + 4, ahead));
      table.append("%d;%d, %d;%d, %d;\n".formatted(h + 1, h + 4, h + 5, h + 2, h + 3));
      table.append("%d;;%d;%s\n".formatted(h + 2, h + 4, last ? "" : h + 10));
      table.append("%d;%d;;%s\n".formatted(h + 3, h + 4, ""));
      table.append("%d;;;%d\n".formatted(h + 5, h + 4));
    }
    limits.append("  n").append(junctions).append(": block\n");
    Files.writeString(
        folder.resolve("plan.yaml"),
        "lockwright: 1\nbox: Long Line\ntracks: ["
            + String.join(", ", tracks)
            + "]\njoints: ["
            + String.join(", ", joints)
            + "]\npoints:\n"
            + points
            + "signals:\n"
            + signals
            + limits
            + "passenger: ["
            + String.join(", ", tracks)
            + "]\n");
    Files.writeString(folder.resolve("frame.yaml"), levers);
    Files.writeString(folder.resolve("locking.csv"), table);
    return folder;
  }
}
