package org.swathbook.program;

import java.util.ArrayList;
import java.util.List;

/** The passes of a field in a season, in the order in which they are made. */
public record Program(String name, FieldId field, List<Pass> passes) {

  public Program {
    passes = List.copyOf(passes);
  }

  /** Other passes under the same name on the same field. */
  public Program with(List<Pass> others) {
    return new Program(name, field, others);
  }

  /** Another pass in the place of one. */
  public Program replacing(int place, Pass with) {
    List<Pass> out = new ArrayList<>(passes);
    out.set(place, with);
    return with(out);
  }
}
