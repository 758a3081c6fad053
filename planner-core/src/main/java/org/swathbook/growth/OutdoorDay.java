package org.swathbook.growth;

import org.swathbook.weather.WeatherDay;

/**
 * What a day brings to plants and soil actives.
 *
 * @param day number of the day, 0 on 1 September before the season
 * @param rainOfTenDaysMm of this day and the nine before it
 * @param soilC mean temperature of the topsoil
 * @param relativeWater water of the topsoil at the end of the day over that at field capacity
 * @param canopyClosed whether the crop's rows are closed
 */
record OutdoorDay(
    int day,
    WeatherDay weather,
    double rainOfTenDaysMm,
    double soilC,
    double relativeWater,
    boolean canopyClosed) {}
