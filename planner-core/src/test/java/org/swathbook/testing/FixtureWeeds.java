package org.swathbook.testing;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.SeedBiology;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedKind;

/** The eight weeds of the starter catalog; emergence in °F-days of base 48 °F from 1 January. */
final class FixtureWeeds {
  private static final Source SOURCE = new Source("default, test fixture");

  /** 48 °F in °C. */
  static final double BASE_48_F = 16 / 1.8;

  private FixtureWeeds() {}

  static List<Weed> all() {
    WeedKind b = WeedKind.BROADLEAF;
    WeedKind g = WeedKind.GRASS;
    return List.of(
        weed("AMAPA", "Palmer amaranth", b, "amaranthus")
            .emergence(370, 1129, 2300)
            .height(10, 0.20, 300)
            .competition(0.178, 0.95, 0.477, 0.80)
            .seed(0.05, 0.35, 50_000, 0)
            .build(),
        weed("AMATU", "waterhemp", b, "amaranthus")
            .emergence(370, 870, 1500)
            .height(10, 0.135, 300)
            .competition(0.10, 0.60, 0.14, 0.70)
            .seed(0.07, 0.50, 50_000, 0)
            .build(),
        weed("AMBTR", "giant ragweed", b, "ambrosia")
            .emergence(38, 110, 560)
            .height(4, 0.16, 450)
            .competition(1.36, 0.90, 1.36, 0.90)
            .seed(0.50, 0.20, 1_800, 0.30)
            .build(),
        weed("ABUTH", "velvetleaf", b, "abutilon")
            .emergence(130, 400, 1500)
            .height(10, 0.10, 210)
            .competition(0.035, 0.50, 0.06, 0.60)
            .seed(0.10, 0.55, 2_000, 0.95)
            .build(),
        weed("KCHSC", "kochia", b, "bassia")
            .emergence(10, 60, 300)
            .tail(0.05, 1400)
            .height(4, 0.13, 200)
            .competition(0.06, 0.60, 0.08, 0.65)
            .seed(0.26, 0.05, 14_000, 0.50)
            .build(),
        weed("SETFA", "giant foxtail", g, "setaria")
            .emergence(160, 420, 1400)
            .height(10, 0.10, 198)
            .competition(0.015, 0.45, 0.03, 0.50)
            .seed(0.32, 0.10, 1_500, 0.99)
            .build(),
        weed("SETVI", "green foxtail", g, "setaria")
            .emergence(160, 420, 1400)
            .height(10, 0.07, 60)
            .competition(0.016, 0.45, 0.019, 0.50)
            .seed(0.09, 0.45, 800, 0.99)
            .build(),
        weed("SORVU", "shattercane", g, "sorghum")
            .emergence(300, 769, 1400)
            .height(10, 0.16, 300)
            .competition(0.042, 0.60, 0.042, 0.60)
            .seed(0.30, 0.25, 1_000, 0.80)
            .build());
  }

  static Builder weed(String eppo, String name, WeedKind kind, String genus) {
    return new Builder(eppo, name, kind, genus);
  }

  /** A weed step by step; everything but the names has a start value. */
  static final class Builder {
    private final String eppo;
    private final String name;
    private final WeedKind kind;
    private final String genus;
    private double[] points = {160, 420, 1400};
    private Optional<Emergence.Tail> tail = Optional.empty();
    private HeightCurve height = new HeightCurve(10, 0.1, 0.03, 90, 200, SOURCE);
    private Map<CropId, Competition> competition = Map.of();
    private SeedBiology seed = new SeedBiology(0.1, 0.5, 1_000, 0.9, SOURCE);

    private Builder(String eppo, String name, WeedKind kind, String genus) {
      this.eppo = eppo;
      this.name = name;
      this.kind = kind;
      this.genus = genus;
    }

    Builder emergence(double at10, double at50, double at90) {
      points = new double[] {at10 / 1.8, at50 / 1.8, at90 / 1.8};
      return this;
    }

    Builder tail(double share, double until) {
      tail = Optional.of(new Emergence.Tail(share, until / 1.8));
      return this;
    }

    Builder height(double baseC, double slopeCm, double maxCm) {
      height = new HeightCurve(baseC, slopeCm, 0.03, 90, maxCm, SOURCE);
      return this;
    }

    /** Corn's two parameters, which serve sorghum too, and soybean's. */
    Builder competition(double cornI, double cornA, double soyI, double soyA) {
      competition =
          Map.of(
              CropId.of("corn"), new Competition(cornI, cornA, SOURCE),
              CropId.of("grain-sorghum"), new Competition(cornI, cornA, SOURCE),
              CropId.of("soybean"), new Competition(soyI, soyA, SOURCE));
      return this;
    }

    Builder seed(double emerged, double survival, double fecundity, double selfing) {
      seed = new SeedBiology(emerged, survival, fecundity, selfing, SOURCE);
      return this;
    }

    Weed build() {
      return new Weed(
          WeedId.of(eppo),
          name,
          name,
          List.of(),
          kind,
          "",
          genus,
          new Emergence(
              new ThermalClock(DegreeDayMethod.AVERAGE, BASE_48_F, OptionalDouble.empty()),
              MonthDay.of(1, 1),
              points[0],
              points[1],
              points[2],
              tail,
              OptionalDouble.empty(),
              SOURCE),
          height,
          competition,
          seed,
          Map.of(),
          LocalDate.of(2026, 11, 1));
    }
  }
}
