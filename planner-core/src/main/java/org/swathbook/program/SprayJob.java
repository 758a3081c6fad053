package org.swathbook.program;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Method;

/**
 * A tank that is to be sprayed on one day in one field, with what is known of that day. What is
 * empty is not known: the crop and the weeds are then those of the model, the rest is asked for.
 *
 * @param time civil time at the field
 * @param scouted crop and weeds as somebody saw them
 * @param others classes of other partners in the tank, such as {@code organophosphate}, for
 *     products that no catalog entry describes
 * @param applicator who sprays it; empty when the job does not say
 */
public record SprayJob(
    FieldId field,
    LocalDate date,
    Optional<LocalTime> time,
    Method method,
    Scouted scouted,
    Mix mix,
    Carrier carrier,
    SprayerSetup setup,
    SprayerTank tank,
    SprayWeather weather,
    List<String> others,
    Optional<Applicator> applicator) {

  public SprayJob {
    others = List.copyOf(others);
  }

  /** Of which nobody says who sprays it. */
  public SprayJob(
      FieldId field,
      LocalDate date,
      Optional<LocalTime> time,
      Method method,
      Scouted scouted,
      Mix mix,
      Carrier carrier,
      SprayerSetup setup,
      SprayerTank tank,
      SprayWeather weather,
      List<String> others) {
    this(
        field,
        date,
        time,
        method,
        scouted,
        mix,
        carrier,
        setup,
        tank,
        weather,
        others,
        Optional.empty());
  }

  /** The same by somebody. */
  public SprayJob by(Applicator who) {
    return new SprayJob(
        field,
        date,
        time,
        method,
        scouted,
        mix,
        carrier,
        setup,
        tank,
        weather,
        others,
        Optional.of(who));
  }

  /** Of which no more is known than what is sprayed, where and when. */
  public static SprayJob of(FieldId field, LocalDate date, Mix mix) {
    return new SprayJob(
        field,
        date,
        Optional.empty(),
        Method.BROADCAST,
        Scouted.NOTHING,
        mix,
        Carrier.UNKNOWN,
        SprayerSetup.UNKNOWN,
        SprayerTank.UNKNOWN,
        SprayWeather.UNKNOWN,
        List.of());
  }

  /** The same with another tank. */
  public SprayJob with(Mix other) {
    return new SprayJob(
        field,
        date,
        time,
        method,
        scouted,
        other,
        carrier,
        setup,
        tank,
        weather,
        others,
        applicator);
  }

  /** The same in other weather. */
  public SprayJob with(SprayWeather other) {
    return new SprayJob(
        field, date, time, method, scouted, mix, carrier, setup, tank, other, others, applicator);
  }

  /** The same at another time. */
  public SprayJob on(LocalDate day, LocalTime clock) {
    return new SprayJob(
        field,
        day,
        Optional.of(clock),
        method,
        scouted,
        mix,
        carrier,
        setup,
        tank,
        weather,
        others,
        applicator);
  }

  /** The same with other nozzles. */
  public SprayJob with(SprayerSetup other) {
    return new SprayJob(
        field, date, time, method, scouted, mix, carrier, other, tank, weather, others, applicator);
  }
}
