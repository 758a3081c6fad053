package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.growth.PassTiming;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassSize;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearOutcome;

/**
 * One pass in one weather year.
 *
 * @param date of the weather year; empty when the pass was missed
 * @param cropStage empty when the pass was missed
 * @param sizes weeds standing, in the order of the field's list
 */
public record YearPass(Optional<LocalDate> date, Optional<String> cropStage, List<PassSize> sizes) {

  public YearPass {
    sizes = List.copyOf(sizes);
  }

  public boolean missed() {
    return date.isEmpty();
  }

  /** Every pass of a year, in the order of the program. */
  public static List<YearPass> of(SeasonOutcome outcome, YearOutcome year, Field field, Crop crop) {
    List<YearPass> all = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      int day = year.passDays().get(p.index());
      if (day < 0) {
        all.add(new YearPass(Optional.empty(), Optional.empty(), List.of()));
      } else {
        all.add(
            new YearPass(
                Optional.of(SeasonDays.date(year.year(), day)),
                Optional.of(stageName(p.timing(), year.year(), field, crop)),
                year.sizes().stream().filter(s -> s.pass() == p.index()).toList()));
      }
    }
    return all;
  }

  private static String stageName(PassTiming timing, int year, Field field, Crop crop) {
    PassTiming.YearDay at =
        timing.years().stream().filter(y -> y.year() == year).findFirst().orElseThrow();
    int stage = (int) Math.floor(at.stage());
    if (stage >= 0) {
      return crop.stages().get(stage).name();
    }
    LocalDate inSeason = SeasonDays.inSeason(field.plantDate().getYear(), year, at.day());
    return inSeason.isBefore(field.plantDate()) ? "not planted" : "planted";
  }
}
