package org.swathbook.growth;

/**
 * What a day brings to the seeds in open ground.
 *
 * @param day number of the day, 0 on 1 September before the season
 * @param rainOfTenDaysMm of this day and the nine before it
 * @param relativeWater water of the topsoil at the end of the day over that at field capacity
 */
record OutdoorDay(int day, double rainOfTenDaysMm, double relativeWater) {}
