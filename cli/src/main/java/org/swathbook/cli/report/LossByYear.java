package org.swathbook.cli.report;

import java.util.Comparator;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** What weeds cost on one acre in a year, in money. */
public record LossByYear(double grossPerAcre) {

  /** An error for a crop whose price the book does not give; no loss in money exists then. */
  public static LossByYear of(Book book, Field field) {
    CropEconomics crop = book.crops().get(field.crop());
    if (crop == null) {
      throw new IllegalArgumentException("no price for " + field.crop());
    }
    return new LossByYear(crop.dollarsPerBu() * field.yieldGoalBuPerAcre());
  }

  public Money in(YearOutcome year) {
    return Money.ofDollars(year.lossShare() * grossPerAcre);
  }

  /** The year with the greatest loss, the earliest of equals. */
  public static YearOutcome worst(SeasonOutcome outcome) {
    return outcome.years().stream()
        .max(
            Comparator.comparingDouble(YearOutcome::lossShare)
                .thenComparing(YearOutcome::year, Comparator.reverseOrder()))
        .orElseThrow();
  }

  /** Share of the emergence of a weed that is exposed in its worst year, percent. */
  public static double worstExposedPct(SeasonOutcome outcome, WeedId weed) {
    return 100
        * outcome.years().stream()
            .mapToDouble(y -> y.exposedShare().getOrDefault(weed, 0.0))
            .max()
            .orElse(0);
  }
}
