package org.swathbook.rules;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** Examples of the rules on the day, the place and the sprayer, with the starter catalog. */
final class DayCases {
  private DayCases() {}

  static List<RuleCase> all() {
    return Stream.of(air(), hours(), water(), neighbors(), sprayer())
        .flatMap(List::stream)
        .toList();
  }

  private static RuleCase trips(String rule, String example, MixCase job) {
    return new RuleCase(rule, true, example, () -> job.judged().judgement().findings());
  }

  private static RuleCase silent(String rule, String example, MixCase job) {
    return new RuleCase(rule, false, example, () -> job.judged().judgement().findings());
  }

  /** Soybean with the dicamba trait, sprayed over the top as the label of 2027 wants it. */
  private static MixCase dicamba() {
    return MixCase.in("soybean", "dicamba", "glyphosate").day(24, "V2", 5).tank("dicamba 0.5 ae");
  }

  private static MixCase choline() {
    return MixCase.in("soybean", "2,4-D", "glyphosate")
        .day(24, "V2", 5)
        .tank("2,4-D choline 0.95 ae");
  }

  private static MixCase glufosinate() {
    return MixCase.in("soybean", "glufosinate")
        .day(24, "V2", 5)
        .tank("glufosinate-ammonium 0.6 ai");
  }

  private static List<RuleCase> air() {
    return List.of(
        trips("wind", "14 mph with dicamba, which allows 10", dicamba().sky(Sky.fair().wind(14))),
        silent("wind", "7 mph with dicamba", dicamba().sky(Sky.fair().wind(7))),
        silent("wind", "10 mph, the very limit", dicamba().sky(Sky.fair().wind(10))),
        trips(
            "temperature",
            "dicamba over soybean with a forecast high of 96 F, where 95 F are the most",
            dicamba().sky(Sky.fair().high(96)).seen("AMATU", 2)),
        silent("temperature", "the same at 78 F", dicamba().sky(Sky.fair().high(78))),
        trips(
            "inversion",
            "an observed inversion with 2,4-D choline",
            choline().sky(Sky.fair().wind(6).inversion(Optional.of(true)))),
        silent(
            "inversion",
            "11:00 with wind of 6 mph and none observed",
            choline().sky(Sky.fair().wind(6).inversion(Optional.empty()))));
  }

  private static List<RuleCase> hours() {
    return List.of(
        trips(
            "time-of-day",
            "dicamba over soybean half an hour before sunset",
            dicamba().time(LocalTime.of(20, 15))),
        silent("time-of-day", "glufosinate at 11:00", glufosinate().time(LocalTime.of(11, 0))),
        trips(
            "rain-too-soon",
            "2,4-D choline with an inch of rain in the next 48 hours",
            choline().sky(Sky.fair().rain(30, 1.0))),
        silent(
            "rain-too-soon",
            "clethodim with rain in 3 hours",
            MixCase.in("soybean")
                .day(24, "V2", 5)
                .tank("clethodim 0.125 ai")
                .sky(Sky.fair().rain(3, 0.1))));
  }

  private static List<RuleCase> water() {
    return List.of(
        trips(
            "water-quality",
            "glyphosate in water of 600 ppm CaCO3 without ammonium sulfate",
            MixCase.in("soybean", "glyphosate")
                .day(24, "V2", 5)
                .tank("glyphosate 1.0 ae")
                .hardness(600)),
        silent(
            "water-quality",
            "2,4-D choline with ammonium sulfate at 320 ppm CaCO3",
            choline().adjuvant("ammonium-sulfate", "8.5 lb/100 gal").hardness(320)),
        trips(
            "setback-water",
            "atrazine on a field with a river at 90 ft, where 200 ft are kept from lakes and 66 ft from where runoff enters",
            MixCase.in("corn")
                .day(20, "V3", 6)
                .tank("atrazine 1.0 ai")
                .field(f -> f.waterFeet(90))),
        silent(
            "setback-water",
            "atrazine with no water within 250 ft",
            MixCase.in("corn")
                .day(20, "V3", 6)
                .tank("atrazine 1.0 ai")
                .field(f -> f.waterFeet(250))));
  }

  private static List<RuleCase> neighbors() {
    return List.of(
        trips(
            "sensitive-neighbor",
            "dicamba over soybean with wind from the southwest and a vineyard 1500 ft northeast",
            dicamba().field(f -> f.neighbors("vineyard NE 1500 ft")).sky(Sky.fair().from(225))),
        silent(
            "sensitive-neighbor",
            "the same field with wind from the north",
            dicamba().field(f -> f.neighbors("vineyard NE 1500 ft")).sky(Sky.fair().from(0))));
  }

  private static List<RuleCase> sprayer() {
    return List.of(
        trips(
            "carrier-volume",
            "dicamba over soybean at 10 gal/acre, where 15 are the least",
            dicamba().gallons(10)),
        trips(
            "carrier-volume",
            "liquid fertilizer over corn of V4 with mesotrione, which refuses it",
            MixCase.in("corn")
                .day(24, "V4", 9)
                .tank("mesotrione 0.094 ai")
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER)),
        silent(
            "carrier-volume",
            "glyphosate and 2,4-D choline at 15 gal/acre",
            choline().tank("glyphosate 1.0 ae").gallons(15)),
        trips(
            "tank-residue",
            "dicamba last, one rinse with water, soybean without the trait",
            glufosinate().lastLoad("dicamba", Rinse.WATER_RINSE)),
        silent(
            "tank-residue",
            "atrazine and mesotrione last, a triple rinse, soybean",
            glufosinate().lastLoad("atrazine", Rinse.TRIPLE_RINSE)),
        silent(
            "tank-residue",
            "dicamba last, one rinse, soybean with the trait",
            dicamba().lastLoad("dicamba", Rinse.WATER_RINSE)),
        trips(
            "droplet-class",
            "glufosinate in extremely coarse droplets",
            glufosinate().droplets(DropletClass.EXTREMELY_COARSE)));
  }
}
