package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.DriverKind;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.testing.MixCase;

/**
 * When a low rate is said to be one: glufosinate (0.53 to 0.66 lb, plants to 4 in) and 2,4-D
 * choline (0.95 lb, to 6 in) over soybean.
 */
class BelowFullRateTest {
  private static final String JUNE = "2027-06-10";
  private static final WeedPressure PALMER = weed("AMAPA", 80, DriverKind.YES, 0);

  private static List<Finding> glufosinate(
      WeedPressure palmer, double inches, String rate, String... others) {
    return judged(palmer, inches, rate, others).stream()
        .filter(f -> f.rule().value().equals("below-full-rate"))
        .toList();
  }

  private static List<Finding> judged(
      WeedPressure palmer, double inches, String rate, String... others) {
    CaseBook book = soybean(palmer);
    SeasonCase s = SeasonCase.of(book);
    String[] mix = new String[2 + others.length];
    mix[0] = "glufosinate-ammonium";
    mix[1] = rate;
    System.arraycopy(others, 0, mix, 2, others.length);
    return s.pass(
            JUNE,
            book.mix(mix),
            s.standing("AMAPA", 12, inches, s.site("glufosinate-ammonium", "AMAPA", 82)))
        .judge()
        .findings();
  }

  @Test
  void theLowEndIsFullOnSmallPlantsOnly() {
    assertThat(glufosinate(PALMER, 2, "0.53 lb ai/acre")).isEmpty();
    assertThat(glufosinate(PALMER, 2.1, "0.53 lb ai/acre"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.WARN);
              assertThat(f.message())
                  .isEqualTo(
                      "Glufosinate-ammonium: 0.53 lb ai/acre is below the full rate for Palmer"
                          + " amaranth here, 0.595 lb ai/acre (the use in soybean has 0.53 lb ai/acre"
                          + " to 0.66 lb ai/acre).");
              assertThat(f.remedy()).startsWith("19 fl oz/acre of glufosinate-ammonium 4 lb/gal");
            });
    assertThat(glufosinate(PALMER, 4, "0.595 lb ai/acre")).isEmpty();
  }

  private static MixCase starter(String weed, double inches) {
    return MixCase.in("soybean", "glufosinate").day(24, "V3", 6).weed(weed, inches, 9);
  }

  private static List<Finding> low(MixCase c) {
    return c.findings().stream().filter(f -> f.rule().value().equals("below-full-rate")).toList();
  }

  /** The label has 29 to 36 fl oz; 32 is what is mostly sprayed: common practice, no source. */
  @Test
  void theUsualRateOfGlufosinateIsFull() {
    assertThat(low(starter("AMAPA", 3).product("glufosinate-2.34sl", "32 fl oz/acre"))).isEmpty();
    assertThat(low(starter("AMAPA", 3).product("glufosinate-2.34sl", "29 fl oz/acre")))
        .singleElement()
        .extracting(Finding::remedy, STRING)
        .startsWith("32 fl oz/acre");
  }

  private static MixCase dicamba(SoilTexture texture, double inches) {
    return MixCase.in("corn", "glyphosate")
        .field(f -> f.soil(texture, 2.6, 6.6))
        .day(20, "V3", 6)
        .weed("AMAPA", inches, 9)
        .product("dicamba-4sl", "8 fl oz/acre");
  }

  /** Over corn the starter's rows have 0.25 to 0.5 lb of dicamba, on coarse soils 0.25 lb. */
  @Test
  void whatALabelTakesOffOnALightSoilIsMissedOnTallerPlants() {
    assertThat(low(dicamba(SoilTexture.SANDY_LOAM, 2))).isEmpty();
    assertThat(low(dicamba(SoilTexture.SANDY_LOAM, 3)))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message())
                  .isEqualTo(
                      "Dicamba: 0.25 lb ae/acre is below the full rate for Palmer amaranth here,"
                          + " 0.375 lb ae/acre (the use in corn has 0.25 lb ae/acre to 0.5 lb"
                          + " ae/acre, on this soil no more than 0.25 lb ae/acre).");
              assertThat(f.remedy())
                  .isEqualTo("smaller plants, or a partner of another site at its full rate");
            });
    assertThat(low(dicamba(SoilTexture.SILT_LOAM, 3)))
        .singleElement()
        .extracting(Finding::remedy, STRING)
        .startsWith("12 fl oz/acre of dicamba-4sl");
  }

  /** Annual foxtails take 6 to 8 fl oz of 2 lb/gal, of a range up to 16: from memory. */
  @Test
  void aWeedThatTheLabelNamesAsksForItsOwnRate() {
    assertThat(low(starter("SETFA", 5).product("clethodim-2ec", "6 fl oz/acre"))).isEmpty();
    assertThat(low(starter("SETFA", 8).product("clethodim-2ec", "8 fl oz/acre"))).isEmpty();
    assertThat(low(starter("SETFA", 8).product("clethodim-2ec", "6 fl oz/acre")))
        .singleElement()
        .extracting(Finding::remedy, STRING)
        .startsWith("8 fl oz/acre");
  }

  /** 19 fl oz of 4 lb/gal is 0.594 lb: the next step would be more than the middle. */
  @Test
  void lessByNoMoreThanTheStepOfTheProductIsFull() {
    assertThat(glufosinate(PALMER, 4, "19 fl oz/acre")).isEmpty();
    assertThat(glufosinate(PALMER, 4, "18 fl oz/acre")).hasSize(1);
  }

  @Test
  void besideTwoOtherSitesAtFullRateAThirdMayBeLow() {
    String[] full = {"2,4-D choline", "0.95 lb ae/acre", "glyphosate", "1.13 lb ae/acre"};
    String[] one = {"2,4-D choline", "0.95 lb ae/acre"};

    assertThat(glufosinate(PALMER, 4, "0.53 lb ai/acre", full)).isEmpty();
    assertThat(glufosinate(PALMER, 4, "0.53 lb ai/acre", one)).hasSize(1);
  }

  /** Its sites 4 and 10 still work, and site 2 that it resists is not in the tank. */
  @Test
  void aDriverWithListedResistanceWantsEveryPartnerAtFullRate() {
    WeedPressure resistant = weed("AMAPA", 80, DriverKind.YES, 0.9, 2);
    String[] full = {"2,4-D choline", "0.95 lb ae/acre", "glyphosate", "1.13 lb ae/acre"};

    assertThat(glufosinate(resistant, 4, "0.53 lb ai/acre", full)).hasSize(1);
  }

  @Test
  void aSiteThatTheWeedResistsIsNotCountedOn() {
    WeedPressure resistant = weed("AMAPA", 80, DriverKind.YES, 0.9, 10);

    assertThat(glufosinate(resistant, 4, "0.53 lb ai/acre")).isEmpty();
  }

  @Test
  void ofAWeedThatIsNoDriverItIsANote() {
    assertThat(glufosinate(weed("AMAPA", 3, DriverKind.NO, 0), 4, "0.53 lb ai/acre"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
  }

  @Test
  void whatItNamesIsNotSaidTwice() {
    assertThat(judged(PALMER, 4, "0.40 lb ai/acre"))
        .extracting(f -> f.rule().value())
        .contains("below-full-rate")
        .doesNotContain("rate-below-use");
    assertThat(judged(weed("AMAPA", 3, DriverKind.NO, 0), 4, "0.40 lb ai/acre"))
        .extracting(f -> f.rule().value())
        .as("a note is no warning")
        .contains("below-full-rate", "rate-below-use");
  }
}
