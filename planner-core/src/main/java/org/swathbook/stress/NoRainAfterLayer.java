package org.swathbook.stress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.PassOutcome;

/**
 * No rain for so many days after the first pass with a soil residual. Weather files give rain and
 * irrigation as one, so both stay out; an irrigated field is walked once more with half an inch on
 * the third day, since it can water the residual in.
 */
record NoRainAfterLayer(int days) implements StressCase {
  /** Half an inch, the least that is commonly named to activate a residual. */
  private static final double WATERED_MM = 12.7;

  private static final int WATERED_ON = 3;

  @Override
  public String name() {
    return "no-rain-after-first-layer";
  }

  @Override
  public Posed pose(Situation plain) {
    Optional<PassOutcome> layer = plain.firstLayer();
    if (layer.isEmpty()) {
      return Posed.not("no rain after the first layer", "no pass holds a soil residual");
    }
    PassOutcome pass = layer.get();
    String title = "no rain for " + days + " days after pass " + (pass.index() + 1);
    LocalDate over = pass.timing().medianDate().plusDays(days);
    if (over.isBefore(plain.today())) {
      return Posed.not(title, "those days are over");
    }
    TraceSet dry = traces(plain, new AfterPass(pass, days, (n, mm) -> 0));
    Optional<TraceSet> watered =
        plain.field().irrigated()
            ? Optional.of(
                traces(
                    plain, new AfterPass(pass, days, (n, mm) -> n == WATERED_ON ? WATERED_MM : 0)))
            : Optional.empty();
    List<String> notes =
        List.of(
            "Irrigation in the weather file stays out with the rain; temperatures stay as they were.");
    return Posed.one(title, Stressed.ofWeather(plain, dry, over, watered), notes);
  }

  private static TraceSet traces(Situation plain, AfterPass weather) {
    return TraceBuilder.build(plain.book(), plain.field(), plain.today(), weather);
  }
}
