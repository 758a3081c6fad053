package org.swathbook.program;

import java.util.List;
import java.util.OptionalDouble;

/** What is in the tank. */
public record Mix(List<Dose> doses, List<Adjuvant> adjuvants, OptionalDouble gallonsPerAcre) {

  public Mix {
    doses = List.copyOf(doses);
    adjuvants = List.copyOf(adjuvants);
  }

  public static Mix of(List<Dose> doses) {
    return new Mix(doses, List.of(), OptionalDouble.empty());
  }

  /** All actives in the order of the doses; an active brought twice stands twice. */
  public List<ActiveDose> actives() {
    return doses.stream().flatMap(d -> d.actives().stream()).toList();
  }
}
