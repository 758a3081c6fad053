package org.swathbook.rules;

import org.swathbook.catalog.Catalog;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;

/** Tanks on one day of a field, with the starter catalog or one in which a value is another. */
final class StarterTanks {
  static final Catalog STARTER = MixCase.CATALOG;

  private StarterTanks() {}

  /** Soybean of every trait at V2, sprayed on 1 June. */
  static MixCase soy(Catalog catalog, String tank) {
    return MixCase.in("soybean", "glyphosate", "dicamba", "2,4-D", "glufosinate")
        .catalog(catalog)
        .day(24, "V2", 5)
        .tank(tank);
  }

  static MixCase soy(String tank) {
    return soy(STARTER, tank);
  }

  /** So many days before planting. */
  static MixCase before(int days, String crop, String tank) {
    return MixCase.in(crop).day(-days, "", 0).tank(tank);
  }

  static MixCase corn(Catalog catalog, String tank) {
    return MixCase.in("corn", "glyphosate").catalog(catalog).day(24, "V4", 9).tank(tank);
  }

  static MixCase corn(String tank) {
    return corn(STARTER, tank);
  }

  static Catalog without(String active, String path) {
    return Restated.without(STARTER, active, path);
  }

  static Catalog value(String active, String path, Object value) {
    return Restated.value(STARTER, active, path, value);
  }
}
