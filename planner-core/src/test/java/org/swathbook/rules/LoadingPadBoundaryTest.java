package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.post;
import static org.swathbook.rules.SeasonCases.soybean;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.program.Carrier;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** Mixtures, records, feed, rain and the catalog's age at their limits and on either side. */
class LoadingPadBoundaryTest {
  private static final String NONE = "none";

  record Case(String rule, String says, String words, Supplier<List<Finding>> judged) {
    @Override
    public String toString() {
      return rule + " " + says + ": " + words;
    }
  }

  private static Case of(String rule, String says, String words, MixCase job) {
    return new Case(rule, says, words, job::findings);
  }

  private static Case of(String rule, String says, String words, SeasonCase season) {
    return new Case(rule, says, words, () -> season.judge().findings());
  }

  private static MixCase corn() {
    return MixCase.in("corn", "glyphosate").day(24, "V4", 9);
  }

  private static MixCase soy() {
    return MixCase.in("soybean", "glyphosate").day(24, "V2", 5);
  }

  static Stream<Case> cases() {
    return Stream.of(
            injuryInSoil(),
            injuryOverCrop(),
            jars(),
            insecticides(),
            age(),
            memory(),
            records(),
            replanted(),
            feed(),
            rain(),
            sites())
        .flatMap(List::stream);
  }

  private static MixCase cracking(String tank) {
    return MixCase.in("soybean")
        .field(f -> f.soil(SoilTexture.SILT_LOAM, 3, 6.6))
        .day(0, "", 0)
        .tank(tank);
  }

  private static List<Case> injuryInSoil() {
    String rule = "crop-injury-stack";
    String pair = "flumioxazin 0.08 ai + pyroxasulfone 0.1 ai";
    return List.of(
        of(rule, NONE, "two partners in rich soil on a warm day", cracking(pair)),
        of(rule, NONE, "0.49 in in 48 hours", cracking(pair).sky(Sky.fair().rain(30, 0.49))),
        of(rule, "warn", "half an inch in 48 hours", cracking(pair).sky(Sky.fair().rain(30, 0.5))),
        of(rule, NONE, "a day of 60 F", cracking(pair).sky(Sky.fair().high(60))),
        of(rule, "warn", "a day of 59 F", cracking(pair).sky(Sky.fair().high(59))),
        of(
            rule,
            NONE,
            "site 14 alone in rain and cold",
            cracking("flumioxazin 0.08 ai").sky(Sky.fair().high(50).rain(30, 1))),
        of(
            rule,
            NONE,
            "site 15 alone in rain and cold",
            cracking("pyroxasulfone 0.1 ai").sky(Sky.fair().high(50).rain(30, 1))),
        of(
            rule,
            "warn",
            "the pair on sandy loam",
            cracking(pair).field(f -> f.soil(SoilTexture.SANDY_LOAM, 3, 6.6))),
        of(
            rule,
            NONE,
            "the pair on loam",
            cracking(pair).field(f -> f.soil(SoilTexture.LOAM, 3, 6.6))));
  }

  private static MixCase oily(double highF) {
    return soy()
        .tank("fomesafen 0.25 ai")
        .adjuvant("crop-oil", "1 % v/v")
        .sky(Sky.fair().high(highF));
  }

  private static List<Case> injuryOverCrop() {
    String rule = "crop-injury-stack";
    return List.of(
        of(rule, NONE, "site 14 with oil at 90 F", oily(90)),
        of(rule, "warn", "site 14 with oil at 91 F", oily(91)),
        of(
            rule,
            NONE,
            "site 14 with a surfactant at 95 F",
            soy()
                .tank("fomesafen 0.25 ai")
                .adjuvant("nonionic-surfactant", "0.25 % v/v")
                .sky(Sky.fair().high(95))),
        of(
            rule,
            NONE,
            "site 1 with oil at 95 F",
            soy()
                .tank("clethodim 0.125 ai")
                .adjuvant("crop-oil", "1 % v/v")
                .sky(Sky.fair().high(95))),
        of(
            rule,
            NONE,
            "site 2 after a night of 40 F",
            soy().tank("imazethapyr 0.0625 ai").sky(Sky.fair().night(40))),
        of(
            rule,
            "warn",
            "site 2 after a night of 39 F",
            soy().tank("imazethapyr 0.0625 ai").sky(Sky.fair().night(39))),
        of(
            rule,
            NONE,
            "site 9 after a night of 39 F",
            soy().tank("glyphosate 1.0 ae").sky(Sky.fair().night(39))));
  }

  private static List<Case> jars() {
    String rule = "jar-test";
    return List.of(
        of(rule, NONE, "one product at 5 gal/acre", soy().tank("glyphosate 1.0 ae").gallons(5)),
        of(
            rule,
            "note",
            "a granule with an emulsion",
            soy().day(0, "", 0).tank("metribuzin 0.3 ai + S-metolachlor 1.2 ai")),
        of(
            rule,
            NONE,
            "a granule with a solution",
            soy().day(0, "", 0).tank("metribuzin 0.3 ai + glyphosate 1.0 ae")),
        of(
            rule,
            "warn",
            "a granule with a solution in liquid fertilizer",
            soy()
                .day(0, "", 0)
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                .tank("metribuzin 0.3 ai + glyphosate 1.0 ae")),
        of(
            rule,
            "note",
            "an emulsion with a suspension in liquid fertilizer",
            corn()
                .day(0, "", 0)
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                .tank("S-metolachlor 1.2 ai + mesotrione 0.188 ai")));
  }

  private static List<Case> insecticides() {
    String rule = "insecticide-partner";
    return List.of(
        of(
            rule,
            "block",
            "mesotrione after an organophosphate",
            corn().others("organophosphate").tank("mesotrione 0.094 ai")),
        of(
            rule,
            "block",
            "the same however it is spelled",
            corn().others("Organophosphate ").tank("mesotrione 0.094 ai")),
        of(
            rule,
            NONE,
            "atrazine, whose label names none",
            corn().others("organophosphate").tank("atrazine 1.0 ai")),
        of(rule, "note", "mesotrione where the job names none", corn().tank("mesotrione 0.094 ai")),
        of(rule, NONE, "atrazine where the job names none", corn().tank("atrazine 1.0 ai")));
  }

  private static SeasonCase reviewed(String date) {
    CaseBook book =
        soybean()
            .active(
                IngredientBuilder.of("reviewed", 9, Movement.SYSTEMIC, Basis.AE)
                    .foliar(1)
                    .reviewed(date)
                    .use(post("0.75-1.13 lb ae/acre")));
    return SeasonCase.of(book).pass("2027-06-10", book.mix("reviewed", "1 lb ae/acre"));
  }

  private static List<Case> age() {
    return List.of(
        of("catalog-stale", NONE, "12 months on the day", reviewed("2026-06-10")),
        of("catalog-stale", "note", "12 months and a day", reviewed("2026-06-09")),
        of("catalog-stale", "note", "the house's 18 months on the day", reviewed("2025-12-10")),
        of("catalog-stale", "warn", "18 months and a day", reviewed("2025-12-09")));
  }

  /** Harvest is on 1 October, days to it in the catalog from memory. */
  private static SeasonCase remembered(String day) {
    CaseBook book =
        soybean()
            .active(
                IngredientBuilder.of("remembered", 9, Movement.SYSTEMIC, Basis.AE)
                    .foliar(1)
                    .use(post("0.75-1.13 lb ae/acre").grainDaysFromMemory(70)));
    return SeasonCase.of(book).pass(day, book.mix("remembered", "1 lb ae/acre"));
  }

  private static List<Case> memory() {
    return List.of(
        of("value-from-memory", "warn", "70 days of 70 left", remembered("2027-07-23")),
        of("value-from-memory", "warn", "77 days of 70 left", remembered("2027-07-16")),
        of("value-from-memory", "note", "78 days of 70 left", remembered("2027-07-15")));
  }

  private static SprayRecord record(String name, String certificate) {
    return new SprayRecord(
        Optional.of(LocalTime.of(9, 0)),
        Optional.empty(),
        "",
        "",
        name,
        certificate,
        OptionalDouble.of(6),
        "W",
        OptionalDouble.of(70));
  }

  /** A row of the tenth day after planting, judged some days later. */
  private static MixCase row(int later, String tank, String reg, SprayRecord record) {
    return corn().day(10 + later, "V4", 9).applied(10, tank, "corn", 2027, record).registered(reg);
  }

  private static MixCase atrazine(int later, String reg, SprayRecord record) {
    return row(later, "atrazine 0.5 ai", reg, record).tank("glyphosate 1.0 ae");
  }

  private static List<Case> records() {
    String rule = "record-incomplete";
    String reg = "99999-1";
    SprayRecord whole = record("R. Invented", "NE-0001");
    SprayRecord noCertificate = record("R. Invented", "");
    return List.of(
        of(rule, NONE, "all of it", atrazine(15, reg, whole)),
        of(rule, "note", "no certificate number on day 14", atrazine(14, reg, noCertificate)),
        of(rule, "warn", "no certificate number on day 15", atrazine(15, reg, noCertificate)),
        of(rule, "warn", "no name", atrazine(15, reg, record("", "NE-0001"))),
        of(rule, "warn", "no registration number", atrazine(15, "", record("R. I.", "NE-0001"))),
        of(
            rule,
            NONE,
            "a row of a product that is not restricted",
            row(15, "glyphosate 1.0 ae", reg, noCertificate).tank("glyphosate 1.0 ae")));
  }

  private static List<Case> replanted() {
    String rule = "replant-crop";
    SprayRecord none = SprayRecord.EMPTY;
    return List.of(
        of(
            rule,
            "block",
            "atrazine on corn that failed, then soybean",
            soy().applied(-20, "atrazine 1.0 ai", "corn", 2027, none).tank("glyphosate 1.0 ae")),
        of(
            rule,
            NONE,
            "glyphosate before the soybean itself",
            soy()
                .applied(-20, "glyphosate 1.0 ae", "soybean", 2027, none)
                .tank("clethodim 0.1 ai")),
        of(
            rule,
            NONE,
            "glyphosate on corn that failed, then soybean",
            soy().applied(-20, "glyphosate 1.0 ae", "corn", 2027, none).tank("clethodim 0.1 ai")));
  }

  private static MixCase silage(String harvest) {
    return corn().field(f -> f.uses(Commodity.SILAGE).harvest(harvest)).tank("mesotrione 0.094 ai");
  }

  /** Sprayed on 1 June; mesotrione has 45 days. */
  private static List<Case> feed() {
    return List.of(
        of("grazing-feed", "block", "44 days before silage", silage("2027-07-15")),
        of("grazing-feed", NONE, "45 days before silage", silage("2027-07-16")),
        of(
            "grazing-feed",
            "block",
            "clethodim where soybean is grazed",
            soy().field(f -> f.uses(Commodity.GRAZING)).tank("clethodim 0.125 ai")),
        of("grazing-feed", NONE, "clethodim for grain", soy().tank("clethodim 0.125 ai")));
  }

  private static MixCase layer(Sky sky) {
    return soy().day(0, "", 0).weed("AMAPA", 0).sky(sky).tank("S-metolachlor 1.6 ai");
  }

  /** S-metolachlor needs half an inch. */
  private static List<Case> rain() {
    String rule = "no-activating-rain";
    return List.of(
        of(rule, NONE, "half an inch", layer(Sky.fair().rainOfTenDays(0.5))),
        of(rule, "warn", "0.49 in", layer(Sky.fair().rainOfTenDays(0.49))),
        of(rule, "note", "no forecast", layer(Sky.fair().rainUnknown())),
        of(
            rule,
            NONE,
            "half an inch on a field with a pivot",
            layer(Sky.fair().rainOfTenDays(0.5)).field(f -> f.irrigated())),
        of(
            rule,
            "note",
            "0.1 in on a field with a pivot, which brings the rest",
            layer(Sky.fair().rainOfTenDays(0.1)).field(f -> f.irrigated())),
        of(
            rule,
            NONE,
            "0.1 in, and no driver weed that hangs on it",
            soy().day(0, "", 0).sky(Sky.fair().rainOfTenDays(0.1)).tank("S-metolachlor 1.6 ai")));
  }

  private static MixCase palmer(int season, String tank) {
    return corn()
        .weed("AMAPA", 3, 9)
        .applied(-340, tank, "corn", season, SprayRecord.EMPTY)
        .tank("mesotrione 0.094 ai");
  }

  private static List<Case> sites() {
    String rule = "site-repeated";
    return List.of(
        of(rule, "warn", "site 27 alone last season", palmer(2026, "mesotrione 0.094 ai")),
        of(
            rule,
            "note",
            "site 27 beside site 4 last season",
            palmer(2026, "mesotrione 0.094 ai + dicamba 0.5 ae")),
        of(rule, NONE, "site 4 last season", palmer(2026, "dicamba 0.5 ae")),
        of(rule, NONE, "what the weed resists", palmer(2026, "glyphosate 1.0 ae")),
        of(rule, NONE, "two seasons ago, and nothing last season", mesotrione(2025, "V4")),
        of(
            rule,
            "warn",
            "two seasons ago, and no Palmer amaranth last season",
            mesotrione(2025, "V4").seenIn(2026, "SETFA")),
        of(
            rule,
            NONE,
            "two seasons ago, and Palmer amaranth last season",
            mesotrione(2025, "V4").seenIn(2026, "AMAPA", "SETFA")),
        of(
            rule,
            NONE,
            "two seasons ago, and weeds of last season not written down",
            mesotrione(2025, "V4").seenIn(2026)),
        of(
            rule,
            NONE,
            "two seasons ago, and another site last season",
            mesotrione(2025, "V4").sprayedIn(2026, "V4", "dicamba 0.5 ae")),
        of(
            rule,
            NONE,
            "before emergence last season, where it may have met no leaf",
            mesotrione(2026, "pre")),
        of(
            rule,
            "note",
            "alone last season, and an earlier pass of this one brought site 4",
            mesotrione(2026, "V4").applied(4, "dicamba 0.5 ae")),
        of(
            rule,
            "warn",
            "site 15 alone in the soil in both seasons",
            layer(Sky.fair()).sprayedIn(2026, "pre", "S-metolachlor 1.6 ai")));
  }

  private static MixCase mesotrione(int season, String stage) {
    return corn()
        .weed("AMAPA", 3, 9)
        .sprayedIn(season, stage, "mesotrione 0.094 ai")
        .tank("mesotrione 0.094 ai");
  }

  @Test
  void seasonsRunningAreCountedOverOnesWithoutTheWeed() {
    MixCase job =
        mesotrione(2026, "V4").sprayedIn(2024, "V5", "mesotrione 0.094 ai").seenIn(2025, "ABUTH");
    assertThat(job.findings())
        .filteredOn(f -> f.rule().value().equals("site-repeated"))
        .extracting(Finding::message)
        .containsExactly(
            "Site 27 is the only effective site through leaves on Palmer amaranth in this pass, as"
                + " it was in 2024 and 2026: 3 seasons running.");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatItMust(Case c) {
    List<Finding> said =
        c.judged().get().stream().filter(f -> f.rule().value().equals(c.rule())).toList();
    String gravest =
        said.stream()
            .map(Finding::severity)
            .min(Severity::compareTo)
            .map(Severity::word)
            .orElse(NONE);
    assertThat(gravest).as(said.toString()).isEqualTo(c.says());
  }
}
