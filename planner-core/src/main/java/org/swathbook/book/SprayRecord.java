package org.swathbook.book;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a journal row keeps of a spraying besides product and rate; much of it is what the law asks
 * of restricted products. Texts are empty when nothing was written.
 *
 * @param mix id of the mix, as the loading pad knows it
 * @param target the weed aimed at, as written
 * @param certNo number of the applicator's certificate
 * @param windFrom compass point, {@code NW}
 */
public record SprayRecord(
    Optional<LocalTime> start,
    Optional<LocalTime> end,
    String epaRegNo,
    String mix,
    String target,
    String applicator,
    String certNo,
    OptionalDouble windMph,
    String windFrom,
    OptionalDouble tempF) {

  /** Nothing was written. */
  public static final SprayRecord EMPTY =
      new SprayRecord(
          Optional.empty(),
          Optional.empty(),
          "",
          "",
          "",
          "",
          "",
          OptionalDouble.empty(),
          "",
          OptionalDouble.empty());
}
