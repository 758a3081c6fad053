package org.swathbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What an adviser asks of a plan beside the house rules. */
final class WishOptions {
  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--without",
      paramLabel = "INGREDIENT|PRODUCT|SITE",
      description =
          "Plan without this ingredient, without a product that cannot be had, or without any of a"
              + " site, as 'site 14'. May be given more than once.")
  List<String> without = new ArrayList<>();

  @Option(
      names = "--must-include",
      paramLabel = "INGREDIENT",
      description = "Plan with this ingredient in some pass. May be given more than once.")
  List<String> include = new ArrayList<>();

  @Option(
      names = "--budget",
      paramLabel = "DOLLARS",
      description = "Most that products and passes may cost on an acre when every pass is made.")
  @Nullable Double budget;

  @Option(
      names = "--max-passes",
      paramLabel = "N",
      description = "At most so many passes, and never more than the house allows.")
  @Nullable Integer maxPasses;

  @Option(
      names = "--why-not",
      paramLabel = "INGREDIENT",
      description =
          "Tell what stands against this ingredient: the rule that refuses it, or the better"
              + " program. May be given more than once.")
  List<String> whyNot = new ArrayList<>();

  /** The actives that are asked about, each once; a wrong name is refused. */
  List<Ingredient> asked(Catalog catalog) {
    return whyNot.stream().map(typed -> ingredient(catalog, typed)).distinct().toList();
  }

  boolean isGiven() {
    return !without.isEmpty()
        || !include.isEmpty()
        || !whyNot.isEmpty()
        || budget != null
        || maxPasses != null;
  }

  PlanWishes read(Catalog catalog) {
    TreeSet<IngredientId> actives = new TreeSet<>();
    TreeSet<ProductId> products = new TreeSet<>();
    TreeSet<Site> sites = new TreeSet<>();
    for (String typed : without) {
      Optional<Site> site = site(typed);
      if (site.isPresent()) {
        sites.add(site.get());
      } else if (catalog.findIngredient(typed).isEmpty()
          && catalog.findProduct(typed).isPresent()) {
        products.add(catalog.findProduct(typed).get().id());
      } else {
        actives.add(ingredient(catalog, typed).id());
      }
    }
    TreeSet<IngredientId> with = new TreeSet<>();
    for (String typed : include) {
      Ingredient i = ingredient(catalog, typed);
      if (actives.contains(i.id()) || sites.contains(i.site())) {
        throw new ParameterException(
            spec.commandLine(), i.name() + " is asked for and left out at once; say one of them");
      }
      with.add(i.id());
    }
    if (budget != null && !(budget > 0)) {
      throw new ParameterException(spec.commandLine(), "--budget must be above zero, as 60");
    }
    if (maxPasses != null && maxPasses < 1) {
      throw new ParameterException(spec.commandLine(), "--max-passes must be 1 or more");
    }
    return new PlanWishes(
        actives,
        products,
        sites,
        with,
        Optional.ofNullable(budget).map(Money::ofDollars),
        maxPasses == null ? OptionalInt.empty() : OptionalInt.of(maxPasses));
  }

  private Optional<Site> site(String typed) {
    String text = typed.strip().toLowerCase(java.util.Locale.ROOT);
    String number = text.startsWith("site") ? text.substring(4).strip() : text;
    if (!number.matches("\\d{1,2}")) {
      return Optional.empty();
    }
    Optional<Site> site = Site.find(number);
    if (site.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "there is no site of action " + number + "; write one as 'site 14'");
    }
    return site;
  }

  private Ingredient ingredient(Catalog catalog, String typed) {
    return catalog
        .findIngredient(typed)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "there is no ingredient '"
                        + typed
                        + "'"
                        + Complaints.nearest(
                            typed, catalog.ingredients().stream().map(Ingredient::name).toList())));
  }
}
