package org.swathbook.growth;

import java.util.List;
import org.swathbook.weather.WeatherDay;

/**
 * Changes the days of a weather year before anything grows in it, to ask what another weather would
 * have done. Days of the book's season that are already observed stay as they were observed.
 */
@FunctionalInterface
public interface WeatherEdit {

  /** The weather as it was: the very list that comes in. */
  WeatherEdit NONE = (year, days) -> days;

  /**
   * @param year the weather year
   * @param days from 1 September before it to 31 October, in order
   * @return as many days, of the same dates
   */
  List<WeatherDay> edit(int year, List<WeatherDay> days);
}
