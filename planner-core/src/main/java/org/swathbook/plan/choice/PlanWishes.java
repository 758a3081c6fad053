package org.swathbook.plan.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;

/**
 * What an adviser asks of a plan beside the house rules.
 *
 * @param without actives that are not to be used
 * @param withoutProducts products that cannot be had
 * @param withoutSites sites of which none is to be used
 * @param include actives each of which some pass is to bring
 * @param budgetPerAcre most that products and passes may cost when every pass is made
 * @param maxPasses at most so many, and never more than the house allows
 */
public record PlanWishes(
    SortedSet<IngredientId> without,
    SortedSet<ProductId> withoutProducts,
    SortedSet<Site> withoutSites,
    SortedSet<IngredientId> include,
    Optional<Money> budgetPerAcre,
    OptionalInt maxPasses) {

  public static final PlanWishes NONE =
      new PlanWishes(
          new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), Optional.empty(), OptionalInt.empty());

  /** Whatever the products. */
  public PlanWishes(
      SortedSet<IngredientId> without,
      SortedSet<Site> withoutSites,
      SortedSet<IngredientId> include,
      Optional<Money> budgetPerAcre,
      OptionalInt maxPasses) {
    this(without, new TreeSet<>(), withoutSites, include, budgetPerAcre, maxPasses);
  }

  public PlanWishes {
    without = Collections.unmodifiableSortedSet(new TreeSet<>(without));
    withoutProducts = Collections.unmodifiableSortedSet(new TreeSet<>(withoutProducts));
    withoutSites = Collections.unmodifiableSortedSet(new TreeSet<>(withoutSites));
    include = Collections.unmodifiableSortedSet(new TreeSet<>(include));
  }

  /** With one more active that some pass is to bring. */
  public PlanWishes including(IngredientId active) {
    TreeSet<IngredientId> all = new TreeSet<>(include);
    all.add(active);
    return new PlanWishes(without, withoutProducts, withoutSites, all, budgetPerAcre, maxPasses);
  }

  /** The same, but that the active need not be in any pass. */
  public PlanWishes notIncluding(IngredientId active) {
    return new PlanWishes(
        without, withoutProducts, withoutSites, less(include, active), budgetPerAcre, maxPasses);
  }

  /** The same, but that the active may be used. */
  public PlanWishes allowing(IngredientId active) {
    return new PlanWishes(
        less(without, active), withoutProducts, withoutSites, include, budgetPerAcre, maxPasses);
  }

  /** The same, but that the product can be had. */
  public PlanWishes allowing(ProductId product) {
    return new PlanWishes(
        without, less(withoutProducts, product), withoutSites, include, budgetPerAcre, maxPasses);
  }

  /** The same, but that the site may be used. */
  public PlanWishes allowing(Site site) {
    return new PlanWishes(
        without, withoutProducts, less(withoutSites, site), include, budgetPerAcre, maxPasses);
  }

  /** The same, whatever it costs. */
  public PlanWishes withAnyBudget() {
    return new PlanWishes(
        without, withoutProducts, withoutSites, include, Optional.empty(), maxPasses);
  }

  /** The same in as many passes as the house allows. */
  public PlanWishes withAnyPasses() {
    return new PlanWishes(
        without, withoutProducts, withoutSites, include, budgetPerAcre, OptionalInt.empty());
  }

  private static <T> SortedSet<T> less(SortedSet<T> all, T one) {
    TreeSet<T> out = new TreeSet<>(all);
    out.remove(one);
    return out;
  }

  /** With more products that cannot be had. */
  public PlanWishes withoutAll(Collection<ProductId> products) {
    TreeSet<ProductId> all = new TreeSet<>(withoutProducts);
    all.addAll(products);
    return new PlanWishes(without, all, withoutSites, include, budgetPerAcre, maxPasses);
  }

  /** Whether neither the product nor an active of it is to be left out. */
  public boolean allows(Dose dose) {
    return !withoutProducts.contains(dose.product().id())
        && dose.actives().stream().map(a -> a.ingredient()).allMatch(this::allows);
  }

  private boolean allows(Ingredient active) {
    return !without.contains(active.id()) && !withoutSites.contains(active.site());
  }

  /** How many of the actives that are to be in a program are not. */
  public int missing(Collection<IngredientId> used) {
    return (int) include.stream().filter(i -> !used.contains(i)).count();
  }

  /**
   * One line each: {@code without dicamba}; empty when nothing is asked.
   *
   * @param house which may allow fewer passes
   */
  public List<String> words(Catalog catalog, HouseRules house) {
    List<String> out = new ArrayList<>();
    without.forEach(i -> out.add("without " + catalog.ingredient(i).name()));
    withoutProducts.forEach(p -> out.add("without " + catalog.product(p).name()));
    withoutSites.forEach(s -> out.add("without site " + s));
    include.forEach(i -> out.add("with " + catalog.ingredient(i).name()));
    budgetPerAcre.ifPresent(b -> out.add("at most $" + b + " an acre for products and passes"));
    if (maxPasses.isPresent()) {
      int n = maxPasses.getAsInt();
      out.add(
          "at most "
              + n
              + (n == 1 ? " pass" : " passes")
              + (n > house.maxPasses()
                  ? ", of which the house allows " + house.maxPasses() + " (maxPasses)"
                  : ""));
    }
    return out;
  }
}
