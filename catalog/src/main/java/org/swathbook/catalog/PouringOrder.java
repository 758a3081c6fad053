package org.swathbook.catalog;

import java.util.Set;

/**
 * The place that a product's own label gives it in the order in which a tank is filled.
 *
 * @param before what goes in later
 * @param after what goes in sooner
 */
public record PouringOrder(Set<Poured> before, Set<Poured> after) {

  public PouringOrder {
    before = Ordered.set(before);
    after = Ordered.set(after);
  }

  /** What else may be in the tank, as labels name it. */
  public sealed interface Poured extends Comparable<Poured> {

    /** Products of a kind, by formulation code: {@code EC}. */
    record Formulation(String code) implements Poured {
      @Override
      public String toString() {
        return code;
      }
    }

    /** An adjuvant. */
    record OfKind(AdjuvantKind kind) implements Poured {
      @Override
      public String toString() {
        return kind.spelling();
      }
    }

    /** Any product of one active. */
    record Holding(IngredientId ingredient) implements Poured {
      @Override
      public String toString() {
        return ingredient.value();
      }
    }

    @Override
    default int compareTo(Poured other) {
      return toString().compareTo(other.toString());
    }
  }
}
