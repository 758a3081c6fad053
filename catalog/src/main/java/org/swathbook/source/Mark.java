package org.swathbook.source;

import java.util.Comparator;

/**
 * A place in a file. Lines and columns count from 1; a column counts characters, not bytes.
 *
 * @param file the file as people know it, relative to the folder that is read, with slashes
 */
public record Mark(String file, int line, int column) implements Comparable<Mark> {

  private static final Comparator<Mark> ORDER =
      Comparator.comparing(Mark::file).thenComparingInt(Mark::line).thenComparingInt(Mark::column);

  /** The first character of a file, for what concerns the file as a whole. */
  public static Mark startOf(String file) {
    return new Mark(file, 1, 1);
  }

  @Override
  public int compareTo(Mark other) {
    return ORDER.compare(this, other);
  }

  /** {@code weeds.csv:4:7}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
