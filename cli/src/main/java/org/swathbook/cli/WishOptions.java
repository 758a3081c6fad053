package org.swathbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What an adviser asks of a plan beside the house rules. */
final class WishOptions {
  private final CommandSpec command;
  private final Words without;
  private final Words include;
  private final Value<Double> budget;
  private final Value<Integer> maxPasses;
  private final Words whyNot;

  WishOptions(CommandSpec command) {
    this.command = command;
    without =
        Words.option(
            command,
            "--without",
            "INGREDIENT|PRODUCT|SITE",
            "Plan without this ingredient, without a product that cannot be had, or without any of"
                + " a site, as 'site 14'. May be given more than once.");
    include =
        Words.option(
            command,
            "--must-include",
            "INGREDIENT",
            "Plan with this ingredient in some pass. May be given more than once.");
    budget =
        Value.option(
            command,
            "--budget",
            "DOLLARS",
            Double.class,
            "Most that products and passes may cost on an acre when every pass is made.");
    maxPasses =
        Value.option(
            command,
            "--max-passes",
            "N",
            Integer.class,
            "At most so many passes, and never more than the house allows.");
    whyNot =
        Words.option(
            command,
            "--why-not",
            "INGREDIENT",
            "Tell what stands against this ingredient: the rule that refuses it, a limit of the"
                + " plan, or the better program. May be given more than once. A program of your"
                + " own is held against the plan with --compare.");
  }

  boolean asksWhyNot() {
    return whyNot.isGiven();
  }

  /** The actives that are asked about, each once; a wrong name is refused. */
  List<Ingredient> asked(Catalog catalog) {
    return whyNot.all().stream().map(typed -> ingredient(catalog, typed)).distinct().toList();
  }

  boolean isGiven() {
    return without.isGiven()
        || include.isGiven()
        || whyNot.isGiven()
        || budget.isGiven()
        || maxPasses.isGiven();
  }

  PlanWishes read(Catalog catalog) {
    TreeSet<IngredientId> actives = new TreeSet<>();
    TreeSet<ProductId> products = new TreeSet<>();
    TreeSet<Site> sites = new TreeSet<>();
    for (String typed : without.all()) {
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
    for (String typed : include.all()) {
      Ingredient i = ingredient(catalog, typed);
      if (actives.contains(i.id()) || sites.contains(i.site())) {
        throw new ParameterException(
            command.commandLine(),
            i.name() + " is asked for and left out at once; say one of them");
      }
      with.add(i.id());
    }
    if (budget.value() != null && !(budget.value() > 0)) {
      throw new ParameterException(command.commandLine(), "--budget must be above zero, as 60");
    }
    if (maxPasses.value() != null && maxPasses.value() < 1) {
      throw new ParameterException(command.commandLine(), "--max-passes must be 1 or more");
    }
    return new PlanWishes(
        actives,
        products,
        sites,
        with,
        Optional.ofNullable(budget.value()).map(Money::ofDollars),
        maxPasses.value() == null ? OptionalInt.empty() : OptionalInt.of(maxPasses.value()));
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
          command.commandLine(),
          "there is no site of action " + number + "; write one as 'site 14'");
    }
    return site;
  }

  private Ingredient ingredient(Catalog catalog, String typed) {
    return catalog
        .findIngredient(typed)
        .orElseThrow(
            () ->
                new ParameterException(
                    command.commandLine(),
                    "there is no ingredient '" + typed + "'" + insteadOf(typed, catalog)));
  }

  /** What else the word may be, with the ingredients that are meant then. */
  private String insteadOf(String typed, Catalog catalog) {
    Optional<Site> site = site(typed);
    if (site.isPresent()) {
      return "; it is a site of action, name an ingredient of it: "
          + catalog.ingredients().stream()
              .filter(i -> i.site().equals(site.get()))
              .map(Ingredient::name)
              .collect(Collectors.joining(", "));
    }
    return catalog
        .findProduct(typed)
        .map(
            p ->
                "; it is a product, name an ingredient of it: "
                    + p.contents().stream()
                        .map(c -> catalog.ingredient(c.ingredient()).name())
                        .collect(Collectors.joining(", ")))
        .orElseGet(
            () ->
                Complaints.nearest(
                    typed, catalog.ingredients().stream().map(Ingredient::name).toList()));
  }
}
