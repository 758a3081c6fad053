package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.program.Applicator;
import org.swathbook.rules.Verdict;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;
import org.swathbook.testing.Sky;

/**
 * Each limit that a tank needs taken out of the catalog in turn: it is asked for, and what was not
 * blocked is never clear. The rest of the catalog is the starter's.
 */
class UnstatedLimitsTest {

  /**
   * @param path components of the ingredient's records that lead to the limit; {@code use} stands
   *     for every use
   */
  record Gap(String active, String path, Function<Catalog, MixCase> job) {
    @Override
    public String toString() {
      return active + " " + path;
    }
  }

  private static MixCase post(Catalog catalog) {
    return MixCase.in("soybean", "glyphosate", "2,4-D")
        .catalog(catalog)
        .day(24, "V2", 5)
        .field(f -> f.waterFeet(5000))
        .weed("AMATU", 3)
        .droplets(DropletClass.COARSE)
        .applied(-20, "glyphosate 0.8 ae")
        .tank("glyphosate 1.0 ae")
        .adjuvant("ammonium-sulfate", "8.5 lb/100 gal");
  }

  private static MixCase pre(Catalog catalog) {
    return MixCase.in("soybean")
        .catalog(catalog)
        .day(-8, "", 0)
        .field(f -> f.waterFeet(5000))
        .tank("metribuzin 0.3 ai");
  }

  private static MixCase two(Catalog catalog) {
    return post(catalog).tank("clethodim 0.125 ai");
  }

  static Stream<Gap> gaps() {
    List<Gap> out = new ArrayList<>();
    for (String limit :
        List.of(
            "use.traits",
            "use.timing",
            "use.cropHeightCm",
            "use.rates",
            "use.caps",
            "use.applications",
            "use.repeatDays",
            "use.weedHeights",
            "terms.restrictedUse",
            "terms.carrierMinGalPerAcre",
            "terms.setbacks",
            "terms.tank.adjuvantNeeded",
            "terms.tank.adjuvantRefused",
            "terms.tank.droplets")) {
      out.add(new Gap("glyphosate", limit, UnstatedLimitsTest::post));
    }
    for (String limit :
        List.of("use.rates", "use.timing", "use.plantingInterval", "use.soilPh", "use.caps")) {
      out.add(new Gap("metribuzin", limit, UnstatedLimitsTest::pre));
    }
    out.add(new Gap("clethodim", "terms.tank.partners", UnstatedLimitsTest::two));
    out.add(
        new Gap(
            "clethodim",
            "terms.tank.cleanOut",
            c ->
                MixCase.in("corn")
                    .catalog(c)
                    .day(20, "V3", 6)
                    .lastLoad("clethodim", Rinse.CLEANER)
                    .tank("mesotrione 0.094 ai")));
    out.add(
        new Gap(
            "mesotrione",
            "terms.tank.insecticides",
            c ->
                MixCase.in("corn")
                    .catalog(c)
                    .day(20, "V3", 6)
                    .others("organophosphate")
                    .tank("mesotrione 0.094 ai")));
    out.add(new Gap("glyphosate", "use.harvest", UnstatedLimitsTest::post));
    out.add(new Gap("metribuzin", "rotation", UnstatedLimitsTest::pre));
    out.add(
        new Gap(
            "paraquat",
            "terms.training",
            c ->
                MixCase.in("corn")
                    .catalog(c)
                    .day(-5, "", 0)
                    .by(new Applicator("R. Invented", "NE-0001", Optional.of(List.of("paraquat"))))
                    .tank("paraquat 0.5 cation")));
    out.add(
        new Gap(
            "pendimethalin",
            "use.incorporationRefused",
            c ->
                MixCase.in("corn")
                    .catalog(c)
                    .day(0, "", 0)
                    .incorporated(true)
                    .tank("pendimethalin 0.95 ai")));
    for (String limit :
        List.of("downwindBuffer", "inversionRefused", "hours", "runoffRainHours", "temperature")) {
      out.add(new Gap("dicamba", "terms.day." + limit, UnstatedLimitsTest::evening));
    }
    out.add(new Gap("dicamba", "terms.foliar", UnstatedLimitsTest::evening));
    return out.stream();
  }

  /** Dicamba over soybean in the evening before rain, upwind of a vineyard. */
  private static MixCase evening(Catalog catalog) {
    return MixCase.in("soybean", "dicamba", "glyphosate")
        .catalog(catalog)
        .day(24, "V2", 5)
        .weed("AMATU", 3)
        .field(f -> f.neighbors("vineyard NE 1000 ft"))
        .time(LocalTime.of(19, 30))
        .sky(Sky.fair().wind(5).from(225).high(88).rain(30, 0.6).inversion(Optional.empty()))
        .tank("dicamba 0.5 ae");
  }

  @ParameterizedTest
  @MethodSource("gaps")
  void isAskedFor(Gap gap) {
    Judgement known = gap.job().apply(MixCase.CATALOG).judged().judgement();
    Judgement unknown =
        gap.job()
            .apply(Restated.without(MixCase.CATALOG, gap.active(), gap.path()))
            .judged()
            .judgement();

    assertThat(unknown.asks().size()).isGreaterThan(known.asks().size());
    assertThat(unknown.verdict()).isNotEqualTo(Verdict.CLEAR);
  }
}
