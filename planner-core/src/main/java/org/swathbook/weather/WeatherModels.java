package org.swathbook.weather;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.model.ModelCard;

/** The cards of this package's models, in the order of the reference. */
public final class WeatherModels {
  private WeatherModels() {}

  public static List<ModelCard> cards() {
    return Stream.of(
            DegreeDays.cards(),
            SoilTemperature.cards(),
            Hargreaves.cards(),
            EvaporationLayer.cards(),
            WaterRetention.cards(),
            GapRule.cards(),
            WindHeight.cards(),
            SprayDays.cards(),
            HourlyForecast.cards(),
            Sun.cards())
        .flatMap(List::stream)
        .toList();
  }
}
