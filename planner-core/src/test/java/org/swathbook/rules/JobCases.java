package org.swathbook.rules;

import static org.swathbook.rules.SeasonCases.example;
import static org.swathbook.rules.SeasonCases.post;
import static org.swathbook.rules.SeasonCases.soybean;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.program.Carrier;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.OrderedByLabel;
import org.swathbook.testing.Sky;

/** Examples of the rules on a tank at the loading pad, with the starter catalog. */
final class JobCases {
  private static MixCase capsules(String before, String after) {
    return soy()
        .day(-1, "", 0)
        .catalog(OrderedByLabel.in(MixCase.CATALOG, "acetochlor-3cs", before, after))
        .product("acetochlor-3cs", "1.5 qt/acre")
        .product("s-metolachlor-7.62ec", "1 pt/acre");
  }

  private static final java.time.LocalDate LATE = java.time.LocalDate.parse("2027-06-05");

  private JobCases() {}

  static List<RuleCase> all() {
    return Stream.of(mixtures(), catalog(), journal(), soil(), sites(), season())
        .flatMap(List::stream)
        .toList();
  }

  private static RuleCase trips(String rule, String example, MixCase job) {
    return of(true, rule, example, () -> job.judged().judgement().findings());
  }

  private static RuleCase silent(String rule, String example, MixCase job) {
    return of(false, rule, example, () -> job.judged().judgement().findings());
  }

  private static RuleCase of(
      boolean trips, String rule, String example, Supplier<List<Finding>> judged) {
    return new RuleCase(rule, trips, example, judged);
  }

  private static MixCase soy() {
    return MixCase.in("soybean", "glyphosate", "glufosinate").day(27, "V3", 7);
  }

  private static MixCase corn() {
    return MixCase.in("corn", "glyphosate").day(24, "V4", 9);
  }

  private static List<RuleCase> mixtures() {
    return List.of(
        trips(
            "antagonism",
            "quizalofop 0.034 lb ai/acre with cloransulam on giant foxtail of 5 in",
            soy().seen("SETFA", 5).tank("quizalofop 0.034 ai + cloransulam 0.0158 ai")),
        silent(
            "antagonism",
            "clethodim at 0.125 lb ai/acre with glyphosate and dicamba, above the rate that mends it",
            MixCase.in("soybean", "glyphosate", "dicamba")
                .day(27, "V3", 7)
                .weed("ZEAMX", 5, 9)
                .tank("clethodim 0.125 ai + glyphosate 1.0 ae + dicamba 0.5 ae")),
        trips(
            "jar-test",
            "a granule and a concentrate in liquid fertilizer",
            corn()
                .day(-3, "", 0)
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                .tank("metribuzin 0.2 ai + S-metolachlor 1.0 ai")),
        silent(
            "jar-test",
            "two solutions in water",
            soy().tank("glyphosate 1.0 ae + imazethapyr 0.0625 ai")),
        silent(
            "jar-test",
            "a mix with paraquat",
            soy()
                .day(-5, "", 0)
                .tank("paraquat 0.75 cation + metribuzin 0.3 ai + S-metolachlor 1.2 ai")),
        trips(
            "mixing-order", "capsules whose label puts emulsions before them", capsules("", "EC")),
        trips(
            "mixing-order",
            "two labels that each want to be first",
            soy()
                .day(-1, "", 0)
                .catalog(
                    OrderedByLabel.in(
                        OrderedByLabel.in(MixCase.CATALOG, "metribuzin-75wg", "s-metolachlor", ""),
                        "s-metolachlor-7.62ec",
                        "metribuzin",
                        ""))
                .tank("metribuzin 0.3 ai + S-metolachlor 1.2 ai")),
        silent(
            "mixing-order",
            "a granule and a concentrate at the loading pad",
            soy().day(-1, "", 0).tank("metribuzin 0.3 ai + S-metolachlor 1.2 ai")),
        silent(
            "mixing-order",
            "capsules whose label puts them before emulsions, as most guides do",
            capsules("EC", "")),
        trips(
            "insecticide-partner",
            "nicosulfuron after an organophosphate at planting",
            corn().others("organophosphate").tank("nicosulfuron 0.031 ai")),
        silent(
            "insecticide-partner",
            "mesotrione with a pyrethroid",
            corn().others("pyrethroid").tank("mesotrione 0.094 ai")),
        trips(
            "crop-injury-stack",
            "flumioxazin, pyroxasulfone and metribuzin on soil of 1.3 % organic matter",
            soy()
                .field(f -> f.soil(SoilTexture.LOAM, 1.3, 6.6))
                .day(-1, "", 0)
                .tank("flumioxazin 0.08 ai + pyroxasulfone 0.1 ai + metribuzin 0.25 ai")),
        silent(
            "crop-injury-stack",
            "flumioxazin by itself on the same soil",
            soy()
                .field(f -> f.soil(SoilTexture.LOAM, 1.3, 6.6))
                .day(-1, "", 0)
                .tank("flumioxazin 0.08 ai")));
  }

  private static List<RuleCase> catalog() {
    return List.of(
        example(
            true,
            "catalog-stale",
            "an entry reviewed in January 2025 for a pass in June 2027",
            () -> reviewed("2025-01-15")),
        example(
            false,
            "catalog-stale",
            "an entry reviewed in November 2026 for a pass in June 2027",
            () -> reviewed("2026-11-15")),
        example(
            true,
            "value-from-memory",
            "70 days before harvest, from memory, with 72 days left",
            () -> {
              CaseBook book =
                  soybean()
                      .active(
                          IngredientBuilder.of("remembered", 9, Movement.SYSTEMIC, Basis.AE)
                              .foliar(1)
                              .use(post("0.75-1.13 lb ae/acre").grainDaysFromMemory(70)));
              // Harvest is on 1 October.
              return SeasonCase.of(book).pass("2027-07-21", book.mix("remembered", "1 lb ae/acre"));
            }),
        example(
            false,
            "value-from-memory",
            "an active all of whose limits have a source",
            () -> reviewed("2026-11-15")));
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

  private static List<RuleCase> journal() {
    SprayRecord whole =
        new SprayRecord(
            Optional.of(LocalTime.of(9, 0)),
            Optional.empty(),
            "",
            "",
            "R. Invented",
            "NE-0001",
            OptionalDouble.of(6),
            "W",
            OptionalDouble.of(70));
    SprayRecord noCertificate =
        new SprayRecord(
            whole.start(),
            whole.end(),
            "",
            "",
            whole.applicator(),
            "",
            whole.windMph(),
            whole.windFrom(),
            whole.tempF());
    return List.of(
        trips(
            "record-incomplete",
            "a row of atrazine without the certificate number, three weeks old",
            corn()
                .applied(3, "atrazine 1.0 ai", "corn", 2027, noCertificate)
                .registered("99999-1")
                .tank("glyphosate 1.0 ae")),
        silent(
            "record-incomplete",
            "a row of atrazine with all of it",
            corn()
                .applied(3, "atrazine 1.0 ai", "corn", 2027, whole)
                .registered("99999-1")
                .tank("glyphosate 1.0 ae")),
        trips(
            "replant-crop",
            "acetochlor emulsion on corn that failed, then soybean",
            soy().applied(-20, "atrazine 1.0 ai", "corn", 2027, whole).tank("glyphosate 1.0 ae")),
        silent(
            "replant-crop",
            "flumioxazin on soybean that failed, then soybean",
            soy()
                .applied(-20, "flumioxazin 0.08 ai", "soybean", 2027, whole)
                .tank("glyphosate 1.0 ae")),
        trips(
            "grazing-feed",
            "atrazine over corn that is cut for silage inside 60 days",
            corn()
                .field(f -> f.uses(Commodity.SILAGE).harvest("2027-07-20"))
                .tank("atrazine 1.0 ai")),
        silent(
            "grazing-feed",
            "the same over corn of which grain alone is taken",
            corn().field(f -> f.harvest("2027-07-20")).tank("atrazine 1.0 ai")));
  }

  private static List<RuleCase> soil() {
    return List.of(
        trips(
            "no-activating-rain",
            "S-metolachlor with 0.1 in of rain in the forecast of ten days",
            soy()
                .day(0, "", 0)
                .weed("AMAPA", 0)
                .sky(Sky.fair().rainOfTenDays(0.1))
                .tank("S-metolachlor 1.6 ai")),
        silent(
            "no-activating-rain",
            "S-metolachlor with 1 in of rain in the forecast of ten days",
            soy()
                .day(0, "", 0)
                .weed("AMAPA", 0)
                .sky(Sky.fair().rainOfTenDays(1))
                .tank("S-metolachlor 1.6 ai")));
  }

  private static List<RuleCase> sites() {
    return List.of(
        trips(
            "site-repeated",
            "site 27 by itself on Palmer amaranth after emergence in both seasons",
            corn()
                .weed("AMAPA", 3, 9)
                .applied(-340, "mesotrione 0.094 ai", "corn", 2026, SprayRecord.EMPTY)
                .tank("mesotrione 0.094 ai")),
        silent(
            "site-repeated",
            "site 14 in both seasons, each time beside site 15",
            soy()
                .day(0, "", 0)
                .weed("AMAPA", 0)
                .applied(
                    -360,
                    "flumioxazin 0.08 ai + pyroxasulfone 0.1 ai",
                    "soybean",
                    2026,
                    SprayRecord.EMPTY)
                .tank("flumioxazin 0.08 ai + pyroxasulfone 0.1 ai")));
  }

  private static List<RuleCase> season() {
    return List.of(
        of(
            true,
            "late-first-pass",
            "foxtail at 25 plants/m² under corn of V8 without a residual",
            () ->
                foxtail()
                    .judgedAsProgram(corn().day(45, "V8", 24).tank("glyphosate 1.0 ae"))
                    .findings()),
        of(
            false,
            "late-first-pass",
            "the same pass with hardly any foxtail left",
            () ->
                foxtail()
                    .judgedAsProgram(
                        corn().day(14, "V2", 5).tank("glyphosate 1.0 ae + S-metolachlor 1.6 ai"),
                        corn().day(45, "V8", 24).tank("glyphosate 1.0 ae"))
                    .findings()),
        of(
            true,
            "no-residual",
            "glyphosate twice on Palmer amaranth",
            () ->
                soy()
                    .weed("AMAPA", 0)
                    .judgedAsProgram(
                        soy().day(20, "V2", 5).tank("glyphosate 1.0 ae"),
                        soy().day(35, "V4", 10).tank("glyphosate 1.0 ae"))
                    .findings()),
        of(
            false,
            "no-residual",
            "kochia nearly all of which is up before planting, with a burndown alone",
            () ->
                MixCase.planted(LATE, "grain-sorghum")
                    .weed("KCHSC", 0)
                    .judgedAsProgram(
                        MixCase.planted(LATE, "grain-sorghum")
                            .day(-20, "", 0)
                            .tank("paraquat 0.75 cation"))
                    .findings()));
  }

  private static MixCase foxtail() {
    return corn().weed("SETFA", 0);
  }
}
