package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedRate;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.StandingSize;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.RateRange;
import org.swathbook.rules.Say;
import org.swathbook.rules.UseFacts;

/**
 * The least rate of a use for the weeds that stand: the low end of its range on the soil, or what
 * the label asks for one of them.
 *
 * @param where what it is the least for, as a sentence goes on
 */
record LeastRate(double lbPerAcre, String where, String source) {

  /** An active that does less than this to a weed is not sprayed for it (percent). */
  private static final double HALF_PCT = 50;

  /** Thinner stands are not what a pass is made for, plants/m² (default). */
  private static final double STANDS_PER_M2 = 0.1;

  /** Whether a rate can fall short at all, whatever stands. */
  static boolean mayBeShort(Use use, RateRange range, double lbPerAcre) {
    return Quantity.exceeds(range.low().lbPerAcre(), lbPerAcre)
        || use.weedRates().find().stream()
            .flatMap(List::stream)
            .anyMatch(r -> Quantity.exceeds(r.least().lbPerAcre(), lbPerAcre));
  }

  /** The highest that one of the weeds asks; the range's where none of them stands. */
  static LeastRate of(UseFacts facts, Use use, RateRange range) {
    LeastRate onSoil =
        new LeastRate(range.low().lbPerAcre(), " on this soil", Say.source(use.rates()));
    if (use.weedRates().find().isEmpty()) {
      return onSoil;
    }
    List<LeastRate> all = new ArrayList<>();
    for (int w = 0; w < facts.traces().weeds().size(); w++) {
      double cm = medianCm(facts, w);
      WeedPressure weed = facts.traces().weeds().get(w);
      if (!Double.isNaN(cm) && isSprayedFor(facts, weed)) {
        all.add(
            use.weedRate(weed.weed().id(), cm)
                .map(row -> ofWeed(row, weed, cm, use))
                .orElse(onSoil));
      }
    }
    return all.stream().max(Comparator.comparingDouble(LeastRate::lbPerAcre)).orElse(onSoil);
  }

  private static LeastRate ofWeed(WeedRate row, WeedPressure weed, double cm, Use use) {
    return new LeastRate(
        row.least().lbPerAcre(),
        " on " + weed.weed().name() + " of " + Say.inches(cm),
        Say.source(use.weedRates()));
  }

  private static boolean isSprayedFor(UseFacts facts, WeedPressure weed) {
    Optional<Response> rating =
        facts
            .book()
            .catalog()
            .response(
                weed.weed().id(),
                facts.ingredient().id(),
                facts.isInCrop() ? Response.Timing.POST : Response.Timing.BURNDOWN)
            .find();
    return rating.isPresent() && rating.get().emaxPct() >= HALF_PCT;
  }

  /**
   * Median over the years of the house's size percentile; NaN where it stands in fewer than half.
   */
  private static double medianCm(UseFacts facts, int weed) {
    List<Double> heights = new ArrayList<>();
    List<SeasonTrace> years = facts.traces().years();
    for (PassTiming.YearDay at : facts.timing().years()) {
      SeasonTrace trace =
          years.stream().filter(t -> t.year() == at.year()).findFirst().orElseThrow();
      if (standing(trace, weed, at.day()) >= STANDS_PER_M2) {
        StandingSize.percentileCm(trace, weed, at.day(), facts.book().house().sizePercentile())
            .ifPresent(heights::add);
      }
    }
    heights.sort(Comparator.naturalOrder());
    return 2 * heights.size() < facts.timing().years().size() || heights.isEmpty()
        ? Double.NaN
        : heights.get(heights.size() / 2);
  }

  private static double standing(SeasonTrace trace, int weed, int day) {
    CohortSet cohorts = trace.cohorts(weed);
    double sum = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      sum += cohorts.standing(c, day, trace.plantingDay());
    }
    return sum;
  }
}
