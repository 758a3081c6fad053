package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.SoilTexture;

class WaterRetentionTest {

  @Test
  void goesThroughFieldCapacityAndTheWiltingPoint() {
    for (SoilTexture t : SoilTexture.values()) {
      WaterRetention retention = new WaterRetention(t.fieldCapacity(), t.wiltingPoint());

      assertThat(retention.potentialMPa(1)).isEqualTo(-0.033);
      assertThat(retention.potentialMPa(t.wiltingPoint() / t.fieldCapacity()))
          .as("%s", t)
          .isCloseTo(-1.5, within(1e-9));
    }
  }

  /**
   * Exponents of the same form for loamy sand to clay, 4.05 for sand to 11.4 for clay (Clapp and
   * Hornberger 1978, Water Resources Research 14: 601–604, from memory); ours, through two points
   * of FAO-56's mid values, lie within a third of them.
   */
  @Test
  void exponentsAreLikeThePublishedOnes() {
    assertThat(exponent(SoilTexture.SAND)).isCloseTo(4.05, within(4.05 / 3));
    assertThat(exponent(SoilTexture.SANDY_LOAM)).isCloseTo(4.90, within(4.90 / 3));
    assertThat(exponent(SoilTexture.LOAM)).isCloseTo(5.39, within(5.39 / 3));
    assertThat(exponent(SoilTexture.SILT_LOAM)).isCloseTo(5.30, within(5.30 / 3));
    assertThat(exponent(SoilTexture.SILTY_CLAY_LOAM)).isCloseTo(7.75, within(7.75 / 3));
    assertThat(exponent(SoilTexture.CLAY)).isCloseTo(11.4, within(11.4 / 3));
  }

  private static double exponent(SoilTexture texture) {
    return new WaterRetention(texture.fieldCapacity(), texture.wiltingPoint()).exponent();
  }

  @Test
  void theCatalogRefusesABaseThatDrainedSoilDoesNotReach() {
    assertThat(WaterRetention.FIELD_CAPACITY_MPA).isEqualTo(Emergence.DRAINED_MPA);
  }

  @Property
  void waterAndPotentialAreInverse(@ForAll @DoubleRange(min = 0.2, max = 1) double relative) {
    WaterRetention retention = new WaterRetention(0.29, 0.15);

    assertThat(retention.relativeWaterAt(retention.potentialMPa(relative)))
        .isCloseTo(relative, within(1e-9));
  }

  @Property
  void drierHoldsHarder(
      @ForAll @DoubleRange(min = 0.2, max = 0.99) double relative,
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double more) {
    WaterRetention retention = new WaterRetention(0.25, 0.12);

    assertThat(retention.potentialMPa(relative))
        .isLessThan(retention.potentialMPa(relative + more));
  }
}
