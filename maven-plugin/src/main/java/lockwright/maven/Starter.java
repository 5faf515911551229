package lockwright.maven;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The starter files of a new box.
 *
 * @param files their bytes by path, in the order of writing: the pom.xml last, so that no check can
 *     run on half of them
 */
record Starter(Map<String, byte[]> files) {
  private static final String BOX = "box";
  private static final String SCHEMAS = "box-schemas";

  static Starter ofVersion(String version) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name :
        List.of(
            "plan", "frame", "locking", "sections", "controls", "waivers", "drawing", "lessons")) {
      String schema = name + ".schema.json";
      files.put(SCHEMAS + "/" + schema, packed("/lockwright/specs/" + schema));
    }
    for (String name : List.of("plan.yaml", "frame.yaml", "locking.csv")) {
      files.put(BOX + "/" + name, packed("new-box/box/" + name));
    }
    String pom = new String(packed("new-box/pom.xml"), StandardCharsets.UTF_8);
    files.put("pom.xml", pom.replace("@version@", version).getBytes(StandardCharsets.UTF_8));
    return new Starter(files);
  }

  /** What stands where a file or folder is to be written, and all that stands in the box. */
  List<String> inTheWay(Path folder) throws IOException {
    List<String> inTheWay = new ArrayList<>();
    for (String name : List.of(BOX, SCHEMAS)) {
      Path inner = folder.resolve(name);
      if (there(inner) && !Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS)) {
        inTheWay.add(name);
      } else if (name.equals(BOX) && there(inner)) {
        try (Stream<Path> all = Files.list(inner)) {
          all.map(path -> BOX + "/" + path.getFileName()).forEach(inTheWay::add);
        }
      }
    }
    files.keySet().stream()
        .filter(name -> !name.startsWith(BOX + "/") && there(folder.resolve(name)))
        .forEach(inTheWay::add);
    return inTheWay.stream().sorted().toList();
  }

  /** Writes all, or leaves nothing of its own behind. Overwrites nothing. */
  void write(Path folder) throws IOException {
    Deque<Path> made = new ArrayDeque<>();
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = folder.resolve(file.getKey());
        if (!there(path.getParent())) {
          made.push(Files.createDirectory(path.getParent()));
        }
        made.push(Files.createFile(path));
        Files.write(path, file.getValue());
      }
    } catch (IOException e) {
      for (Path path : made) {
        Files.delete(path);
      }
      throw e;
    }
  }

  private static boolean there(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  private static byte[] packed(String name) throws IOException {
    try (InputStream in = Starter.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new FileNotFoundException("this build lacks its file " + name);
      }
      return in.readAllBytes();
    }
  }
}
