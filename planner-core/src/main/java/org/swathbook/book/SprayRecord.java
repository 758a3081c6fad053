package org.swathbook.book;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a journal keeps of a spraying besides products and rates, and what the rows of a pass share;
 * much of it is what the law asks of restricted products. Texts are empty when nothing was written.
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
    String mix,
    String target,
    String applicator,
    String certNo,
    OptionalDouble windMph,
    String windFrom,
    OptionalDouble tempF,
    List<String> insecticides) {

  // Written out, as in every key that is compared at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SprayRecord o
        && start.equals(o.start)
        && end.equals(o.end)
        && mix.equals(o.mix)
        && target.equals(o.target)
        && applicator.equals(o.applicator)
        && certNo.equals(o.certNo)
        && windMph.equals(o.windMph)
        && windFrom.equals(o.windFrom)
        && tempF.equals(o.tempF)
        && insecticides.equals(o.insecticides);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * start.hashCode() + certNo.hashCode()) + mix.hashCode();
  }

  /** Nothing was written. */
  public static final SprayRecord EMPTY =
      new SprayRecord(
          Optional.empty(),
          Optional.empty(),
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
      String mix,
      String target,
      String applicator,
      String certNo,
      OptionalDouble windMph,
      String windFrom,
      OptionalDouble tempF) {
    this(start, end, mix, target, applicator, certNo, windMph, windFrom, tempF, List.of());
  }

  /** The same with insecticides of that day. */
  public SprayRecord with(List<String> insecticidesOfTheDay) {
    return new SprayRecord(
        start,
        end,
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
