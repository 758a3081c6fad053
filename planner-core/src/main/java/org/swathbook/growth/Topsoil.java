package org.swathbook.growth;

import org.swathbook.catalog.SoilTexture;
import org.swathbook.weather.EvaporationLayer;
import org.swathbook.weather.Hargreaves;
import org.swathbook.weather.SoilTemperature;
import org.swathbook.weather.WeatherDay;

/**
 * Warmth and water of a field's topsoil. Nothing else feeds back on them, so they come first in a
 * day: whatever lives or fades in the soil meets the soil of that very day.
 */
final class Topsoil {
  private final SoilTemperature temperature;
  private final EvaporationLayer layer;

  /** Radiation above the atmosphere by day of the year, which only the latitude moves. */
  private final double[] radiation = new double[367];

  /**
   * @param latitude degrees, north positive
   */
  record Parameters(
      SoilTemperature.Parameters temperature, EvaporationLayer.Parameters layer, double latitude) {
    static Parameters of(SoilTexture texture, double latitude) {
      return new Parameters(
          SoilTemperature.Parameters.BARE,
          EvaporationLayer.Parameters.of(
              texture.fieldCapacity(), texture.wiltingPoint(), texture.readilyEvaporableMm()),
          latitude);
    }
  }

  record State(SoilTemperature.State temperature, EvaporationLayer.State water) {}

  record Rates(SoilTemperature.Rates temperature, EvaporationLayer.Rates water) {}

  /**
   * The water alone, which goes its way whatever the temperature.
   *
   * @param relative θ over field capacity at the end of a day
   */
  record Water(EvaporationLayer.State layer, double relative) {}

  Topsoil(Parameters parameters) {
    this.temperature = new SoilTemperature(parameters.temperature);
    this.layer = new EvaporationLayer(parameters.layer);
    for (int day = 1; day < radiation.length; day++) {
      radiation[day] = Hargreaves.extraterrestrialRadiation(parameters.latitude, day);
    }
  }

  /** Before the first day of a record. */
  State before(WeatherDay first) {
    return new State(temperature.before(first), layer.before());
  }

  Rates rates(State yesterday, WeatherDay today) {
    return new Rates(
        temperature.rates(yesterday.temperature, today),
        layer.rates(yesterday.water, today.rainMm(), referenceMm(today)));
  }

  /** Before the first day of a record. */
  Water waterBefore() {
    return water(layer.before());
  }

  /** As {@link #rates} and {@link #integrate} have it. */
  Water waterAfter(Water yesterday, WeatherDay today) {
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

  State integrate(State yesterday, Rates rates) {
    return new State(
        temperature.integrate(yesterday.temperature, rates.temperature),
        layer.integrate(yesterday.water, rates.water));
  }

  /** θ over field capacity. */
  double relativeWater(State state) {
    return layer.relativeWater(state.water);
  }
}
