package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.List;
import org.swathbook.source.Problems;
import org.swathbook.weather.ObservedDay;

/** One layout in which a station's days are written. */
interface StationReader {

  /** Whether the first lines of a file are of this layout. */
  boolean fits(FirstLines lines);

  /**
   * The days in order of date, each once; what is wrong is added to the problems.
   *
   * @param file name relative to the book
   */
  List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes);
}
