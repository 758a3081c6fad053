package org.swathbook.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
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

  /** What one product brings of an active. */
  private record Part(Product product, Ingredient ingredient, double kgPerHa)
      implements Comparable<Part> {

    /** Written out, for it is asked for every pass of a long journal. */
    @Override
    public int compareTo(Part o) {
      int c = ingredient.site().compareTo(o.ingredient.site());
      if (c == 0) {
        c = ingredient.id().compareTo(o.ingredient.id());
      }
      if (c == 0) {
        c = product.id().value().compareTo(o.product.id().value());
      }
      return c != 0 ? c : Double.compare(kgPerHa, o.kgPerHa);
    }

    boolean brings(Ingredient other) {
      return ingredient.id().equals(other.id());
    }
  }

  /**
   * The actives of a mix, each once, by site and then by id: the same list, to the last bit, in
   * whatever order the products were named.
   */
  public static List<TankActive> of(Mix mix) {
    List<Part> parts = new ArrayList<>();
    for (Dose dose : mix.doses()) {
      for (ActiveDose a : dose.actives()) {
        parts.add(new Part(dose.product(), a.ingredient(), a.kgPerHa()));
      }
    }
    Collections.sort(parts);
    List<TankActive> out = new ArrayList<>(parts.size());
    int from = 0;
    for (int p = 1; p <= parts.size(); p++) {
      if (p == parts.size() || !parts.get(p).brings(parts.get(from).ingredient)) {
        out.add(of(parts.subList(from, p)));
        from = p;
      }
    }
    return List.copyOf(out);
  }

  private static TankActive of(List<Part> sameActive) {
    double sum = 0;
    for (Part p : sameActive) {
      sum += p.kgPerHa;
    }
    return new TankActive(sameActive.get(0).ingredient, formulations(sameActive), sum);
  }

  private static List<String> formulations(List<Part> sameActive) {
    if (sameActive.size() == 1) {
      return List.of(sameActive.get(0).product.formulation());
    }
    TreeSet<String> out = new TreeSet<>();
    for (Part p : sameActive) {
      out.add(p.product.formulation());
    }
    return List.copyOf(out);
  }
}
