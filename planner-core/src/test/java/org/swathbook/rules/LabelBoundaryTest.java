package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.program.Applicator;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.MixCase;

/**
 * Limits of labels as the starter catalog has them, at the limit and just outside it. Unless said
 * otherwise corn and soybean are planted on 8 May 2027 in Nebraska, the tank goes out on 1 June,
 * harvest is on 5 October.
 */
class LabelBoundaryTest {
  private static final String NONE = "none";
  private static final String BLOCK = "block";
  private static final String WARN = "warn";
  private static final String NOTE = "note";

  record Case(String rule, String says, String words, MixCase job) {
    @Override
    public String toString() {
      return rule + " " + says + ": " + words;
    }
  }

  private static Case of(String rule, String says, String words, MixCase job) {
    return new Case(rule, says, words, job);
  }

  private static MixCase corn() {
    return MixCase.in("corn", "glyphosate").day(24, "V4", 9);
  }

  private static MixCase soy(String... traits) {
    return MixCase.in("soybean", traits).day(24, "V2", 5);
  }

  private static MixCase before(int days, String crop) {
    return MixCase.in(crop).day(-days, "", 0);
  }

  static Stream<Case> cases() {
    return Stream.of(
            listed(),
            traits(),
            windows(),
            planting(),
            rates(),
            soils(),
            caps(),
            counts(),
            harvests(),
            nextCrops(),
            adjuvants(),
            partners(),
            dates(),
            steel(),
            people(),
            weeds())
        .flatMap(List::stream);
  }

  private static List<Case> listed() {
    String rule = "crop-not-listed";
    return List.of(
        of(rule, BLOCK, "atrazine over soybean", soy().tank("atrazine 1.0 ai")),
        of(rule, BLOCK, "metribuzin over soybean", soy().tank("metribuzin 0.3 ai")),
        of(rule, NONE, "metribuzin before it", before(1, "soybean").tank("metribuzin 0.3 ai")),
        of(rule, BLOCK, "clethodim over corn", corn().tank("clethodim 0.125 ai")),
        of(rule, NONE, "clethodim over soybean", soy().tank("clethodim 0.125 ai")),
        of(
            rule,
            BLOCK,
            "acetochlor as an emulsion in soybean",
            before(0, "soybean").product("acetochlor-6.4ec", "1.5 pt/acre")),
        of(
            rule,
            NONE,
            "acetochlor in capsules in soybean",
            before(0, "soybean").product("acetochlor-3cs", "3 pt/acre")));
  }

  private static List<Case> traits() {
    String rule = "trait-needed";
    String tank = "glyphosate 1.0 ae";
    return List.of(
        of(rule, NONE, "glyphosate over the trait", soy("glyphosate").tank(tank)),
        of(rule, BLOCK, "glyphosate over another trait", soy("glufosinate").tank(tank)),
        of(
            rule,
            BLOCK,
            "glyphosate over seed of which nothing is written down",
            soy().field(FieldBuilder::traitsUnknown).tank(tank)),
        of(rule, NONE, "glyphosate on the day before planting", before(1, "soybean").tank(tank)),
        of(
            rule,
            BLOCK,
            "dicamba over the 2,4-D trait",
            soy("2,4-D", "glyphosate").tank("dicamba 0.5 ae")));
  }

  private static MixCase atrazineAt(double inches) {
    return MixCase.in("corn").day(24, "V4", inches).tank("atrazine 1.0 ai");
  }

  private static MixCase mesotrioneAt(String stage, double inches) {
    return MixCase.in("corn").day(36, stage, inches).tank("mesotrione 0.094 ai");
  }

  private static MixCase cholineAt(String stage) {
    return MixCase.in("soybean", "2,4-D").day(50, stage, 20).tank("2,4-D choline 0.95 ae");
  }

  private static List<Case> windows() {
    String rule = "stage-window";
    return List.of(
        of(rule, NONE, "atrazine at 11.9 in of corn, before 12", atrazineAt(11.9)),
        of(rule, BLOCK, "atrazine at 12 in", atrazineAt(12)),
        of(rule, NONE, "mesotrione at V8 and 30 in, the last of both", mesotrioneAt("V8", 30)),
        of(rule, BLOCK, "mesotrione at V9", mesotrioneAt("V9", 29)),
        of(rule, BLOCK, "mesotrione at V8 and 30.1 in", mesotrioneAt("V8", 30.1)),
        of(rule, NONE, "2,4-D choline at R1, the last stage", cholineAt("R1")),
        of(rule, BLOCK, "2,4-D choline at R2", cholineAt("R2")));
  }

  private static List<Case> planting() {
    String rule = "planting-interval";
    return List.of(
        of(
            rule,
            NONE,
            "2,4-D choline 30 days before soybean without the trait",
            before(30, "soybean").tank("2,4-D choline 0.95 ae")),
        of(rule, BLOCK, "29 days before it", before(29, "soybean").tank("2,4-D choline 0.95 ae")),
        of(rule, NONE, "14 days before corn", before(14, "corn").tank("2,4-D choline 0.95 ae")),
        of(rule, BLOCK, "13 days before corn", before(13, "corn").tank("2,4-D choline 0.95 ae")),
        of(
            rule,
            NONE,
            "2,4-D ester 0.5 lb 7 days before soybean",
            before(7, "soybean").tank("2,4-D ester 0.5 ae")),
        of(
            rule,
            BLOCK,
            "2,4-D ester 0.5 lb 6 days before it",
            before(6, "soybean").tank("2,4-D ester 0.5 ae")),
        of(
            rule,
            BLOCK,
            "2,4-D ester 0.51 lb, above that band, 29 days before it",
            before(29, "soybean").tank("2,4-D ester 0.51 ae")),
        of(
            rule,
            NONE,
            "2,4-D ester 0.51 lb 30 days before it",
            before(30, "soybean").tank("2,4-D ester 0.51 ae")));
  }

  private static MixCase choline(double pounds) {
    return soy("2,4-D").tank("2,4-D choline " + pounds + " ae");
  }

  private static List<Case> rates() {
    return List.of(
        of("rate-above-use", NONE, "2,4-D choline 0.95 lb, the most", choline(0.95)),
        of("rate-above-use", BLOCK, "2,4-D choline 0.96 lb", choline(0.96)),
        of(
            "rate-above-use",
            BLOCK,
            "0.5 and 0.46 lb of two products",
            choline(0.5).tank("2,4-D choline 0.46 ae")),
        of("rate-below-use", NONE, "2,4-D choline 0.71 lb, the least", choline(0.71)),
        of("rate-below-use", WARN, "2,4-D choline 0.70 lb", choline(0.70)),
        of(
            "below-full-rate",
            NONE,
            "glufosinate 0.595 lb, the middle of its range, on Palmer amaranth of 4 in",
            glufosinate(0.595)),
        of("below-full-rate", WARN, "glufosinate 0.58 lb on it, a step below", glufosinate(0.58)));
  }

  private static MixCase glufosinate(double pounds) {
    return soy("glufosinate").weed("AMAPA", 4).tank("glufosinate-ammonium " + pounds + " ai");
  }

  private static MixCase metribuzin(SoilTexture texture, double om, double ph, double pounds) {
    return before(1, "soybean")
        .field(f -> f.soil(texture, om, ph))
        .tank("metribuzin " + pounds + " ai");
  }

  private static MixCase erodible(double residuePct, double pounds) {
    return before(0, "corn").field(f -> f.erodible(residuePct)).tank("atrazine " + pounds + " ai");
  }

  /** What one soil allows less is the soil's affair, what none allows is the rate's. */
  private static List<Case> soils() {
    String rule = "soil-limit";
    String rate = "rate-above-use";
    SoilTexture silt = SoilTexture.SILT_LOAM;
    SoilTexture sandy = SoilTexture.SANDY_LOAM;
    return List.of(
        of(rule, NONE, "metribuzin at pH 7.4", metribuzin(silt, 2.5, 7.4, 0.3)),
        of(rule, BLOCK, "metribuzin at pH 7.5", metribuzin(silt, 2.5, 7.5, 0.3)),
        of(rule, NONE, "on coarse soil of 2 %", metribuzin(sandy, 2, 6.6, 0.3)),
        of(rule, BLOCK, "on coarse soil of 1.9 %", metribuzin(sandy, 1.9, 6.6, 0.3)),
        of(rule, BLOCK, "on sand", metribuzin(SoilTexture.SAND, 3, 6.6, 0.2)),
        of(rule, NONE, "0.5 lb on silt loam, its most", metribuzin(silt, 2.5, 6.6, 0.5)),
        of(rule, BLOCK, "0.51 lb on silt loam", metribuzin(silt, 2.5, 6.6, 0.51)),
        of(rate, NONE, "0.51 lb, which clay may have", metribuzin(silt, 2.5, 6.6, 0.51)),
        of(rule, BLOCK, "0.75 lb on silt loam, the most of any", metribuzin(silt, 2.5, 6.6, 0.75)),
        of(rate, NONE, "0.75 lb, the most of any soil", metribuzin(silt, 2.5, 6.6, 0.75)),
        of(rule, NONE, "0.76 lb, more than any soil", metribuzin(silt, 2.5, 6.6, 0.76)),
        of(rate, BLOCK, "0.76 lb, more than any soil", metribuzin(silt, 2.5, 6.6, 0.76)),
        of(rule, NONE, "atrazine 1.6 lb with 29 % residue", erodible(29, 1.6)),
        of(rule, BLOCK, "atrazine 1.61 lb with 29 % residue", erodible(29, 1.61)),
        of(rule, NONE, "atrazine 2.0 lb with 30 % residue", erodible(30, 2)),
        of(rule, BLOCK, "atrazine 2.0 lb with 29 % residue", erodible(29, 2)),
        of(rate, NONE, "atrazine 2.0 lb with 29 % residue", erodible(29, 2)),
        of(rate, BLOCK, "atrazine 2.01 lb with 29 % residue", erodible(29, 2.01)),
        of(rule, NONE, "atrazine 2.01 lb with 29 % residue", erodible(29, 2.01)));
  }

  private static MixCase atrazineAfter(double pounds) {
    return corn().applied(0, "atrazine " + pounds + " ai").tank("atrazine 1.0 ai");
  }

  private static MixCase fomesafen(int season, double now) {
    return soy()
        .applied(
            365 * (season - 2027) + 24, "fomesafen 0.07 ai", "soybean", season, SprayRecord.EMPTY)
        .tank("fomesafen " + now + " ai");
  }

  private static List<Case> caps() {
    String rule = "annual-cap";
    return List.of(
        of(rule, NONE, "atrazine 1.2 + 1.0 of 2.5 lb", atrazineAfter(1.2)),
        of(rule, WARN, "1.25 + 1.0, nine tenths", atrazineAfter(1.25)),
        of(rule, WARN, "1.5 + 1.0, all of it", atrazineAfter(1.5)),
        of(rule, BLOCK, "1.51 + 1.0", atrazineAfter(1.51)),
        of(rule, NONE, "fomesafen 0.07 + 0.15 of 0.25 lb in two years", fomesafen(2026, 0.15)),
        of(rule, WARN, "0.07 + 0.18, all of it", fomesafen(2026, 0.18)),
        of(rule, BLOCK, "0.07 + 0.19", fomesafen(2026, 0.19)),
        of(rule, NONE, "0.19 with the other two years ago", fomesafen(2025, 0.19)));
  }

  /** Three applications of 2,4-D choline, twelve days apart. */
  private static MixCase after(int... days) {
    MixCase job = soy("2,4-D");
    for (int day : days) {
      job.applied(day, "2,4-D choline 0.71 ae");
    }
    return job.tank("2,4-D choline 0.71 ae");
  }

  private static List<Case> counts() {
    return List.of(
        of("application-count", NONE, "the third", after(-20, 0)),
        of("application-count", BLOCK, "the fourth", after(-35, -20, 0)),
        of("application-count", NONE, "two days after the third began", after(-20, 0, 22)),
        of("application-count", BLOCK, "three days after it", after(-20, 0, 21)),
        of("repeat-interval", NONE, "twelve days after the first", after(12)),
        of("repeat-interval", BLOCK, "eleven days after it", after(13)));
  }

  private static MixCase clethodim(String harvest) {
    return soy().field(f -> f.harvest(harvest)).tank("clethodim 0.125 ai");
  }

  private static MixCase silage(String harvest) {
    return corn().field(f -> f.uses(Commodity.SILAGE).harvest(harvest)).tank("atrazine 1.0 ai");
  }

  private static List<Case> harvests() {
    return List.of(
        of("harvest-interval", NONE, "clethodim 60 days before harvest", clethodim("2027-07-31")),
        of("harvest-interval", BLOCK, "59 days before it", clethodim("2027-07-30")),
        of("grazing-feed", NONE, "atrazine 60 days before silage", silage("2027-07-31")),
        of("grazing-feed", BLOCK, "59 days before it", silage("2027-07-30")));
  }

  /** Fomesafen on 1 June and ten months to corn, 1 April. */
  private static MixCase cornOn(String date) {
    return soy().field(f -> f.next("corn", date)).tank("fomesafen 0.25 ai");
  }

  private static List<Case> nextCrops() {
    String rule = "next-crop-interval";
    return List.of(
        of(rule, BLOCK, "corn a day before the ten months are over", cornOn("2028-03-31")),
        of(rule, NOTE, "corn on the day", cornOn("2028-04-01")),
        of(rule, NOTE, "corn 29 days later", cornOn("2028-04-30")),
        of(rule, NONE, "corn 30 days later", cornOn("2028-05-01")));
  }

  private static MixCase oiled(String rate) {
    return soy().tank("clethodim 0.125 ai").adjuvant("crop-oil", rate);
  }

  private static MixCase bentazon(String sulfate) {
    return soy()
        .tank("bentazon 1.0 ai")
        .adjuvant("crop-oil", "1 qt/acre")
        .adjuvant("ammonium-sulfate", sulfate);
  }

  private static MixCase dicamba() {
    return soy("dicamba").tank("dicamba 0.5 ae");
  }

  private static List<Case> adjuvants() {
    String need = "adjuvant-needed";
    String refuse = "adjuvant-refused";
    return List.of(
        of(need, NONE, "clethodim with 1 % oil", oiled("1 % v/v")),
        of(need, WARN, "clethodim with 0.9 % oil", oiled("0.9 % v/v")),
        of(need, WARN, "clethodim without", soy().tank("clethodim 0.125 ai")),
        of(need, NONE, "bentazon with 2.5 lb of ammonium sulfate", bentazon("2.5 lb/acre")),
        of(need, WARN, "bentazon with 2.4 lb of it", bentazon("2.4 lb/acre")),
        of(
            need,
            NONE,
            "bentazon with liquid nitrogen in its place",
            soy()
                .tank("bentazon 1.0 ai")
                .adjuvant("crop-oil", "1 qt/acre")
                .adjuvant("liquid-nitrogen", "2 qt/acre")),
        of(
            need,
            WARN,
            "bentazon with half the liquid nitrogen",
            soy()
                .tank("bentazon 1.0 ai")
                .adjuvant("crop-oil", "1 qt/acre")
                .adjuvant("liquid-nitrogen", "1 qt/acre")),
        of(need, BLOCK, "dicamba over soybean by itself", dicamba()),
        of(
            need,
            BLOCK,
            "dicamba with a drift reducer alone",
            dicamba().adjuvant("drift-reducer", "0.3 % v/v")),
        of(
            need,
            NONE,
            "dicamba with both that its label asks for",
            dicamba()
                .adjuvant("drift-reducer", "0.3 % v/v")
                .adjuvant("volatility-reducer", "40 fl oz/acre")),
        of(
            refuse,
            BLOCK,
            "ammonium sulfate with dicamba over soybean",
            dicamba().adjuvant("ammonium-sulfate", "8.5 lb/100 gal")),
        of(
            refuse,
            NONE,
            "a conditioner without ammonium with it",
            dicamba().adjuvant("water-conditioner", "1 % v/v")),
        of(
            refuse,
            BLOCK,
            "oil with 2,4-D choline over soybean",
            choline(0.95).adjuvant("crop-oil", "1 % v/v")),
        of(
            refuse,
            NONE,
            "oil with 2,4-D choline 40 days before it",
            before(40, "soybean").tank("2,4-D choline 0.95 ae").adjuvant("crop-oil", "1 % v/v")));
  }

  private static List<Case> partners() {
    String rule = "partner-refused";
    String twice = "same-active-twice";
    return List.of(
        of(
            rule,
            BLOCK,
            "saflufenacil with flumioxazin before soybean",
            before(40, "soybean").tank("saflufenacil 0.022 ai + flumioxazin 0.06 ai")),
        of(
            rule,
            NONE,
            "saflufenacil with glyphosate before soybean",
            before(40, "soybean").tank("saflufenacil 0.022 ai + glyphosate 1.0 ae")),
        of(
            twice,
            WARN,
            "one product written twice",
            soy("glyphosate").tank("glyphosate 0.5 ae + glyphosate 0.5 ae")),
        of(
            twice,
            WARN,
            "S-metolachlor beside a premix of it",
            before(0, "soybean")
                .tank("S-metolachlor 0.5 ai")
                .product("s-metolachlor-metribuzin-6.5ec", "1 pt/acre")),
        of(
            twice,
            NONE,
            "S-metolachlor beside metribuzin",
            before(0, "soybean").tank("S-metolachlor 0.5 ai + metribuzin 0.3 ai")));
  }

  private static MixCase inState(String state, String crop, int day) {
    return MixCase.planted(java.time.LocalDate.parse("2027-07-11"), crop, "2,4-D")
        .field(f -> f.state(state))
        .day(day, crop.equals("corn") ? "V3" : "V2", 6);
  }

  private static List<Case> dates() {
    String tank = "atrazine 1.0 ai";
    return List.of(
        of("cutoff-date", NONE, "atrazine in WI on 31 July", inState("WI", "corn", 20).tank(tank)),
        of("cutoff-date", BLOCK, "on 1 August", inState("WI", "corn", 21).tank(tank)),
        of("cutoff-date", NONE, "in NE on 1 August", inState("NE", "corn", 21).tank(tank)),
        of(
            "registration-status",
            NONE,
            "2,4-D choline in NE",
            inState("NE", "soybean", 24).tank("2,4-D choline 0.95 ae")),
        of(
            "registration-status",
            BLOCK,
            "2,4-D choline in CA",
            inState("CA", "soybean", 24).tank("2,4-D choline 0.95 ae")));
  }

  private static List<Case> steel() {
    String rule = "incorporation-needed";
    String trifluralin = "trifluralin 0.75 ai";
    String pendimethalin = "pendimethalin 0.95 ai";
    return List.of(
        of(
            rule,
            NOTE,
            "trifluralin on the day of tillage",
            before(0, "soybean").field(f -> f.tilled()).tank(trifluralin)),
        of(
            rule,
            BLOCK,
            "trifluralin a day after it",
            before(-1, "soybean").field(f -> f.tilled()).tank(trifluralin)),
        of(rule, BLOCK, "trifluralin without tillage", before(0, "soybean").tank(trifluralin)),
        of(
            rule,
            BLOCK,
            "pendimethalin in corn a day before the tillage",
            before(1, "corn").field(f -> f.tilled()).tank(pendimethalin)),
        of(
            rule,
            NONE,
            "pendimethalin in corn on the day of planting",
            before(0, "corn").field(f -> f.tilled()).tank(pendimethalin)));
  }

  private static List<Case> people() {
    String rule = "restricted-use";
    return List.of(
        of(rule, NONE, "glyphosate by anybody", soy("glyphosate").tank("glyphosate 1.0 ae")),
        of(
            rule,
            NOTE,
            "atrazine by one with a certificate",
            corn().tank("atrazine 1.0 ai").by(new Applicator("R. Invented", "NE-0001"))),
        of(
            rule,
            WARN,
            "paraquat by one who has not had its training",
            before(5, "corn")
                .tank("paraquat 0.5 cation")
                .by(new Applicator("R. Invented", "NE-0001", Optional.of(List.of("dicamba"))))),
        of(
            rule,
            NOTE,
            "paraquat by one who has",
            before(5, "corn")
                .tank("paraquat 0.5 cation")
                .by(new Applicator("R. Invented", "NE-0001", Optional.of(List.of("paraquat"))))));
  }

  private static List<Case> weeds() {
    return List.of(
        of(
            "weed-too-tall",
            NONE,
            "2,4-D choline on Palmer amaranth of 6 in, its most",
            choline(0.95).weed("AMAPA", 6)),
        of("weed-too-tall", WARN, "of 6.1 in", choline(0.95).weed("AMAPA", 6.1)),
        of(
            "resistant-biotype",
            WARN,
            "glyphosate alone on Palmer amaranth that resists it",
            soy("glyphosate").weed("AMAPA", 3, 9).tank("glyphosate 1.0 ae")),
        of(
            "resistant-biotype",
            NONE,
            "glyphosate and 2,4-D choline on it",
            soy("2,4-D", "glyphosate")
                .weed("AMAPA", 3, 9)
                .tank("2,4-D choline 0.95 ae + glyphosate 1.0 ae")),
        of(
            "resistant-biotype",
            NONE,
            "glyphosate alone on Palmer amaranth that resists site 2",
            soy("glyphosate").weed("AMAPA", 3, 2).tank("glyphosate 1.0 ae")),
        of(
            "resistant-biotype",
            WARN,
            "S-metolachlor alone before Palmer amaranth that resists site 15",
            before(0, "soybean").weed("AMAPA", 0, 15).tank("S-metolachlor 1.6 ai")),
        of(
            "resistant-biotype",
            NONE,
            "flumioxazin beside it",
            before(0, "soybean")
                .weed("AMAPA", 0, 15)
                .tank("S-metolachlor 1.6 ai + flumioxazin 0.09 ai")),
        of(
            "weed-too-tall",
            NONE,
            "clethodim on Palmer amaranth of 8 in, which it is not counted on for",
            soy().weed("AMAPA", 8).tank("clethodim 0.125 ai")),
        of(
            "single-site",
            WARN,
            "2,4-D choline and glyphosate on Palmer amaranth that resists 9",
            soy("2,4-D", "glyphosate")
                .weed("AMAPA", 3, 9)
                .tank("2,4-D choline 0.95 ae + glyphosate 1.0 ae")),
        of(
            "single-site",
            NONE,
            "2,4-D choline and glufosinate on it, two sites",
            soy("2,4-D", "glufosinate")
                .weed("AMAPA", 3, 9)
                .tank("2,4-D choline 0.95 ae + glufosinate-ammonium 0.66 ai")));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatItMust(Case c) {
    List<Finding> said =
        c.job().findings().stream().filter(f -> f.rule().value().equals(c.rule())).toList();
    String gravest =
        said.stream()
            .map(Finding::severity)
            .min(Severity::compareTo)
            .map(Severity::word)
            .orElse(NONE);
    assertThat(gravest).as(said.toString()).isEqualTo(c.says());
  }
}
