package org.swathbook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.file.CatalogLoader;

/**
 * Crops and weeds of the fixtures are those of the starter catalog; checks of them count for it.
 */
class FixturesTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  @Test
  void cropsReachTheirStagesAndHeightsAsTheStarterCatalogSays() {
    for (Crop mine : Fixtures.catalog().crops()) {
      Crop starter = STARTER.crop(mine.id());

      assertThat(mine.emergenceStage()).isEqualTo(starter.emergenceStage());
      assertThat(mine.leafStages()).isEqualTo(starter.leafStages());
      assertThat(mine.clock().method()).isEqualTo(starter.clock().method());
      assertThat(mine.clock().baseC()).isCloseTo(starter.clock().baseC(), within(1e-9));
      assertThat(mine.stages()).hasSameSizeAs(starter.stages());
      for (int i = 0; i < mine.stages().size(); i++) {
        CropStage a = mine.stages().get(i);
        CropStage b = starter.stages().get(i);
        assertThat(a.name()).isEqualTo(b.name());
        assertThat(a.daysAfterEmergence()).isEqualTo(b.daysAfterEmergence());
        assertThat(a.degreeDays().orElse(-1))
            .as("%s %s", mine.name(), a.name())
            .isCloseTo(b.degreeDays().orElse(-1), within(1e-9));
      }
      mine.heightsCm()
          .forEach(
              (stage, cm) ->
                  assertThat(cm)
                      .isCloseTo(starter.heightsCm().getOrDefault(stage, -1.0), within(1e-9)));
      assertThat(mine.canopy().daysByRowCm().values())
          .containsExactlyElementsOf(starter.canopy().daysByRowCm().values());
    }
  }

  @Test
  void weedsComeUpAndGrowAsTheStarterCatalogSays() {
    for (Weed mine : Fixtures.catalog().weeds()) {
      Emergence a = mine.emergence();
      Emergence b = STARTER.weed(mine.id()).emergence();

      assertThat(a.clock().baseC()).isCloseTo(b.clock().baseC(), within(1e-9));
      assertThat(a.at10()).as(mine.name()).isCloseTo(b.at10(), within(1e-9));
      assertThat(a.at50()).as(mine.name()).isCloseTo(b.at50(), within(1e-9));
      assertThat(a.at90()).as(mine.name()).isCloseTo(b.at90(), within(1e-9));
      assertThat(a.tail().isPresent()).isEqualTo(b.tail().isPresent());

      HeightCurve h = mine.height();
      HeightCurve k = STARTER.weed(mine.id()).height();
      assertThat(new double[] {h.baseC(), h.slopeCm(), h.relativeRate(), h.lag(), h.maxCm()})
          .as(mine.name())
          .containsExactly(
              new double[] {k.baseC(), k.slopeCm(), k.relativeRate(), k.lag(), k.maxCm()},
              within(1e-9));
    }
  }
}
