package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.WeedId;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearOutcome;

/**
 * The layer that one pass lays on one weed, over the years.
 *
 * @param from median first day and {@code to} median last day as dates of the book's season, over
 *     the years that have the layer
 * @param withLayer years that have it, {@code years} all years
 * @param shortestDays least length of the years that have it, {@code shortestYear} the first such
 *     year
 */
public record LayerSummary(
    LocalDate from, LocalDate to, int withLayer, int years, int shortestDays, int shortestYear) {

  private record InYear(int year, LocalDate from, LocalDate to, int days) {}

  /** Empty when the pass lays no layer on the weed in any year. */
  public static Optional<LayerSummary> of(
      SeasonOutcome outcome, int season, int pass, WeedId weed) {
    List<InYear> found = new ArrayList<>();
    for (YearOutcome y : outcome.years()) {
      for (LayerSpan l : y.layers()) {
        if (l.pass() == pass && l.weed().equals(weed)) {
          found.add(
              new InYear(
                  y.year(),
                  SeasonDays.inSeason(season, y.year(), l.fromDay()),
                  SeasonDays.inSeason(season, y.year(), l.toDay()),
                  l.days()));
        }
      }
    }
    if (found.isEmpty()) {
      return Optional.empty();
    }
    InYear shortest =
        found.stream()
            .min(Comparator.comparingInt(InYear::days).thenComparingInt(InYear::year))
            .orElseThrow();
    return Optional.of(
        new LayerSummary(
            lowerMedian(found.stream().map(InYear::from)),
            lowerMedian(found.stream().map(InYear::to)),
            (int) found.stream().mapToInt(InYear::year).distinct().count(),
            outcome.years().size(),
            shortest.days(),
            shortest.year()));
  }

  private static LocalDate lowerMedian(java.util.stream.Stream<LocalDate> dates) {
    List<LocalDate> sorted = dates.sorted().toList();
    return sorted.get((sorted.size() - 1) / 2);
  }
}
