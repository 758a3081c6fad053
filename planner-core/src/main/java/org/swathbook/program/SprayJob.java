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
 * @param others classes of other partners in the tank, such as {@code organophosphate}, for
 *     products that no catalog entry describes
 * @param applicator who sprays it; empty when the job does not say
 */
public record SprayJob(
    FieldId field,
    SprayDay day,
    Mix mix,
    Sprayer sprayer,
    List<String> others,
    Optional<Applicator> applicator) {

  public SprayJob {
    others = List.copyOf(others);
  }

  /** Of which no more is known than what is sprayed, where and when. */
  public static SprayJob of(FieldId field, LocalDate date, Mix mix) {
    return new SprayJob(
        field, SprayDay.of(date), mix, Sprayer.UNKNOWN, List.of(), Optional.empty());
  }

  public LocalDate date() {
    return day.date();
  }

  public Optional<LocalTime> time() {
    return day.time();
  }

  public Scouted scouted() {
    return day.scouted();
  }

  public SprayWeather weather() {
    return day.weather();
  }

  public Method method() {
    return sprayer.method();
  }

  public Carrier carrier() {
    return sprayer.carrier();
  }

  public SprayerSetup setup() {
    return sprayer.setup();
  }

  public SprayerTank tank() {
    return sprayer.tank();
  }

  /** The same on a day of which other things are known. */
  public SprayJob with(SprayDay other) {
    return new SprayJob(field, other, mix, sprayer, others, applicator);
  }

  /** The same with another tank mix. */
  public SprayJob with(Mix other) {
    return new SprayJob(field, day, other, sprayer, others, applicator);
  }

  /** The same with another sprayer. */
  public SprayJob with(Sprayer other) {
    return new SprayJob(field, day, mix, other, others, applicator);
  }

  /** The same in other weather. */
  public SprayJob with(SprayWeather other) {
    return with(day.with(other));
  }

  /** The same with other nozzles. */
  public SprayJob with(SprayerSetup other) {
    return with(sprayer.with(other));
  }

  /** The same at another time. */
  public SprayJob on(LocalDate date, LocalTime clock) {
    return with(day.at(date, clock));
  }

  /** The same by somebody. */
  public SprayJob by(Applicator who) {
    return new SprayJob(field, day, mix, sprayer, others, Optional.of(who));
  }
}
