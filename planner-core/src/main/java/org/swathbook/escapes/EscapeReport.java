package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.program.Observation;

/**
 * What was seen after a pass, and what to do about it.
 *
 * @param why of the action, one sentence each
 * @param lookAgain empty when no other look is needed
 * @param respray the best first
 * @param beside what can be done without a sprayer, one sentence each
 */
public record EscapeReport(
    Observation seen,
    List<WeedReading> weeds,
    Action action,
    List<String> why,
    Optional<LocalDate> lookAgain,
    SurvivorCost cost,
    List<ResprayOption> respray,
    List<RefusedRespray> refused,
    List<String> beside) {

  public EscapeReport {
    weeds = List.copyOf(weeds);
    why = List.copyOf(why);
    respray = List.copyOf(respray);
    refused = List.copyOf(refused);
    beside = List.copyOf(beside);
  }
}
