package org.swathbook.book;

import java.time.LocalTime;
import java.util.List;
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
 * @param insecticides that went on with it or on its day, in the furrow as well: classes or names;
 *     {@code none} says that there were none, nothing that nobody wrote it down
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
    OptionalDouble tempF,
    List<String> insecticides) {

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
          OptionalDouble.empty(),
          List.of());

  public SprayRecord {
    insecticides = List.copyOf(insecticides);
  }

  /** A record that says nothing of insecticides. */
  public SprayRecord(
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
    this(
        start, end, epaRegNo, mix, target, applicator, certNo, windMph, windFrom, tempF, List.of());
  }

  /** The same with insecticides of that day. */
  public SprayRecord with(List<String> insecticidesOfTheDay) {
    return new SprayRecord(
        start,
        end,
        epaRegNo,
        mix,
        target,
        applicator,
        certNo,
        windMph,
        windFrom,
        tempF,
        insecticidesOfTheDay);
  }
}
