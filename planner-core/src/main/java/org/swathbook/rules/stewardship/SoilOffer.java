package org.swathbook.rules.stewardship;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.Rated;

/**
 * A soil active that a pass could have carried against a weed: listed for crop, traits, state and
 * soil, its window open on the pass in most years, and rated as effective in the soil. Caps,
 * intervals and partners are not looked at here.
 *
 * @param dose the lowest rate of the label on the field's soil, of a product that holds it alone
 * @param price on one acre; empty when the product has none
 */
record SoilOffer(Ingredient active, Dose dose, Optional<Money> price) {

  /** The cheapest; those without a price last, then by name. */
  static Optional<SoilOffer> cheapest(PassFacts facts, WeedPressure weed) {
    return facts.book().catalog().ingredients().stream()
        .filter(i -> isEffective(facts, weed, i))
        .flatMap(i -> of(facts, i))
        .min(
            Comparator.comparingDouble(
                    (SoilOffer o) -> o.price.map(Money::dollars).orElse(Double.POSITIVE_INFINITY))
                .thenComparing(o -> o.active.name())
                .thenComparing(o -> o.dose.product().id()));
  }

  /** Rated at or above the house's share in the soil, and not resisted. */
  static boolean isEffective(PassFacts facts, WeedPressure weed, Ingredient active) {
    return !Rated.isResisted(weed, active)
        && Rated.soilPct(facts, weed, active).orElse(0)
            >= 100 * facts.book().house().effectiveSoilSite();
  }

  private static Stream<SoilOffer> of(PassFacts facts, Ingredient active) {
    List<Product> products =
        facts.book().catalog().products().stream()
            .filter(p -> p.isSingle() && p.find(active.id()).isPresent())
            .toList();
    return products.stream()
        .flatMap(
            p ->
                LabelUses.fitting(active, facts.field(), facts.positions(), p.formulation())
                    .stream()
                    .filter(u -> isOpen(facts, u))
                    .flatMap(u -> dose(facts, active, u, p).stream()))
        .map(d -> new SoilOffer(active, d, facts.book().prices().perAcre(d)));
  }

  private static Optional<Dose> dose(PassFacts facts, Ingredient active, Use use, Product product) {
    return SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed a
            && a.range().low().kgPerHa() <= a.range().high().kgPerHa()
        ? Optional.of(Doses.ofIngredient(active, product, a.range().low()))
        : Optional.empty();
  }

  private static boolean isOpen(PassFacts facts, Use use) {
    if (!LabelUses.hasTraits(use, facts.field()) || !UseFinder.mayBeIn(use, facts.field())) {
      return false;
    }
    int years = facts.traces().years().size();
    long open =
        IntStream.range(0, years)
            .filter(
                y ->
                    WindowCheck.check(
                            use,
                            facts.traces().years().get(y),
                            facts.pass().timing().years().get(y).day())
                        .inside())
            .count();
    return 2 * open > years;
  }
}
