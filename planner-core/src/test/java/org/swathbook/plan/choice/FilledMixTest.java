package org.swathbook.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/**
 * Glufosinate over soybean asks for 8.5 lb of ammonium sulfate per 100 gal and for 15 gal/acre
 * (Hager 2016, University of Illinois, as the catalog has it).
 */
class FilledMixTest {
  private static final LocalDate DAY = LocalDate.of(2027, 6, 5);
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow());

  private final DayDoses doses = DayDoses.of(BOOK, TRACES);
  private final Dose glufosinate = of("glufosinate-ammonium").get(0);

  private List<Dose> of(String active) {
    return doses.byActive().stream()
        .filter(
            all -> all.get(0).actives().get(0).ingredient().id().equals(IngredientId.of(active)))
        .findFirst()
        .orElseThrow();
  }

  private Mix filled(List<Adjuvant> held, OptionalDouble gallons) {
    return FilledMix.of(
        BOOK, TRACES, Timings.on(TRACES, DAY), new Mix(List.of(glufosinate), held, gallons));
  }

  @Test
  void whatTheLabelAsksForGoesIn() {
    Mix mix = doses.filled(List.of(glufosinate), DAY);
    assertThat(mix.doses()).containsExactly(glufosinate);
    assertThat(mix.adjuvants()).containsExactly(new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    assertThat(mix.gallonsPerAcre()).hasValue(15);
  }

  @Test
  void whatIsInTheTankStaysAsItIs() {
    Adjuvant more = new Adjuvant("ammonium-sulfate", "17 lb/100 gal");
    Adjuvant other = new Adjuvant("drift-reducer", "1 % v/v");
    assertThat(filled(List.of(other, more), OptionalDouble.empty()).adjuvants())
        .containsExactly(other, more);
    assertThat(filled(List.of(other), OptionalDouble.empty()).adjuvants())
        .containsExactly(other, new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
  }

  @Test
  void theLargerVolumeCounts() {
    assertThat(filled(List.of(), OptionalDouble.of(10)).gallonsPerAcre()).hasValue(15);
    assertThat(filled(List.of(), OptionalDouble.of(20)).gallonsPerAcre()).hasValue(20);
  }

  /** Around emergence labels are close to their limits, which warns and forbids nothing. */
  @Test
  void whatOnlyWarnsDoesNotStandAgainstIt() {
    for (LocalDate day = DAY.minusDays(25); day.isBefore(DAY); day = day.plusDays(1)) {
      for (List<Dose> all : doses.byActive()) {
        assertThat(doses.blocks(all.get(0), day))
            .extracting(f -> f.severity())
            .allMatch(Severity.BLOCK::equals);
      }
    }
  }

  /** Of an active the full rate stands first. */
  @Test
  void dosesOfAnActiveStandByTheirRate() {
    assertThat(of("glufosinate-ammonium"))
        .extracting(d -> d.rate().amount())
        .containsExactly(36.0, 32.0, 29.0);
    assertThat(doses.byActive())
        .allSatisfy(
            all -> assertThat(all).extracting(d -> -d.actives().get(0).kgPerHa()).isSorted());
  }

  @Test
  void whatALabelForbidsOnADayIsSaid() {
    Dose flumioxazin = of("flumioxazin").get(0);
    assertThat(doses.allows(glufosinate, DAY)).isTrue();
    assertThat(doses.blocks(glufosinate, DAY)).isEmpty();
    assertThat(doses.allows(flumioxazin, DAY)).isFalse();
    assertThat(doses.blocks(flumioxazin, DAY))
        .isNotEmpty()
        .extracting(f -> f.rule())
        .contains(new RuleId("crop-not-listed"));
    assertThat(doses.allows(List.of(glufosinate), DAY)).isTrue();
    Dose choline = of("2-4-d-choline").get(0);
    assertThat(doses.allows(List.of(glufosinate, choline), DAY)).isTrue();
    assertThat(doses.allows(List.of(choline, glufosinate), DAY)).isTrue();
    assertThat(doses.allows(List.of(glufosinate, flumioxazin), DAY)).isFalse();
    assertThat(doses.allows(List.of(flumioxazin, glufosinate), DAY)).isFalse();
  }
}
