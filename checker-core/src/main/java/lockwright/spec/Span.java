package lockwright.spec;

/**
 * Where something is written: a file (path relative to the folder of the spec, with forward
 * slashes), a line and a column, both counted from 1, the column in characters as an editor shows
 * them.
 */
public record Span(String file, int line, int column) implements Comparable<Span> {
  public Span {
    if (file.isBlank() || line < 1 || column < 1) {
      throw new IllegalArgumentException("no such place: " + file + ":" + line + ":" + column);
    }
  }

  @Override
  public int compareTo(Span other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
