package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Mix;
import org.swathbook.testing.MixCase;

/** One load by hand: 600 gal on 40 acres. */
class TankLoadTest {
  private static final LoadSize SIZE = new LoadSize(600, 40);

  private static TankLoad load(MixCase tank) {
    return TankLoad.of(tank.job().mix(), SIZE, Map.of());
  }

  private static MixCase tank() {
    return MixCase.in("soybean");
  }

  @Test
  void productsGoByTheAcreAndAdjuvantsAsTheyAreWritten() {
    TankLoad load =
        load(
            tank()
                .product("glyphosate-4.5sl", "32 fl oz/acre")
                .product("metribuzin-75wg", "5 oz weight/acre")
                .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
                .adjuvant("nonionic-surfactant", "0.25 % v/v"));

    assertThat(load.products().get(0).amount()).isEqualTo(Quantity.parse("1280 fl oz"));
    assertThat(load.products().get(1).amount()).isEqualTo(Quantity.parse("200 oz weight"));
    assertThat(load.adjuvants().get(0).amount()).contains(Quantity.parse("51 lb"));
    assertThat(load.adjuvants().get(1).amount()).contains(Quantity.parse("1.5 gal"));
    // 10 gal of glyphosate and 1.5 gal of surfactant take their room; what is dry counts as none.
    assertThat(load.carrierGallons()).isCloseTo(588.5, within(1e-9));
    assertThat(load.hasUnreckonedRoom()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "1 % v/v, 6 gal",
    "1 qt/100 gal, 6 qt",
    "8.5 lb/100 gallons, 51 lb",
    "2.5 lb/acre, 100 lb",
    "1 pt/acre, 40 pt"
  })
  void anAdjuvantByItsRate(String rate, String amount) {
    assertThat(LoadAmounts.ofAdjuvant(rate, SIZE)).contains(Quantity.parse(amount));
  }

  @ParameterizedTest
  @CsvSource({"as the label says", "1-2 pt/acre", "1 lb ai/acre"})
  void howMuchIsNotSaidIsNotKnown(String rate) {
    assertThat(LoadAmounts.ofAdjuvant(rate, SIZE)).isEmpty();
  }

  @Test
  void aRateOnAHectareCountsHectares() {
    Quantity litres =
        LoadAmounts.of(org.swathbook.measure.Rate.parse("2 L/ha"), new LoadSize(600, 2.471053815));

    assertThat(litres.unit()).isEqualTo(Unit.LITRE);
    assertThat(litres.value()).isCloseTo(2, within(1e-8));
  }

  /** 2.5 lb on each of 40 acres is 100 lb, more than 51 lb by the gallons. */
  @Test
  void ofTwoRatesOfOneKindTheOneThatIsMoreGoverns() {
    MixCase both =
        tank()
            .product("glyphosate-4.5sl", "32 fl oz/acre")
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
            .adjuvant("ammonium-sulfate", "2.5 lb/acre");

    assertThat(load(both).adjuvants())
        .singleElement()
        .satisfies(a -> assertThat(a.amount()).contains(Quantity.parse("100 lb")));
    assertThat(load(both.adjuvant("ammonium-sulfate", "as the label says")).adjuvants())
        .singleElement()
        .satisfies(a -> assertThat(a.amount()).isEmpty());
  }

  @Test
  void weightAndVolumeOfOneAdjuvantDoNotCompare() {
    MixCase both =
        tank()
            .product("glyphosate-4.5sl", "32 fl oz/acre")
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
            .adjuvant("ammonium-sulfate", "2.5 % v/v");

    assertThatThrownBy(() -> load(both))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("ammonium-sulfate is written by weight and by volume");
  }

  @Test
  void aProductNamedTwiceIsPouredOnce() {
    TankLoad load =
        load(
            tank()
                .product("glyphosate-4.5sl", "32 fl oz/acre")
                .product("glyphosate-4.5sl", "1 pt/acre"));

    assertThat(load.products())
        .singleElement()
        .satisfies(
            p -> assertThat(p.amount().in(Unit.FLUID_OUNCE)).isCloseTo(40 * 48, within(1e-9)));
  }

  @Test
  void whatLeavesNoRoomForWaterIsNoLoad() {
    Mix mix = tank().product("glyphosate-4.5sl", "16 gal/acre").job().mix();

    assertThatThrownBy(() -> TankLoad.of(mix, SIZE, Map.of()))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("16 gal/acre")
        .hasMessageContaining("15 gal/acre");
  }

  @Test
  void thePackageOfTheBookGoesBeforeThatOfTheCatalog() {
    Mix mix = tank().product("glyphosate-4.5sl", "32 fl oz/acre").job().mix();
    var product = mix.doses().get(0).product();
    Quantity drum = Quantity.parse("30 gal");

    assertThat(TankLoad.of(mix, SIZE, Map.of(product.id(), drum)).products().get(0).packageSize())
        .contains(drum);
    assertThat(load(tank().product("glyphosate-4.5sl", "32 fl oz/acre")).products().get(0))
        .extracting(LoadedProduct::packageSize)
        .isEqualTo(product.packageSize());
    assertThat(product.packageSize()).isNotEqualTo(Optional.empty());
  }
}
