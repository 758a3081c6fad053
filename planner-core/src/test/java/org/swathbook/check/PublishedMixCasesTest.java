package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.TankTerms;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Verdict;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.testing.MixCase;

/**
 * Mixes of {@code published/mix_cases.csv} with the verdict that their sources support: what is in
 * order may at most want a look at the label, what is risky is cautioned, what a label forbids is
 * blocked for the reason that the source gives.
 */
class PublishedMixCasesTest {
  private static final Map<String, MixCase> CASES = cases();

  /**
   * Legal, and one weak site on a horseweed that resists the other: no label stops it, an adviser
   * may well caution.
   */
  private static final String ONE_WEAK_SITE = "S07";

  /** The rule by which a mix must be stopped or cautioned. */
  private static final Map<String, String> REASON =
      Map.ofEntries(
          Map.entry("S13", "antagonism"),
          Map.entry("S15", "weed-too-tall"),
          Map.entry("S18", "antagonism"),
          Map.entry("S20", "single-site"),
          Map.entry("S23", "stage-window"),
          Map.entry("S24", "annual-cap"),
          Map.entry("S25", "trait-needed"),
          Map.entry("S28", "harvest-interval"),
          Map.entry("S29", "next-crop-interval"),
          // After planting no use is left at all; the interval itself no longer speaks.
          Map.entry("S33", "stage-window"),
          Map.entry("S36", "stage-window"),
          Map.entry("S40", "tank-residue"));

  private static Map<String, MixCase> cases() {
    Map<String, MixCase> out = new LinkedHashMap<>();
    out.put(
        "S01",
        MixCase.in("corn", "glyphosate")
            .day(24, "V4", 10)
            .weed("AMATU", 2, 9)
            .applied(0, "S-metolachlor 1.3 ai")
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
            .adjuvant("nonionic-surfactant", "0.25 % v/v"));
    out.put(
        "S05",
        MixCase.in("soybean").day(28, "V3", 6).seen("SETFA", 4).adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S07",
        MixCase.in("soybean")
            .day(-10, "", 0)
            .weed("ERICA", 4, 9)
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
            .adjuvant("nonionic-surfactant", "0.25 % v/v"));
    out.put("S08", MixCase.in("soybean").day(1, "", 0));
    out.put(
        "S13",
        MixCase.in("soybean", "glyphosate")
            .day(33, "V4", 9)
            .weed("ZEAMX", 12, 9)
            .weed("AMATU", 3)
            .adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S15",
        MixCase.in("soybean", "glufosinate")
            .day(27, "V3", 7)
            .weed("AMAPA", 8, 2, 9)
            .gallons(20)
            .adjuvant("ammonium-sulfate", "3 lb/acre"));
    out.put(
        "S18",
        MixCase.in("soybean")
            .day(32, "V4", 9)
            .weed("SETFA", 5)
            .weed("ABUTH", 3)
            .adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S20",
        MixCase.in("corn", "glyphosate")
            .day(24, "V4", 10)
            .weed("AMATU", 3, 2, 9, 5, 14, 27)
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    out.put(
        "S23",
        MixCase.in("corn", "glyphosate")
            .day(34, "V6", 16)
            .weed("ABUTH", 4)
            .adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S24",
        MixCase.in("corn", "glyphosate")
            .day(25, "V4", 10)
            .weed("AMATU", 2)
            .applied(0, "atrazine 1.6 ai")
            .adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S25",
        MixCase.in("soybean")
            .day(27, "V3", 7)
            .weed("AMATU", 2)
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    out.put(
        "S28",
        MixCase.in("soybean", "glyphosate")
            .field(f -> f.harvest("2027-09-20"))
            .day(95, "R5", 36)
            .weed("ZEAMX", 30)
            .adjuvant("crop-oil", "1 % v/v"));
    out.put(
        "S29",
        MixCase.in("soybean", "glyphosate")
            .field(f -> f.next("sugar-beet", "2028-04-20"))
            .day(40, "V5", 12)
            .weed("AMATU", 3)
            .adjuvant("nonionic-surfactant", "0.25 % v/v"));
    out.put(
        "S33",
        MixCase.in("soybean")
            .day(3, "", 0)
            .weed("ERICA", 6, 9)
            .adjuvant("nonionic-surfactant", "0.25 % v/v"));
    out.put("S36", MixCase.in("corn").day(48, "V9", 34).weed("AMBTR", 8));
    out.put(
        "S40",
        MixCase.in("soybean", "glyphosate")
            .day(26, "V3", 7)
            .weed("AMATU", 2)
            .lastLoad("dicamba", TankTerms.Rinse.WATER_RINSE)
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
            .adjuvant("crop-oil", "1 % v/v"));
    return out;
  }

  record Row(String id, String verdict, String mix) {}

  static Stream<Row> rows() throws IOException {
    Problems problems = new Problems();
    List<Row> out = new ArrayList<>();
    try (InputStream in =
        Objects.requireNonNull(
            PublishedMixCasesTest.class.getResourceAsStream("/published/mix_cases.csv"))) {
      String mix = "mix(lb ai or ae per acre)";
      CsvColumns columns =
          CsvColumns.required("id", "verdict", mix)
              .andOptional(
                  "crop",
                  "trait",
                  "crop_stage",
                  "crop_height_in",
                  "days_after_planting",
                  "timing",
                  "weeds(height_in;resistance)",
                  "weather",
                  "soil",
                  "season_history",
                  "next_crop",
                  "adjuvants",
                  "gpa_droplet",
                  "site_or_other",
                  "expected_findings",
                  "restriction_kinds",
                  "source",
                  "source_status");
      for (CsvRow r : new CsvReader().read("m.csv", in.readAllBytes(), columns, problems).rows()) {
        out.add(new Row(r.text("id"), r.text("verdict"), r.text(mix)));
      }
    }
    problems.throwIfAny();
    return out.stream();
  }

  /**
   * 0.016 lb of cloransulam is the label's 0.3 oz of an 84 % granule, 0.0158 lb, printed to three
   * places.
   */
  private static String exact(String mix) {
    return mix.replace("cloransulam 0.016 ai", "cloransulam 0.0158 ai");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isJudgedAsItsSourceDoes(Row row) {
    JudgedMix judged = Objects.requireNonNull(CASES.get(row.id())).tank(exact(row.mix())).judged();
    List<Finding> findings = judged.judgement().findings();
    String said =
        String.join(
            "\n",
            findings.stream().map(f -> f.rule() + " " + f.severity() + " " + f.message()).toList());
    switch (row.verdict()) {
      case "OK" ->
          assertThat(judged.judgement().verdict())
              .as(said)
              .isIn(
                  row.id().equals(ONE_WEAK_SITE)
                      ? EnumSet.of(Verdict.CLEAR, Verdict.UNVERIFIED, Verdict.CAUTION)
                      : EnumSet.of(Verdict.CLEAR, Verdict.UNVERIFIED));
      case "CAUTION" ->
          assertThat(judged.judgement().verdict()).as(said).isEqualTo(Verdict.CAUTION);
      default -> assertThat(judged.judgement().verdict()).as(said).isEqualTo(Verdict.BLOCKED);
    }
    String reason = REASON.get(row.id());
    if (reason != null) {
      Severity least = row.verdict().equals("CAUTION") ? Severity.WARN : Severity.BLOCK;
      assertThat(findings)
          .as(said)
          .anyMatch(f -> f.rule().value().equals(reason) && f.severity() == least);
    }
  }
}
