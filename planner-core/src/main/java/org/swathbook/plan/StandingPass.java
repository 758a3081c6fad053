package org.swathbook.plan;

import java.time.LocalDate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.PreparedPass;

/** A pass of a program with its days in the weather years. */
record StandingPass(Pass pass, PreparedPass prepared) {

  /** The journal has it: nothing can change it. */
  boolean made() {
    return pass.at() instanceof Anchor.Made;
  }

  LocalDate planned() {
    return prepared.planned();
  }
}
