package org.swathbook.plan.change;

import java.time.LocalDate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.PreparedPass;

/** A pass of a program with its days in the weather years. */
public record StandingPass(Pass pass, PreparedPass prepared) {

  /** The journal has it: nothing can change it. */
  public boolean made() {
    return pass.at() instanceof Anchor.Made;
  }

  public LocalDate planned() {
    return prepared.planned();
  }
}
