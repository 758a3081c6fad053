package org.swathbook.growth;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.weather.WaterRetention;
import org.swathbook.weather.WeatherDay;

/**
 * How a weed's seedlings come up, as shares of the season's plants.
 *
 * <ul>
 *   <li>Heat makes the daily difference of the emergence curve ready to come up.
 *   <li>Dry soil holds seedlings back: of all that wait, each day brings the share that the rain of
 *       the last ten days is of 12 mm ({@link RainClock}). They wait; none is lost.
 *   <li>A weed with a base water potential counts heat only on days that end with a topsoil wetter
 *       than that (threshold hydrothermal time; Schutte et al. 2008, Weed Science 56). Its curve
 *       knows of dry spells already, so the rain of the last ten days does not hold it a second
 *       time: what is ready comes up.
 *   <li>After tillage at planting nothing comes up for 40 °C-days base 10, from the next day on
 *       (default); these wait too and come as a flush.
 *   <li>Under a closed canopy a quarter comes up (default); the rest stays in the ground.
 * </ul>
 */
final class Seedlings {
  /** Heat after tillage in which nothing comes up, °C-days base 10. */
  static final double QUIET_AFTER_TILLAGE = 40;

  /** Share of what would come up that does so under a closed canopy. */
  static final double UNDER_CANOPY = 0.25;

  /** What {@link #QUIET_AFTER_TILLAGE} is counted by. */
  static final ThermalClock TILLAGE_CLOCK =
      new ThermalClock(DegreeDayMethod.AVERAGE, 10, OptionalDouble.empty());

  private final Parameters parameters;

  /**
   * @param emergence by heat alone
   * @param heat of the days on the weed's clock
   * @param settling heat of the days by which the soil settles after tillage
   * @param tilledOn day of tillage; the number of days for none
   * @param leastWater topsoil water over field capacity above which heat counts; for none, heat
   *     always counts and rain lets seedlings up
   */
  record Parameters(
      SeasonHeat.Ready emergence,
      SeasonHeat.ByDay heat,
      SeasonHeat.ByDay settling,
      int tilledOn,
      OptionalDouble leastWater) {
    static Parameters of(
        Emergence emergence, List<WeatherDay> days, int tilledOn, SoilTexture texture) {
      return of(emergence, new SeasonHeat(days), tilledOn, texture);
    }

    static Parameters of(Emergence emergence, SeasonHeat heat, int tilledOn, SoilTexture texture) {
      WaterRetention retention =
          new WaterRetention(texture.fieldCapacity(), texture.wiltingPoint());
      OptionalDouble base = emergence.waterBaseMPa();
      return new Parameters(
          heat.ready(emergence),
          heat.of(emergence.clock()),
          heat.of(TILLAGE_CLOCK),
          tilledOn,
          base.isPresent()
              ? OptionalDouble.of(retention.relativeWaterAt(base.getAsDouble()))
              : base);
    }
  }

  /**
   * @param heat °C-days since the start day
   * @param ready share that heat has made ready, up or waiting
   * @param waiting share that waits for rain or for the soil to settle
   * @param heatSinceTillage °C-days base 10
   */
  record State(double heat, double ready, double waiting, double heatSinceTillage) {}

  /**
   * What a day brings.
   *
   * @param heat °C-days
   * @param readyAtEnd share ready by the end of the day: a level, since the curve gives levels
   * @param leaving share that stops waiting, which comes up on open ground
   * @param heatSinceTillage °C-days base 10
   */
  record Rates(double heat, double readyAtEnd, double leaving, double heatSinceTillage) {}

  Seedlings(Parameters parameters) {
    this.parameters = parameters;
  }

  /** Before the first day. */
  State before() {
    return new State(0, 0, 0, 0);
  }

  /** A seed that heat makes ready can be up on the same day. */
  Rates rates(State yesterday, OutdoorDay today) {
    int day = today.day();
    if (day < parameters.emergence.startDay()) {
      return new Rates(0, 0, 0, 0);
    }
    double heat = isTooDry(today) ? 0 : parameters.heat.on(day);
    double readyAtEnd =
        parameters.leastWater.isPresent()
            ? parameters.emergence.curve().at(yesterday.heat + heat)
            : parameters.emergence.share().on(day);
    double settling = day > parameters.tilledOn ? parameters.settling.on(day) : 0;
    boolean quiet =
        today.day() >= parameters.tilledOn
            && yesterday.heatSinceTillage + settling < QUIET_AFTER_TILLAGE;
    double leaving =
        quiet ? 0 : (yesterday.waiting + (readyAtEnd - yesterday.ready)) * shareLetUp(today);
    return new Rates(heat, readyAtEnd, leaving, settling);
  }

  private boolean isTooDry(OutdoorDay today) {
    return parameters.leastWater.isPresent()
        && today.relativeWater() <= parameters.leastWater.getAsDouble();
  }

  private double shareLetUp(OutdoorDay today) {
    return parameters.leastWater.isPresent()
        ? 1
        : RainClock.share(today.rainOfTenDaysMm(), RainClock.SEEDLING_NEED_MM);
  }

  State integrate(State yesterday, Rates rates) {
    return new State(
        yesterday.heat + rates.heat,
        rates.readyAtEnd,
        yesterday.waiting + (rates.readyAtEnd - yesterday.ready) - rates.leaving,
        yesterday.heatSinceTillage + rates.heatSinceTillage);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                Seedlings.class,
                "hydrothermal time",
                "heat counts only on days that end with ψ of the topsoil above the base; rain of ten days then holds nothing back",
                "Schutte et al. 2008, threshold form; topsoil as the evaporation layer, default")
            .given("optional, base in MPa from the catalog; no starter weed has one"),
        ModelCard.of(
                ModelSection.WEEDS,
                Seedlings.class,
                "after tillage at planting",
                "nothing comes up for a heat sum on base 10 °C, and comes as a flush",
                "default")
            .with("sum", QUIET_AFTER_TILLAGE, "°C-days"),
        ModelCard.of(
                ModelSection.WEEDS,
                Seedlings.class,
                "under the canopy",
                "so large a share of those due comes up, the rest stays down",
                "default")
            .with("share", UNDER_CANOPY, ""));
  }
}
