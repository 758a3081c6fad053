package org.swathbook.program;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;

/** What is in the tank. */
public record Mix(List<Dose> doses, List<Adjuvant> adjuvants, OptionalDouble gallonsPerAcre) {

  public Mix {
    doses = List.copyOf(doses);
    adjuvants = List.copyOf(adjuvants);
  }

  public static Mix of(List<Dose> doses) {
    return new Mix(doses, List.of(), OptionalDouble.empty());
  }

  /** Other products with the same adjuvants in the same volume. */
  public Mix with(List<Dose> others) {
    return new Mix(others, adjuvants, gallonsPerAcre);
  }

  /** One product more. */
  public Mix plus(Dose more) {
    List<Dose> all = new ArrayList<>(doses);
    all.add(more);
    return with(all);
  }

  /** One product less; of two that are alike the first. */
  public Mix minus(Dose less) {
    List<Dose> rest = new ArrayList<>(doses);
    rest.remove(less);
    return with(rest);
  }

  /** Without a product, however often it is in the tank. */
  public Mix without(ProductId product) {
    return with(doses.stream().filter(d -> !d.product().id().equals(product)).toList());
  }

  /** Whether a product is in the tank. */
  public boolean holds(ProductId product) {
    return doses.stream().anyMatch(d -> d.product().id().equals(product));
  }

  /** All actives in the order of the doses; an active brought twice stands twice. */
  public List<ActiveDose> actives() {
    return doses.stream().flatMap(d -> d.actives().stream()).toList();
  }

  /** All of an active, every product of it added up. */
  public double lbPerAcre(Ingredient active) {
    double sum = 0;
    for (Dose d : doses) {
      for (ActiveDose a : d.actives()) {
        sum += a.ingredient().id().equals(active.id()) ? a.lbPerAcre() : 0;
      }
    }
    return sum;
  }

  /** All actives of a site of action added up. */
  public double lbPerAcre(Site site) {
    double sum = 0;
    for (Dose d : doses) {
      for (ActiveDose a : d.actives()) {
        sum += a.ingredient().site().equals(site) ? a.lbPerAcre() : 0;
      }
    }
    return sum;
  }
}
