package org.swathbook.rules.mixture;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Adjuvant;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;
import org.swathbook.tank.AmmoniumSulfate;
import org.swathbook.tank.InHundredGallons;
import org.swathbook.tank.LoadAmounts;
import org.swathbook.tank.LoadSize;
import org.swathbook.tank.PouredAmount;
import org.swathbook.tank.TankNeeds;
import org.swathbook.tank.UnmetNeed;

/** An adjuvant that a label asks for and that is not in the tank. */
public final class AdjuvantNeededRule implements PassRule {
  /** So much less comes from rounding a rate to the measures of a jug, and is enough (default). */
  private static final double ROUNDING = 0.02;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("adjuvant-needed"),
          Severity.BLOCK,
          "Is every adjuvant in the tank that a label asks for?",
          "A label asks for an adjuvant and none of the kinds that would do is in the tank, or a"
              + " partner refuses each of them: a warning, and a block where the label forbids to"
              + " spray without it. A warning where less of it is in the tank than the label's rate,"
              + " as far as both can be brought to 100 gal of spray. An ask where the catalog does"
              + " not say what is needed.",
          List.of("the labels' own needs"),
          "dicamba over soybean without a volatility reducer",
          "glyphosate with ammonium sulfate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Set<AdjuvantKind> held = held(facts);
    TankNeeds together = TankNeeds.of(facts.actives().stream().map(ActiveUse::partner).toList());
    for (ActiveUse a : facts.actives()) {
      About about = facts.about().withIngredient(a.ingredient().id());
      Stated<List<AdjuvantNeed>> needs = a.terms().tank().adjuvantNeeded();
      if (needs.isUnknown()) {
        out.ask(this, about, () -> missing(a.ingredient()));
      }
      for (AdjuvantNeed need : needs.find().orElse(List.of())) {
        List<AdjuvantKind> there = need.anyOf().stream().filter(held::contains).toList();
        if (!there.isEmpty()) {
          amount(facts, a, need, there, needs.findSource(), together, out);
        } else {
          out.add(
              this,
              need.refusedWithout() ? Severity.BLOCK : Severity.WARN,
              about,
              () -> text(facts, a.ingredient(), need, needs.findSource(), together));
        }
      }
    }
  }

  /** One kind that is there at its rate is enough, whatever is short of the others. */
  private void amount(
      PassFacts facts,
      ActiveUse a,
      AdjuvantNeed need,
      List<AdjuvantKind> there,
      Optional<Source> source,
      TankNeeds together,
      Findings out) {
    List<Optional<Shortage>> shortages = there.stream().map(k -> shortage(facts, need, k)).toList();
    if (shortages.stream().allMatch(Optional::isPresent)) {
      Shortage first = shortages.get(0).orElseThrow();
      out.warn(
          this,
          facts.about().withIngredient(a.ingredient().id()),
          () -> little(facts, a, need, there.get(0), first, source, together));
    }
  }

  /** An amount in 100 gal of spray that is less than a label asks for there. */
  private record Shortage(Quantity there, Quantity asked) {}

  /** Of a kind that is in the tank: how much it is short; empty when enough or not comparable. */
  private static Optional<Shortage> shortage(
      PassFacts facts, AdjuvantNeed need, AdjuvantKind kind) {
    OptionalDouble gallons = facts.pass().mix().gallonsPerAcre();
    Optional<Quantity> asked = need.rate(kind).flatMap(r -> InHundredGallons.least(r, gallons));
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    Optional<Quantity> most = Optional.empty();
    for (Adjuvant held : facts.pass().mix().adjuvants()) {
      if (AdjuvantKind.find(held.kind()).equals(Optional.of(kind))) {
        Optional<Quantity> amount = InHundredGallons.least(held.rate(), gallons);
        if (amount.isEmpty() || !isComparable(kind, amount.get(), asked.get())) {
          return Optional.empty();
        }
        most = most.isPresent() && most.get().si() >= amount.get().si() ? most : amount;
      }
    }
    Quantity there = most.orElseThrow();
    return Quantity.exceeds(si(kind, asked.get()) * (1 - ROUNDING), si(kind, there))
        ? Optional.of(new Shortage(there, asked.get()))
        : Optional.empty();
  }

  private static Text little(
      PassFacts facts,
      ActiveUse a,
      AdjuvantNeed need,
      AdjuvantKind kind,
      Shortage shortage,
      Optional<Source> source,
      TankNeeds together) {
    return Text.of(
            "The label of "
                + a.ingredient().name()
                + " asks for "
                + UnmetNeed.words(need)
                + "; there is less "
                + kind
                + " in the tank.",
            source.map(Source::text).orElse(Say.COMMON_PRACTICE))
        .compared(words(shortage.there()), "at least " + words(shortage.asked()))
        .cleared(String.join("; ", amounts(facts, need, together)));
  }

  private static boolean isComparable(AdjuvantKind kind, Quantity one, Quantity other) {
    return kind == AdjuvantKind.AMMONIUM_SULFATE
        || one.unit().dimension() == other.unit().dimension();
  }

  private static double si(AdjuvantKind kind, Quantity amount) {
    return kind == AdjuvantKind.AMMONIUM_SULFATE ? AmmoniumSulfate.pounds(amount) : amount.si();
  }

  private static String words(Quantity amount) {
    return measured(amount) + " in 100 gal";
  }

  /** Liquids by the measures of a jug, weights in decimals as a scale shows them. */
  private static String measured(Quantity amount) {
    PouredAmount poured = PouredAmount.of(amount, PouredAmount.Toward.MORE);
    return poured.isLiquid()
        ? poured.words()
        : Numbers.decimals(amount.value(), 2) + " " + amount.unit().symbol();
  }

  private static Set<AdjuvantKind> held(PassFacts facts) {
    Set<AdjuvantKind> held = EnumSet.noneOf(AdjuvantKind.class);
    for (Adjuvant a : facts.pass().mix().adjuvants()) {
      AdjuvantKind.find(a.kind()).ifPresent(held::add);
    }
    return held;
  }

  private static Lookup missing(Ingredient i) {
    return new Lookup(
        "adjuvants that the label of " + i.name() + " asks for",
        Where.ingredient(i, "tank.adjuvantNeeded", "adjuvants"));
  }

  private static Text text(
      PassFacts facts,
      Ingredient i,
      AdjuvantNeed need,
      Optional<Source> source,
      TankNeeds together) {
    Optional<UnmetNeed> unmet =
        together.unmet().stream()
            .filter(u -> u.of().id().equals(i.id()) && u.need().equals(need))
            .findFirst();
    return Text.of(
            "The label of "
                + i.name()
                + (need.refusedWithout() ? " forbids to spray it without " : " asks for ")
                + UnmetNeed.words(need)
                + unmet
                    .map(
                        u ->
                            "; "
                                + Say.list(u.refusedBy())
                                + (u.refusedBy().size() == 1 ? " refuses" : " refuse")
                                + (need.anyOf().size() == 1 ? " it." : " all that would do."))
                    .orElse("; it is not in the tank."),
            source.map(Source::text).orElse(Say.COMMON_PRACTICE))
        .compared(
            unmet.isPresent() ? "refused by a partner" : "not in the tank", UnmetNeed.words(need))
        .cleared(
            unmet.isPresent()
                ? "two passes some days apart, or another partner"
                : String.join("; ", amounts(facts, need, together)));
  }

  /** What the whole tank would take of the kinds that meet the need. */
  private static List<String> amounts(PassFacts facts, AdjuvantNeed need, TankNeeds together) {
    return together.adjuvants().stream()
        .filter(a -> AdjuvantKind.find(a.kind()).filter(need.anyOf()::contains).isPresent())
        .map(a -> a.kind() + " " + a.rate() + poured(facts, a.rate()))
        .toList();
  }

  /**
   * A rate as amounts to pour: {@code , that is 1 gal in 100 gal, 12 gal in a load of 1200 gal}.
   */
  private static String poured(PassFacts facts, String rate) {
    OptionalDouble perAcre = facts.pass().mix().gallonsPerAcre();
    Optional<String> hundred =
        rate.contains("/100")
            ? Optional.empty()
            : InHundredGallons.least(rate, perAcre).map(AdjuvantNeededRule::words);
    OptionalDouble tank = facts.job().map(j -> j.tank().gallons()).orElse(OptionalDouble.empty());
    Optional<String> load =
        tank.isPresent() && perAcre.isPresent()
            ? LoadAmounts.ofAdjuvant(
                    rate,
                    new LoadSize(tank.getAsDouble(), tank.getAsDouble() / perAcre.getAsDouble()))
                .map(
                    q ->
                        measured(q)
                            + " in a load of "
                            + Numbers.decimals(tank.getAsDouble(), 1)
                            + " gal")
            : Optional.empty();
    List<String> ways = Stream.of(hundred, load).flatMap(Optional::stream).toList();
    return ways.isEmpty() ? "" : ", that is " + String.join(", ", ways);
  }
}
