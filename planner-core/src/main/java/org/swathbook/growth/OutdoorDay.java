package org.swathbook.growth;

import org.swathbook.weather.WeatherDay;

/**
 * What a day brings to the seeds in open ground.
 *
 * @param day number of the day, 0 on 1 September before the season
 * @param rainOfTenDaysMm of this day and the nine before it
 * @param soilC mean temperature of the topsoil
 * @param relativeWater water of the topsoil at the end of the day over that at field capacity
 */
record OutdoorDay(
    int day, WeatherDay weather, double rainOfTenDaysMm, double soilC, double relativeWater) {}
