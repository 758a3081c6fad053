package org.swathbook.catalog.starter;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/** Limits of the tank, the sprayer, the day and the people. */
final class SprayLimits {

  private SprayLimits() {}

  static Verdict rainfast(PublishedLimit limit, Ingredient ingredient) {
    double hours = longEnd(limit.value(), "h");
    return MatchingUses.every(
        limit,
        ingredient,
        u -> {
          Stated<Foliar> foliar = u.terms().foliar();
          return foliar.find().isEmpty()
              ? Verdict.of(foliar, f -> true)
              : Verdict.of(foliar.find().get().rainfastHours(), h -> h >= hours);
        });
  }

  static Verdict reentry(PublishedLimit limit, Ingredient ingredient) {
    double hours = longEnd(limit.value(), "h");
    return terms(limit, ingredient, Terms::reentryHours, h -> h >= hours);
  }

  static Verdict carrier(PublishedLimit limit, Ingredient ingredient) {
    double gallons = longEnd(limit.value(), "gal/acre");
    return terms(limit, ingredient, Terms::carrierMinGalPerAcre, g -> g >= gallons);
  }

  static Verdict restrictedUse(PublishedLimit limit, Ingredient ingredient) {
    return limit.value().equals("no")
        ? Verdict.FOLLOWED
        : terms(limit, ingredient, Terms::restrictedUse, yes -> yes);
  }

  static Verdict jarTestRefused(PublishedLimit limit, Ingredient ingredient) {
    return terms(limit, ingredient, t -> t.tank().jarTestRefused(), yes -> yes);
  }

  static Verdict noResidual(PublishedLimit limit, Ingredient ingredient) {
    return Verdict.of(ingredient.residual().isNone(), ingredient.residual());
  }

  static Verdict activatingRain(PublishedLimit limit, Ingredient ingredient) {
    double mm = new Quantity(longEnd(limit.value(), "in"), Unit.INCH).in(Unit.MILLIMETRE);
    return Verdict.of(ingredient.residual(), r -> !Quantity.exceeds(mm, r.activatingRainMm()));
  }

  static Verdict weedHeight(PublishedLimit limit, Ingredient ingredient) {
    double cm = Quantity.parse(limit.value()).in(Unit.CENTIMETRE);
    String of = limit.of().get(0);
    Predicate<OptionalDouble> low = h -> h.isPresent() && !Quantity.exceeds(h.getAsDouble(), cm);
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.weedHeights(),
                h ->
                    switch (of) {
                      case "broadleaf" -> low.test(h.broadleafCm());
                      case "grass" -> low.test(h.grassCm());
                      // A kind that the starter leaves out may be one that the active does not
                      // touch; of those it names, none may be taller.
                      default ->
                          (low.test(h.broadleafCm()) || low.test(h.grassCm()))
                              && (h.broadleafCm().isEmpty() || low.test(h.broadleafCm()))
                              && (h.grassCm().isEmpty() || low.test(h.grassCm()));
                    }));
  }

  /** Every adjuvant that is asked for is asked for here too, by kind; amounts are not compared. */
  static Verdict adjuvantNeeded(PublishedLimit limit, Ingredient ingredient) {
    List<List<AdjuvantKind>> wanted =
        PublishedTables.split(limit.value(), "&").stream().map(SprayLimits::kinds).toList();
    return terms(
        limit,
        ingredient,
        t -> t.tank().adjuvantNeeded(),
        needs ->
            wanted.stream().allMatch(w -> needs.stream().anyMatch(n -> w.containsAll(n.anyOf()))));
  }

  static Verdict adjuvantRefused(PublishedLimit limit, Ingredient ingredient) {
    List<AdjuvantKind> wanted = kinds(limit.value());
    return terms(limit, ingredient, t -> t.tank().adjuvantRefused(), r -> r.containsAll(wanted));
  }

  private static List<AdjuvantKind> kinds(String text) {
    return PublishedTables.split(text, "\\|").stream()
        .map(k -> AdjuvantKind.find(k).orElseThrow())
        .toList();
  }

  static Verdict droplets(PublishedLimit limit, Ingredient ingredient) {
    List<DropletClass> ends =
        PublishedTables.split(limit.value(), "-").stream()
            .map(c -> DropletClass.find(c).orElseThrow())
            .toList();
    return terms(
        limit,
        ingredient,
        t -> t.tank().droplets(),
        d -> d.finest().compareTo(ends.get(0)) >= 0 && d.coarsest().compareTo(ends.get(1)) <= 0);
  }

  static Verdict windTo(PublishedLimit limit, Ingredient ingredient) {
    double mph = longEnd(limit.value(), "mph");
    return terms(limit, ingredient, t -> t.day().windMph(), w -> isMost(w, mph));
  }

  static Verdict windFrom(PublishedLimit limit, Ingredient ingredient) {
    double mph = longEnd(limit.value(), "mph");
    return terms(
        limit,
        ingredient,
        t -> t.day().windMph(),
        w -> w.least().isPresent() && !Quantity.exceeds(mph, w.least().getAsDouble()));
  }

  static Verdict temperatureTo(PublishedLimit limit, Ingredient ingredient) {
    double celsius = (longEnd(limit.value(), "F") - 32) / 1.8;
    return terms(limit, ingredient, t -> t.day().temperature(), c -> isMost(c.celsius(), celsius));
  }

  private static boolean isMost(Limit limit, double most) {
    return limit.most().isPresent() && !Quantity.exceeds(limit.most().getAsDouble(), most);
  }

  static Verdict hours(PublishedLimit limit, Ingredient ingredient) {
    double hours = longEnd(limit.value(), "h");
    return terms(
        limit,
        ingredient,
        t -> t.day().hours(),
        h -> h.afterSunrise() >= hours && h.beforeSunset() >= hours);
  }

  static Verdict runoffRain(PublishedLimit limit, Ingredient ingredient) {
    double hours = longEnd(limit.value(), "h");
    return terms(limit, ingredient, t -> t.day().runoffRainHours(), h -> h >= hours);
  }

  static Verdict buffer(PublishedLimit limit, Ingredient ingredient) {
    double feet = longEnd(limit.value(), "ft");
    return terms(limit, ingredient, t -> t.day().downwindBuffer(), b -> b.downwindFt() >= feet);
  }

  static Verdict setback(PublishedLimit limit, Ingredient ingredient) {
    double feet = longEnd(limit.value(), "ft");
    String from = limit.of().get(0);
    return terms(limit, ingredient, Terms::setbacks, s -> s.feet().getOrDefault(from, 0.0) >= feet);
  }

  /** Worked in no later than this. */
  static Verdict incorporate(PublishedLimit limit, Ingredient ingredient) {
    double hours = longEnd(limit.value(), "h");
    ToDoubleFunction<String> said = text -> longEnd(text.replaceFirst("^within ", ""), "h");
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                ingredient.incorporation().filter(t -> said.applyAsDouble(t) <= hours).isPresent(),
                ingredient.incorporation()));
  }

  private static <T> Verdict terms(
      PublishedLimit limit,
      Ingredient ingredient,
      Function<Terms, Stated<T>> part,
      Predicate<T> strict) {
    return MatchingUses.every(limit, ingredient, u -> Verdict.of(part.apply(u.terms()), strict));
  }

  /** The last number of {@code 4-6 h}; the strict end of every limit that is a least value. */
  private static double longEnd(String text, String unit) {
    if (!text.endsWith(" " + unit)) {
      throw new IllegalArgumentException("'" + text + "' is not in " + unit);
    }
    String number = text.substring(0, text.length() - unit.length() - 1);
    return PublishedTables.split(number, "-").stream()
        .mapToDouble(Double::parseDouble)
        .max()
        .orElseThrow();
  }
}
