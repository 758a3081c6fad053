package org.swathbook.trials;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.season.DayRating;
import org.swathbook.season.PreparedPass;

/** Walks one treatment of a row and rates it on the row's day. */
final class TrialWalk {
  /** Days from planting of what a row names without a date (common practice, no source). */
  private static final int PREPLANT_DAY = -14;

  private static final int POST_DAY = 30;
  private static final int LATE_POST_DAY = 40;
  private static final int LATE_POST_AFTER_POST = 21;

  /** Heights of weeds, cm, at a post without a date or a size (common practice, no source). */
  private static final double POST_CM = 10;

  private static final double EARLY_POST_CM = 5;

  private final Catalog catalog;
  private final TrialField trial;
  private final List<PreparedPass> passes = new ArrayList<>();
  private boolean onlySoil = true;

  TrialWalk(Catalog catalog, TrialField trial, List<Spray> treatment) {
    this.catalog = catalog;
    this.trial = trial;
    LocalDate last = null;
    Spray.Point before = Spray.Point.PREPLANT;
    for (Spray spray : treatment) {
      LocalDate date = date(spray.when(), last, before);
      last = last != null && !date.isAfter(last) ? last.plusDays(1) : date;
      before = spray.when().point();
      onlySoil &= before == Spray.Point.PRE;
      passes.add(trial.kernel().made(mix(spray), last));
    }
    passes.sort(Comparator.comparing(PreparedPass::planned));
  }

  private LocalDate date(
      Spray.When when, @org.jspecify.annotations.Nullable LocalDate last, Spray.Point before) {
    LocalDate planted = trial.field().plantDate();
    if (when.daysAfterPlanting().isPresent()) {
      return planted.plusDays(Math.round(when.daysAfterPlanting().getAsDouble()));
    }
    boolean second = last != null && (before == Spray.Point.PRE || before == Spray.Point.PREPLANT);
    return switch (when.point()) {
      case PREPLANT -> planted.plusDays(PREPLANT_DAY);
      case PRE -> planted;
      case RESPRAY ->
          java.util.Objects.requireNonNull(last)
              .plusDays(Math.round(when.daysAfterLast().orElseThrow()));
      case LATE_POST ->
          last == null || second
              ? planted.plusDays(LATE_POST_DAY)
              : last.plusDays(LATE_POST_AFTER_POST);
      case EARLY_POST -> atHeight(when.weedCm().orElse(EARLY_POST_CM));
      case POST ->
          when.weedCm().isPresent()
              ? atHeight(when.weedCm().getAsDouble())
              : second ? planted.plusDays(POST_DAY) : atHeight(POST_CM);
    };
  }

  private LocalDate atHeight(double cm) {
    return trial
        .dayOfHeight(cm)
        .orElseThrow(() -> new IllegalArgumentException("the weed never is " + cm + " cm tall"));
  }

  private Mix mix(Spray spray) {
    Position.Phase phase =
        switch (spray.when().point()) {
          case PREPLANT, PRE -> Position.Phase.BEFORE_EMERGENCE;
          default -> Position.Phase.IN_CROP;
        };
    List<Dose> doses = new ArrayList<>();
    for (Spray.Part part : spray.parts()) {
      Ingredient active = catalog.ingredient(part.active());
      double kg =
          part.share()
              * part.kgPerHa()
                  .orElseGet(
                      () ->
                          TypicalRates.kgPerHa(active, trial.field(), phase)
                              .orElseThrow(
                                  () ->
                                      new IllegalArgumentException(
                                          "no label rate of " + active.name())));
      Product product =
          catalog.products().stream()
              .filter(p -> p.find(active.id()).isPresent())
              .min(
                  Comparator.comparingInt((Product p) -> p.contents().size())
                      .thenComparing(p -> p.id().value()))
              .orElseThrow(() -> new IllegalArgumentException("no product of " + active.name()));
      doses.add(
          new Dose(
              product,
              Doses.productRate(product, 1),
              List.of(new ActiveDose(active, Doses.activeRate(kg, active.rateBasis()))),
              true));
    }
    return Mix.of(doses);
  }

  boolean onlySoil() {
    return onlySoil;
  }

  /** Control in percent, mean over weeds, ratings and years. */
  double controlPct(RatedText rated) {
    int weeds = trial.kernel().traces().weeds().size();
    double sum = 0;
    int n = 0;
    for (double days : rated.days()) {
      for (int w = 0; w < weeds; w++) {
        sum += controlPct(rated.base(), days, w);
        n++;
      }
    }
    return sum / n;
  }

  private double controlPct(RatedText.Base base, double days, int weed) {
    LocalDate planted = trial.field().plantDate();
    LocalDate last = passes.get(passes.size() - 1).planned();
    LocalDate from =
        switch (base) {
          case SEASON -> LocalDate.MAX;
          case PLANTING -> planted;
          case FIRST_PASS -> passes.get(0).planned();
          case LAST_PASS -> last;
          case POST_DAY ->
              ChronoUnit.DAYS.between(planted, last) > 5 ? last : planted.plusDays(POST_DAY);
        };
    return base == RatedText.Base.SEASON
        ? trial.kernel().score(passes).controlPct(weed)
        : DayRating.of(trial.kernel(), passes, from.plusDays(Math.round(days)), trial.upFrom())
            .controlPct(weed);
  }

  /** The days of the passes, for the report. */
  List<Long> daysFromPlanting() {
    return passes.stream()
        .map(p -> ChronoUnit.DAYS.between(trial.field().plantDate(), p.planned()))
        .toList();
  }

  static OptionalDouble mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average();
  }
}
