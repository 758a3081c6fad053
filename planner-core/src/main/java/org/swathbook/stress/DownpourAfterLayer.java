package org.swathbook.stress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;
import org.swathbook.season.outcome.PassOutcome;

/**
 * A downpour right after the first pass with a soil residual: so much rain, evenly over so many
 * days, on top of what fell.
 */
record DownpourAfterLayer(double rainMm, int days) implements StressCase {

  @Override
  public String name() {
    return "downpour-after-first-layer";
  }

  @Override
  public Posed pose(Situation plain) {
    Optional<PassOutcome> layer = plain.firstLayer();
    if (layer.isEmpty()) {
      return Posed.not("downpour after the first layer", "no pass holds a soil residual");
    }
    PassOutcome pass = layer.get();
    String inches = Numbers.decimals(Inches.ofMm(rainMm), 1);
    String title = inches + " in of rain in " + days + " days after pass " + (pass.index() + 1);
    LocalDate over = pass.timing().medianDate().plusDays(days + 1L);
    if (over.isBefore(plain.today())) {
      return Posed.not(title, "those days are over");
    }
    // The last day takes what is left, so that the sum is exact and no less than the whole.
    double even = rainMm / days;
    double last = rainMm - even * (days - 1);
    TraceSet wet =
        TraceBuilder.build(
            plain.book(),
            plain.field(),
            plain.today(),
            new AfterPass(pass, days, (n, mm) -> mm + (n == days ? last : even)));
    return Posed.one(title, Stressed.ofWeather(plain, wet, over, Optional.empty()), List.of());
  }
}
