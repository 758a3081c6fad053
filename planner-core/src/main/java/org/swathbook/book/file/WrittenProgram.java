package org.swathbook.book.file;

import java.util.List;
import org.swathbook.program.Program;
import org.swathbook.source.Mark;

/**
 * A program with the places of its passes in the file.
 *
 * @param times where the time of each pass stands, in the order of the passes
 */
public record WrittenProgram(Program program, List<Mark> times) {

  public WrittenProgram {
    times = List.copyOf(times);
    if (times.size() != program.passes().size()) {
      throw new IllegalArgumentException("a place for each pass");
    }
  }
}
