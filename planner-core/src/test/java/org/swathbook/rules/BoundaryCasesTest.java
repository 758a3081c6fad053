package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/**
 * Tanks at a limit, just inside and just outside it: a value exactly at a limit is legal. Sunrise
 * is at 06:00, sunset at 20:45; limits are those of the starter catalog.
 */
class BoundaryCasesTest {
  private static final String NONE = "none";

  record Case(String rule, String says, String words, MixCase job) {
    @Override
    public String toString() {
      return rule + " " + says + ": " + words;
    }
  }

  private static Case of(String rule, String says, String words, MixCase job) {
    return new Case(rule, says, words, job);
  }

  private static MixCase dicamba() {
    return MixCase.in("soybean", "dicamba", "glyphosate").day(24, "V2", 5).tank("dicamba 0.5 ae");
  }

  private static MixCase choline() {
    return MixCase.in("soybean", "2,4-D", "glyphosate")
        .day(24, "V2", 5)
        .tank("2,4-D choline 0.95 ae");
  }

  private static MixCase glyphosate() {
    return MixCase.in("soybean", "glyphosate").day(24, "V2", 5).tank("glyphosate 1.0 ae");
  }

  private static MixCase glufosinate() {
    return MixCase.in("soybean", "glufosinate")
        .day(24, "V2", 5)
        .tank("glufosinate-ammonium 0.6 ai");
  }

  private static MixCase atrazine(double waterFeet) {
    return MixCase.in("corn")
        .day(20, "V3", 6)
        .tank("atrazine 1.0 ai")
        .field(f -> f.waterFeet(waterFeet));
  }

  static Stream<Case> cases() {
    return Stream.of(
            wind(), temperature(), inversion(), hours(), rain(), water(), place(), sprayer(), mix())
        .flatMap(List::stream);
  }

  private static List<Case> wind() {
    return List.of(
        of("wind", NONE, "3 mph, the least of dicamba", dicamba().sky(Sky.fair().wind(3))),
        of("wind", "block", "2.9 mph with dicamba", dicamba().sky(Sky.fair().wind(2.9))),
        of("wind", NONE, "10 mph, the most of dicamba", dicamba().sky(Sky.fair().wind(10))),
        of("wind", "block", "10.1 mph with dicamba", dicamba().sky(Sky.fair().wind(10.1))),
        of("wind", "block", "8 mph with gusts of 11", dicamba().sky(Sky.fair().wind(8).gusts(11))),
        of("wind", NONE, "8 mph with gusts of 10", dicamba().sky(Sky.fair().wind(8).gusts(10))),
        of("wind", NONE, "15 mph with 2,4-D choline", choline().sky(Sky.fair().wind(15))),
        of("wind", "block", "15.1 mph with 2,4-D choline", choline().sky(Sky.fair().wind(15.1))),
        of(
            "wind",
            "block",
            "gusts of 25 mph, the wind not known",
            dicamba().sky(Sky.fair().windUnknown().gusts(25))),
        of(
            "wind",
            "warn",
            "14 mph with a partner whose label names no wind",
            MixCase.in("soybean", "glyphosate")
                .day(24, "V2", 5)
                .tank("glyphosate 1.0 ae + fomesafen 0.25 ai")
                .sky(Sky.fair().wind(14))),
        of(
            "wind",
            "warn",
            "a forecast of 8 mph, 80 % of what dicamba allows",
            dicamba().sky(Sky.fair().wind(8).forecast())),
        of(
            "wind",
            NONE,
            "a forecast of 7.9 mph with dicamba",
            dicamba().sky(Sky.fair().wind(7.9).forecast())),
        of(
            "wind",
            NONE,
            "8 mph measured at the field with dicamba",
            dicamba().sky(Sky.fair().wind(8))),
        of(
            "wind",
            NONE,
            "a forecast of 7 mph with gusts of 9, which are below the limit itself",
            dicamba().sky(Sky.fair().wind(7).gusts(9).forecast())),
        of("wind", "block", "2 mph with 2,4-D choline", choline().sky(Sky.fair().wind(2))));
  }

  private static List<Case> temperature() {
    return List.of(
        of(
            "temperature",
            "warn",
            "95 F with dicamba: legal, and hot",
            dicamba().sky(Sky.fair().high(95))),
        of("temperature", "block", "95.5 F with dicamba", dicamba().sky(Sky.fair().high(95.5))),
        of("temperature", NONE, "90 F with glufosinate", glufosinate().sky(Sky.fair().high(90))),
        of("temperature", "warn", "91 F with glufosinate", glufosinate().sky(Sky.fair().high(91))),
        of(
            "temperature",
            NONE,
            "91 F with glyphosate alone",
            glyphosate().sky(Sky.fair().high(91))),
        of(
            "temperature",
            NONE,
            "60 F by day with glyphosate",
            glyphosate().sky(Sky.fair().high(60).night(45))),
        of(
            "temperature",
            "warn",
            "59 F by day with glyphosate",
            glyphosate().sky(Sky.fair().high(59).night(45))),
        of(
            "temperature",
            NONE,
            "40 F by night with glyphosate",
            glyphosate().sky(Sky.fair().high(70).night(40))),
        of(
            "temperature",
            "warn",
            "35 F by night with glyphosate",
            glyphosate().sky(Sky.fair().high(70).night(35))),
        of(
            "temperature",
            NONE,
            "a mean of 50 F over the three days before, and glyphosate",
            cold(50, 60).tank("glyphosate 1.0 ae")),
        of(
            "temperature",
            "warn",
            "a mean of 49.9 F over the three days before, and glyphosate",
            cold(49.9, 60).tank("glyphosate 1.0 ae")),
        of(
            "temperature",
            "warn",
            "a mean of 49 F over the day and the two after, and clethodim",
            cold(55, 49).tank("clethodim 0.125 ai")),
        of(
            "temperature",
            NONE,
            "the same with fomesafen, which moves nowhere in the plant",
            cold(49, 49).tank("fomesafen 0.25 ai")),
        of(
            "temperature",
            NONE,
            "the same with clethodim where no weed stands",
            MixCase.in("soybean")
                .day(24, "V2", 5)
                .tank("clethodim 0.125 ai")
                .sky(Sky.fair().high(65).means(49, 49))));
  }

  private static MixCase cold(double pastF, double nextF) {
    return MixCase.in("soybean", "glyphosate")
        .day(24, "V2", 5)
        .seen("SETFA", 3)
        .sky(Sky.fair().high(65).means(pastF, nextF));
  }

  private static MixCase evening(String clock) {
    return choline()
        .time(LocalTime.parse(clock))
        .sky(Sky.fair().wind(3.5).inversion(Optional.empty()));
  }

  private static List<Case> inversion() {
    return List.of(
        of("inversion", NONE, "one hour after sunrise in hardly any wind", evening("07:00")),
        of("inversion", "warn", "59 minutes after sunrise", evening("06:59")),
        of("inversion", NONE, "two hours before sunset", evening("18:45")),
        of("inversion", "warn", "119 minutes before sunset", evening("18:46")),
        of("inversion", "warn", "19:50 with hardly any wind", evening("19:50")),
        of(
            "inversion",
            NONE,
            "19:50 with wind of 6 mph",
            choline()
                .time(LocalTime.of(19, 50))
                .sky(Sky.fair().wind(6).inversion(Optional.empty()))),
        of(
            "inversion",
            NONE,
            "19:50 in hardly any wind, looked for and none there",
            choline()
                .time(LocalTime.of(19, 50))
                .sky(Sky.fair().wind(3.5).inversion(Optional.of(false)))));
  }

  private static List<Case> hours() {
    return List.of(
        of(
            "time-of-day",
            NONE,
            "dicamba an hour after sunrise",
            dicamba().time(LocalTime.of(7, 0))),
        of("time-of-day", "block", "dicamba at 06:59", dicamba().time(LocalTime.of(6, 59))),
        of(
            "time-of-day",
            NONE,
            "dicamba two hours before sunset",
            dicamba().time(LocalTime.of(18, 45))),
        of("time-of-day", "block", "dicamba at 18:46", dicamba().time(LocalTime.of(18, 46))),
        of(
            "time-of-day",
            NONE,
            "clethodim by night: its label names no hours",
            MixCase.in("soybean")
                .day(24, "V2", 5)
                .tank("clethodim 0.125 ai")
                .time(LocalTime.of(22, 0))));
  }

  private static List<Case> rain() {
    return List.of(
        of(
            "rain-too-soon",
            "block",
            "half an inch in 48 hours with 2,4-D choline",
            choline().sky(Sky.fair().rain(40, 0.5))),
        of(
            "rain-too-soon",
            NONE,
            "0.49 in in 48 hours with 2,4-D choline",
            choline().sky(Sky.fair().rain(40, 0.49))),
        of(
            "rain-too-soon",
            NONE,
            "two inches in 40 hours with glyphosate",
            glyphosate().sky(Sky.fair().rain(40, 2))),
        of(
            "rain-too-soon",
            "note",
            "glyphosate with rain in a quarter of an hour, no driver weed there",
            glyphosate().sky(Sky.fair().rain(0.25, 0.2))),
        of(
            "rain-too-soon",
            "warn",
            "the same on a driver weed that hangs on it",
            glyphosate().weed("AMATU", 3).sky(Sky.fair().rain(0.25, 0.2))));
  }

  private static List<Case> water() {
    return List.of(
        of("water-quality", NONE, "150 ppm CaCO3", glyphosate().hardness(150)),
        of("water-quality", "warn", "151 ppm CaCO3", glyphosate().hardness(151)),
        of(
            "water-quality",
            NONE,
            "900 ppm with ammonium sulfate",
            glyphosate().adjuvant("ammonium-sulfate", "8.5 lb/100 gal").hardness(900)),
        of(
            "water-quality",
            NONE,
            "600 ppm takes 2.16 lb of ammonium sulfate in 100 gal: 2.2 are there",
            acidic("2.2 lb/100 gal", 600)),
        of(
            "water-quality",
            "warn",
            "2.1 lb of ammonium sulfate in 100 gal at 600 ppm",
            acidic("2.1 lb/100 gal", 600)),
        of(
            "water-quality",
            "warn",
            "0.3 lb of ammonium sulfate an acre in 15 gal, 2 lb in 100 gal, at 600 ppm",
            acidic("0.3 lb/acre", 600)),
        of(
            "water-quality",
            NONE,
            "2.5 % of the liquid, 8.5 lb in 100 gal, at 900 ppm",
            acidic("2.5 % v/v", 900)),
        of(
            "water-quality",
            NONE,
            "dicamba, which refuses ammonium, with a conditioner without it",
            dicamba().adjuvant("water-conditioner", "1 % v/v").hardness(600)),
        of("water-quality", "warn", "dicamba in hard water", dicamba().hardness(600)),
        of("water-quality", NONE, "flumioxazin in water of pH 7", flumioxazin(7)),
        of("water-quality", "warn", "flumioxazin in water of pH 7.1", flumioxazin(7.1)),
        of("water-quality", "warn", "flumioxazin in water of pH 4.9", flumioxazin(4.9)),
        of("water-quality", NONE, "dicamba in water of pH 5", dicamba().ph(5)),
        of("water-quality", "warn", "dicamba in water of pH 4.9", dicamba().ph(4.9)),
        of(
            "water-quality",
            NONE,
            "glyphosate, of which no range is known, in water of pH 8",
            glyphosate().ph(8)),
        of("water-quality", "note", "glyphosate in water of pH 8.1", glyphosate().ph(8.1)),
        of(
            "water-quality",
            NONE,
            "900 ppm with S-metolachlor, which is no weak acid",
            MixCase.in("soybean").day(0, "", 0).tank("S-metolachlor 1.2 ai").hardness(900)));
  }

  private static MixCase acidic(String sulfate, double ppm) {
    return glyphosate().adjuvant("ammonium-sulfate", sulfate).hardness(ppm);
  }

  private static MixCase flumioxazin(double ph) {
    return MixCase.in("soybean").day(-20, "", 0).tank("flumioxazin 0.06 ai").ph(ph);
  }

  private static MixCase saflufenacil(double gallons) {
    return MixCase.in("soybean").day(-40, "", 0).tank("saflufenacil 0.022 ai").gallons(gallons);
  }

  private static MixCase vineyard(double windFrom) {
    return dicamba().field(f -> f.neighbors("vineyard NE 1500 ft")).sky(Sky.fair().from(windFrom));
  }

  private static MixCase shelterbelt(double feet, UnaryOperator<MixCase> more) {
    return more.apply(
        dicamba()
            .field(f -> f.neighbors("shelterbelt N " + feet + " ft"))
            .sky(Sky.fair().from(180)));
  }

  private static List<Case> place() {
    return List.of(
        of("setback-water", NONE, "atrazine 200 ft from water", atrazine(200)),
        of("setback-water", "block", "atrazine 199 ft from water", atrazine(199)),
        of("sensitive-neighbor", "block", "wind straight at the vineyard", vineyard(225)),
        of("sensitive-neighbor", "block", "wind 45 degrees off it", vineyard(180)),
        of("sensitive-neighbor", NONE, "wind 46 degrees off it", vineyard(179)),
        of(
            "sensitive-neighbor",
            "block",
            "wind 45 degrees off it on the other side",
            vineyard(270)),
        of("sensitive-neighbor", NONE, "wind away from it", vineyard(45)),
        of(
            "sensitive-neighbor",
            "block",
            "strawberries, which no list of words knows",
            dicamba().field(f -> f.neighbors("strawberries NE 1500 ft")).sky(Sky.fair().from(225))),
        of(
            "sensitive-neighbor",
            NONE,
            "a vineyard two miles away",
            dicamba().field(f -> f.neighbors("vineyard NE 10560 ft")).sky(Sky.fair().from(225))),
        of(
            "sensitive-neighbor",
            "block",
            "shelterbelt at 239 ft, inside the buffer of 240",
            shelterbelt(239, m -> m)),
        of(
            "sensitive-neighbor",
            "warn",
            "shelterbelt at 240 ft: near, and no tender plant",
            shelterbelt(240, m -> m)),
        of("sensitive-neighbor", NONE, "shelterbelt at 1321 ft", shelterbelt(1321, m -> m)),
        of(
            "sensitive-neighbor",
            NONE,
            "clethodim toward a vineyard",
            MixCase.in("soybean")
                .day(24, "V2", 5)
                .tank("clethodim 0.125 ai")
                .field(f -> f.neighbors("vineyard NE 300 ft"))
                .sky(Sky.fair().from(225))));
  }

  private static List<Case> sprayer() {
    return List.of(
        of("carrier-volume", NONE, "dicamba at 15 gal/acre", dicamba().gallons(15)),
        of("carrier-volume", "block", "dicamba at 14.9 gal/acre", dicamba().gallons(14.9)),
        of(
            "carrier-volume",
            NONE,
            "saflufenacil at 15 gal/acre, which is advised",
            saflufenacil(15)),
        of("carrier-volume", "warn", "saflufenacil at 14.9 gal/acre", saflufenacil(14.9)),
        of("carrier-volume", "warn", "saflufenacil at 10 gal/acre, its least", saflufenacil(10)),
        of("carrier-volume", "block", "saflufenacil at 9.9 gal/acre", saflufenacil(9.9)),
        of(
            "tank-residue",
            NONE,
            "dicamba last and the triple rinse that its label asks for",
            glufosinate().lastLoad("dicamba", Rinse.TRIPLE_RINSE)),
        of(
            "tank-residue",
            NONE,
            "dicamba last and a cleaner, which is more",
            glufosinate().lastLoad("dicamba", Rinse.CLEANER)),
        of(
            "tank-residue",
            "block",
            "paraquat last and water alone, over corn: only hoods may go there",
            MixCase.in("corn")
                .day(20, "V3", 6)
                .lastLoad("paraquat", Rinse.WATER_RINSE)
                .tank("mesotrione 0.094 ai")),
        of(
            "tank-residue",
            "block",
            "dicamba last and water alone",
            glufosinate().lastLoad("dicamba", Rinse.WATER_RINSE)),
        of(
            "droplet-class",
            NONE,
            "glufosinate in coarse droplets",
            glufosinate().droplets(DropletClass.COARSE)),
        of(
            "droplet-class",
            "block",
            "glufosinate in very coarse droplets",
            glufosinate().droplets(DropletClass.VERY_COARSE)),
        of(
            "droplet-class",
            NONE,
            "dicamba in ultra coarse droplets",
            dicamba().droplets(DropletClass.ULTRA_COARSE)),
        of(
            "droplet-class",
            "block",
            "dicamba in very coarse droplets",
            dicamba().droplets(DropletClass.VERY_COARSE)));
  }

  private static MixCase cracking(double om) {
    return MixCase.in("soybean")
        .field(f -> f.soil(SoilTexture.LOAM, om, 6.6))
        .day(-1, "", 0)
        .tank("flumioxazin 0.08 ai + pyroxasulfone 0.1 ai");
  }

  private static List<Case> mix() {
    return List.of(
        of("crop-injury-stack", "warn", "sites 14 and 15 on 1.5 % organic matter", cracking(1.5)),
        of("crop-injury-stack", NONE, "sites 14 and 15 on 1.6 % organic matter", cracking(1.6)),
        of(
            "jar-test",
            NONE,
            "two solutions at 10 gal/acre",
            glyphosate().tank("imazethapyr 0.0625 ai").gallons(10)),
        of(
            "jar-test",
            "note",
            "two solutions at 9.9 gal/acre",
            glyphosate().tank("imazethapyr 0.0625 ai").gallons(9.9)),
        of(
            "jar-test",
            "note",
            "three products",
            glyphosate().tank("imazethapyr 0.0625 ai + clethodim 0.125 ai")),
        of("mixing-order", "note", "two products", glyphosate().tank("clethodim 0.125 ai")),
        of(
            "antagonism",
            "warn",
            "clethodim 0.093 lb with glyphosate and dicamba on volunteer corn",
            MixCase.in("soybean", "glyphosate", "dicamba")
                .day(24, "V2", 5)
                .weed("ZEAMX", 5, 9)
                .tank("clethodim 0.093 ai + glyphosate 1.0 ae + dicamba 0.5 ae")),
        of(
            "antagonism",
            NONE,
            "clethodim 0.0936 lb, the rate that mends it",
            MixCase.in("soybean", "glyphosate", "dicamba")
                .day(24, "V2", 5)
                .weed("ZEAMX", 5, 9)
                .tank("clethodim 0.0936 ai + glyphosate 1.0 ae + dicamba 0.5 ae")),
        of(
            "antagonism",
            NONE,
            "no grass stands",
            MixCase.in("soybean", "glyphosate", "dicamba")
                .day(24, "V2", 5)
                .tank("clethodim 0.05 ai + glyphosate 1.0 ae + dicamba 0.5 ae")));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatItMust(Case c) {
    List<Finding> said =
        c.job().judged().judgement().findings().stream()
            .filter(f -> f.rule().value().equals(c.rule()))
            .toList();
    String gravest =
        said.stream()
            .map(Finding::severity)
            .min(Severity::compareTo)
            .map(Severity::word)
            .orElse(NONE);
    assertThat(gravest).as(said.toString()).isEqualTo(c.says());
  }
}
