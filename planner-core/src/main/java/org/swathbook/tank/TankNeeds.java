package org.swathbook.tank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.Terms;
import org.swathbook.program.Adjuvant;

/**
 * What the labels of all partners ask for together.
 *
 * @param adjuvants one of each kind, in the order in which the partners ask
 * @param gallonsPerAcre the largest least spray volume that is stated; empty when none is
 */
public record TankNeeds(List<Adjuvant> adjuvants, OptionalDouble gallonsPerAcre) {

  /** What is written for an adjuvant whose label names no rate in the catalog. */
  private static final String RATE_OF_THE_LABEL = "as the label says";

  public TankNeeds {
    adjuvants = List.copyOf(adjuvants);
  }

  /**
   * Of the kinds that would do for a need, the first that no partner refuses; a need whose every
   * kind is refused is left out, since nothing that may go into this tank would meet it.
   */
  public static TankNeeds of(List<Terms> partners) {
    Set<AdjuvantKind> refused = new LinkedHashSet<>();
    for (Terms t : partners) {
      t.tank().adjuvantRefused().find().ifPresent(refused::addAll);
    }
    Set<AdjuvantKind> taken = new LinkedHashSet<>();
    List<Adjuvant> adjuvants = new ArrayList<>();
    OptionalDouble volume = OptionalDouble.empty();
    for (Terms t : partners) {
      for (AdjuvantNeed need : t.tank().adjuvantNeeded().find().orElse(List.of())) {
        if (need.anyOf().stream().noneMatch(taken::contains)) {
          need.anyOf().stream()
              .filter(k -> !refused.contains(k))
              .findFirst()
              .ifPresent(
                  k -> {
                    taken.add(k);
                    adjuvants.add(
                        new Adjuvant(k.spelling(), need.rate().orElse(RATE_OF_THE_LABEL)));
                  });
        }
      }
      double least = t.carrierMinGalPerAcre().find().orElse(0.0);
      if (least > volume.orElse(0)) {
        volume = OptionalDouble.of(least);
      }
    }
    return new TankNeeds(adjuvants, volume);
  }
}
