package org.swathbook.growth;

import org.swathbook.catalog.SoilTexture;
import org.swathbook.weather.EvaporationLayer;
import org.swathbook.weather.Hargreaves;
import org.swathbook.weather.WeatherDay;

/**
 * Water of a field's topsoil. Nothing else feeds back on it, nor does it on the soil's warmth
 * ({@link GroundDays}), so they come first in a day: whatever lives or fades in the soil meets the
 * soil of that very day.
 */
final class Topsoil {
  private final EvaporationLayer layer;

  /** Radiation above the atmosphere by day of the year, which only the latitude moves. */
  private final double[] radiation = new double[367];

  /**
   * @param latitude degrees, north positive
   */
  record Parameters(EvaporationLayer.Parameters layer, double latitude) {
    static Parameters of(SoilTexture texture, double latitude) {
      return new Parameters(
          EvaporationLayer.Parameters.of(
              texture.fieldCapacity(), texture.wiltingPoint(), texture.readilyEvaporableMm()),
          latitude);
    }
  }

  /**
   * @param relative θ over field capacity at the end of a day
   */
  record Water(EvaporationLayer.State layer, double relative) {}

  Topsoil(Parameters parameters) {
    this.layer = new EvaporationLayer(parameters.layer);
    for (int day = 1; day < radiation.length; day++) {
      radiation[day] = Hargreaves.extraterrestrialRadiation(parameters.latitude, day);
    }
  }

  /** Before the first day of a record. */
  Water before() {
    return water(layer.before());
  }

  /** The day after another. */
  Water after(Water yesterday, WeatherDay today) {
    EvaporationLayer.Rates rates = layer.rates(yesterday.layer, today.rainMm(), referenceMm(today));
    return water(layer.integrate(yesterday.layer, rates));
  }

  private Water water(EvaporationLayer.State state) {
    return new Water(state, layer.relativeWater(state));
  }

  /** Whether the rain of a day fills the layer however dry it was. */
  boolean isSoakedBy(WeatherDay day) {
    return day.rainMm() >= layer.totalEvaporableMm();
  }

  private double referenceMm(WeatherDay day) {
    return Hargreaves.referenceMm(day.tmaxC(), day.tminC(), radiation[day.date().getDayOfYear()]);
  }
}
