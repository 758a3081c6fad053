package org.swathbook.catalog.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;

/** Limits of one rate, of a year's amount, of the number of sprayings. */
final class AmountLimits {

  private AmountLimits() {}

  /** No more than this at once. */
  static Verdict rateTo(PublishedLimit limit, Ingredient ingredient) {
    Rate most = rate(limit, ingredient);
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.rates(),
                rows ->
                    rowsFor(limit, rows).stream()
                        .flatMap(r -> r.rates().stream())
                        .allMatch(r -> !Quantity.exceeds(r.high().lbPerAcre(), most.lbPerAcre()))));
  }

  private static List<RateRow> rowsFor(PublishedLimit limit, List<RateRow> rows) {
    List<RateRow> possible = new ArrayList<>();
    for (RateRow row : rows) {
      SoilCondition when = row.when();
      boolean other =
          limit
              .ground()
              .map(
                  g -> {
                    boolean erodible = g == PublishedLimit.Ground.ERODIBLE;
                    return when.erodible().filter(e -> e != erodible).isPresent()
                        || erodible && when.residuePct().filter(r -> !r.allows(0)).isPresent();
                  })
              .orElse(false);
      if (other) {
        continue;
      }
      possible.add(row);
      boolean onlyOfGround =
          when.textures().isEmpty()
              && when.organicMatterPct().isEmpty()
              && when.soilPh().isEmpty()
              && (when.erodible().isEmpty() || limit.ground().isPresent())
              && (when.residuePct().isEmpty()
                  || limit.ground().equals(Optional.of(PublishedLimit.Ground.ERODIBLE)));
      if (onlyOfGround) {
        break;
      }
    }
    return possible;
  }

  /**
   * No more than this in a year. A cap by the season does not do for one by the year, save where
   * the published one counts the sprayings over the crop alone.
   */
  static Verdict cap(PublishedLimit limit, Ingredient ingredient) {
    Rate most = rate(limit, ingredient);
    boolean inCrop = limit.position().equals("post");
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.caps(),
                caps ->
                    caps.stream()
                        .filter(c -> counts(c, inCrop))
                        .anyMatch(
                            c -> !Quantity.exceeds(c.amount().lbPerAcre(), most.lbPerAcre()))));
  }

  private static boolean counts(Cap cap, boolean inCrop) {
    return inCrop
        ? cap.counts().isEmpty() || cap.counts().contains(Position.POST)
        : cap.counts().isEmpty() && cap.per() != Cap.CapPeriod.SEASON;
  }

  static Verdict applications(PublishedLimit limit, Ingredient ingredient) {
    int most = Integer.parseInt(limit.value());
    return MatchingUses.every(limit, ingredient, u -> Verdict.of(u.applications(), n -> n <= most));
  }

  static Verdict repeat(PublishedLimit limit, Ingredient ingredient) {
    int least = Period.parse(limit.value()).days();
    return MatchingUses.every(limit, ingredient, u -> Verdict.of(u.repeatDays(), n -> n >= least));
  }

  private static Rate rate(PublishedLimit limit, Ingredient ingredient) {
    Rate rate = Rate.parse(limit.value());
    Basis basis = ingredient.rateBasis();
    if (rate.basis() != basis) {
      throw new IllegalArgumentException(limit + ": the starter counts in " + basis.symbol());
    }
    return rate;
  }
}
