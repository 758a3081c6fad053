package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.weather.WeatherDay;

/**
 * A field's soil and weeds through one weather year, day by day. Every day, all rates are taken
 * from the states of the evening before and the weather of the day, and only then are the states
 * moved on; so no model sees another one half moved. The topsoil alone goes ahead of the others:
 * its mean temperature of a day is, by its equation, already that of this day.
 */
final class OutdoorModel {
  private final Topsoil topsoil;
  private final SoilAge age;
  private final List<Seedlings> seedlings;
  private final List<WeedGrowth> growth;

  /** Where everything stands at the end of a day; weeds in the order of the field. */
  private record State(
      Topsoil.State soil,
      SoilAge.State age,
      List<Seedlings.State> seedlings,
      List<WeedGrowth.State> growth) {}

  /** What a day changes but for the topsoil. */
  private record Rates(
      SoilAge.Rates age, List<Seedlings.Rates> seedlings, List<WeedGrowth.Rates> growth) {}

  OutdoorModel(Topsoil topsoil, SoilAge age, List<Seedlings> seedlings, List<WeedGrowth> growth) {
    this.topsoil = topsoil;
    this.age = age;
    this.seedlings = List.copyOf(seedlings);
    this.growth = List.copyOf(growth);
  }

  OutdoorYear run(List<WeatherDay> days, CanopyClock canopy) {
    int weeds = seedlings.size();
    OutdoorYear year = new OutdoorYear(weeds, days.size());
    State state = before(days.get(0));
    for (int d = 0; d < days.size(); d++) {
      WeatherDay weather = days.get(d);
      Topsoil.State soil = topsoil.integrate(state.soil, topsoil.rates(state.soil, weather));
      OutdoorDay today =
          new OutdoorDay(
              d,
              weather,
              RainClock.rainMm(days, d),
              soil.temperature().meanC(),
              topsoil.relativeWater(soil),
              canopy.isClosed(d));
      Rates rates = rates(state, today);
      state = integrate(state, soil, rates);
      year.soilAge[d] = state.age.days();
      for (int w = 0; w < weeds; w++) {
        year.emerging[w][d] = rates.seedlings.get(w).emerging();
        year.thermal[w][d] = state.growth.get(w).heat();
      }
    }
    return year;
  }

  private State before(WeatherDay first) {
    return new State(
        topsoil.before(first),
        age.before(),
        seedlings.stream().map(Seedlings::before).toList(),
        growth.stream().map(WeedGrowth::before).toList());
  }

  private Rates rates(State yesterday, OutdoorDay today) {
    List<Seedlings.Rates> coming = new ArrayList<>();
    List<WeedGrowth.Rates> growing = new ArrayList<>();
    for (int w = 0; w < seedlings.size(); w++) {
      coming.add(seedlings.get(w).rates(yesterday.seedlings.get(w), today));
      growing.add(growth.get(w).rates(today.weather(), today.canopyClosed()));
    }
    return new Rates(age.rates(today.soilC(), today.relativeWater()), coming, growing);
  }

  private State integrate(State yesterday, Topsoil.State soil, Rates rates) {
    List<Seedlings.State> waiting = new ArrayList<>();
    List<WeedGrowth.State> grown = new ArrayList<>();
    for (int w = 0; w < seedlings.size(); w++) {
      waiting.add(seedlings.get(w).integrate(yesterday.seedlings.get(w), rates.seedlings.get(w)));
      grown.add(growth.get(w).integrate(yesterday.growth.get(w), rates.growth.get(w)));
    }
    return new State(soil, age.integrate(yesterday.age, rates.age), waiting, grown);
  }
}
