package org.swathbook.plan;

import java.time.LocalDate;
import org.swathbook.program.Pass;
import org.swathbook.season.PreparedPass;

/** A pass of a program with its days in the weather years. */
record StandingPass(Pass pass, PreparedPass prepared) {

  LocalDate planned() {
    return prepared.planned();
  }
}
