package org.swathbook.program;

import java.util.List;

/** The passes of a field in a season, in the order in which they are made. */
public record Program(String name, FieldId field, List<Pass> passes) {

  public Program {
    passes = List.copyOf(passes);
  }
}
