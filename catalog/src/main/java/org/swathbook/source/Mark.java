package org.swathbook.source;

/**
 * A place in a file. Lines and columns count from 1; a column counts characters, not bytes.
 *
 * @param file the file as people know it, relative to the folder that is read, with slashes
 */
public record Mark(String file, int line, int column) implements Comparable<Mark> {

  /** The first character of a file, for what concerns the file as a whole. */
  public static Mark startOf(String file) {
    return new Mark(file, 1, 1);
  }

  @Override
  public int compareTo(Mark other) {
    // By hand: a comparator put together of others is made anew at each start of the program, as
    // Java keeps no such thing in its archive.
    int c = file.compareTo(other.file);
    if (c == 0) {
      c = Integer.compare(line, other.line);
    }
    return c != 0 ? c : Integer.compare(column, other.column);
  }

  /** {@code weeds.csv:4:7}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
