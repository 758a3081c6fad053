package org.swathbook.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * An active of a tank with all that its products bring.
 *
 * @param formulations codes of the products that bring it, in order
 */
public record TankActive(Ingredient ingredient, List<String> formulations, double kgPerHa) {

  public TankActive {
    formulations = List.copyOf(formulations);
  }

  private record Part(String product, String formulation, ActiveDose active)
      implements Comparable<Part> {
    @Override
    public int compareTo(Part o) {
      int c = product.compareTo(o.product);
      return c != 0 ? c : Double.compare(active.kgPerHa(), o.active.kgPerHa());
    }
  }

  /**
   * The actives of a mix, each once, by site and then by id: the same list, to the last bit, in
   * whatever order the products were named.
   */
  public static List<TankActive> of(Mix mix) {
    SortedMap<String, List<Part>> parts = new TreeMap<>();
    for (Dose dose : mix.doses()) {
      for (ActiveDose a : dose.actives()) {
        parts
            .computeIfAbsent(a.ingredient().id().value(), k -> new ArrayList<>())
            .add(new Part(dose.product().id().value(), dose.product().formulation(), a));
      }
    }
    List<TankActive> out = new ArrayList<>();
    for (List<Part> of : parts.values()) {
      Collections.sort(of);
      double sum = 0;
      TreeSet<String> formulations = new TreeSet<>();
      for (Part p : of) {
        sum += p.active().kgPerHa();
        formulations.add(p.formulation());
      }
      out.add(new TankActive(of.get(0).active().ingredient(), List.copyOf(formulations), sum));
    }
    // They stand by their ids, and those of one site stay so.
    out.sort((a, b) -> a.ingredient().site().compareTo(b.ingredient().site()));
    return List.copyOf(out);
  }
}
