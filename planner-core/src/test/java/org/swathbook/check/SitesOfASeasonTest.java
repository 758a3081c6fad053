package org.swathbook.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.SeasonWalk;

/**
 * Foliar sites of one pass after another on South Pivot: Palmer amaranth that resists sites 2, 9
 * and 14, kochia that resists 9, soybean with traits for dicamba and glufosinate, which may not
 * share a tank. That two passes of dicamba alone select for what survives it, and that paraquat
 * with 2,4-D is what April has for both: common practice, no source.
 */
class SitesOfASeasonTest {
  private static final String DICAMBA =
      "[{product: dicamba-4sl, rate: 16 fl oz/acre}], carrier: {volume: 15 gal/acre}";
  private static final String GLUFOSINATE =
      "[{product: glufosinate-2.34sl, rate: 29 fl oz/acre}], carrier: {volume: 15 gal/acre}";

  /** Layers and burndown, so that what the posts meet is small. */
  private static final String APRIL =
      "at: 2027-04-26, mix: ["
          + "{product: paraquat-2sl, rate: 2 pt/acre},"
          + "{product: 2-4-d-amine-3.8sl, rate: 1 pt/acre},"
          + "{product: pendimethalin-3.8cs, rate: 1.5 pt/acre},"
          + "{product: pyroxasulfone-85wg, rate: 1.1 oz weight/acre}],"
          + " adjuvants: [{kind: nonionic-surfactant, rate: 0.25 % v/v}],"
          + " carrier: {volume: 20 gal/acre}";

  private static final String MAY =
      "at: 2027-05-08, mix: ["
          + "{product: glufosinate-2.34sl, rate: 32 fl oz/acre},"
          + "{product: imazethapyr-2sl, rate: 4 fl oz/acre},"
          + "{product: paraquat-2sl, rate: 2 pt/acre},"
          + "{product: sulfentrazone-4sc, rate: 4.5 fl oz/acre}],"
          + " carrier: {volume: 20 gal/acre}";

  private static Judgement judged(String... passes) {
    StringBuilder text =
        new StringBuilder("format: swathbook.program/1\nname: P\nfield: QH-2\npasses:\n");
    for (String p : passes) {
      text.append("  - {").append(p).append("}\n");
    }
    Program program =
        ProgramReader.read("p.yaml", text.toString().getBytes(UTF_8), DemoFields.BOOK);
    Field field = DemoFields.field("QH-2");
    TraceSet traces = DemoFields.traces(field);
    return ProgramJudge.judge(
        DemoFields.BOOK,
        traces,
        SeasonWalk.walk(DemoFields.BOOK, traces, program),
        LocalDate.of(2027, 3, 1));
  }

  private static List<Finding> singleSite(Judgement j, int pass, String weed) {
    return j.findings().stream()
        .filter(f -> f.rule().value().equals("single-site"))
        .filter(f -> f.about().pass().equals(java.util.OptionalInt.of(pass)))
        .filter(f -> f.about().weed().filter(w -> w.value().equals(weed)).isPresent())
        .toList();
  }

  private static long lacking(Judgement j, int pass) {
    return j.brokenHouseRules().stream()
        .filter(b -> b.name().equals(HouseRuleCheck.MIN_FOLIAR_SITES))
        .filter(b -> b.pass().orElse(-1) == pass)
        .count();
  }

  @Test
  void theSameSiteAloneTwiceOwesAnother() {
    Judgement j =
        judged(APRIL, MAY, "at: 2027-05-28, mix: " + DICAMBA, "at: 2027-06-09, mix: " + DICAMBA);

    assertThat(singleSite(j, 2, "AMAPA")).singleElement().satisfies(f -> isNote(f));
    assertThat(lacking(j, 2)).isZero();
    assertThat(singleSite(j, 3, "AMAPA"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.WARN);
              assertThat(f.message()).contains("as in the last pass that rested on one alone");
              assertThat(f.remedy()).contains("site 10 in place of it in one of the two");
            });
    assertThat(lacking(j, 3)).isEqualTo(1);
  }

  @Test
  void twoSitesInTurnDoNot() {
    Judgement j =
        judged(
            APRIL, MAY, "at: 2027-05-26, mix: " + GLUFOSINATE, "at: 2027-06-09, mix: " + DICAMBA);

    for (int post = 2; post < 4; post++) {
      assertThat(singleSite(j, post, "AMAPA")).singleElement().satisfies(f -> isNote(f));
      assertThat(lacking(j, post)).isZero();
    }
  }

  /** Kochia meets paraquat alone: with a layer of two no tank of four carries both weeds twice. */
  @Test
  void aFullTankInTheColdMayMissASiteOnTheSecondWeed() {
    Judgement j = judged(APRIL);

    assertThat(singleSite(j, 0, "AMAPA")).isEmpty();
    assertThat(singleSite(j, 0, "KCHSC"))
        .singleElement()
        .satisfies(
            f -> {
              isNote(f);
              assertThat(f.message())
                  .contains(
                      "no tank of 4 products with its layer brings more on all driver weeds at"
                          + " once");
            });
    assertThat(lacking(j, 0)).isZero();
  }

  /** The same without its layer has two places more. */
  @Test
  void aTankWithRoomMayNot() {
    Judgement j =
        judged(
            "at: 2027-04-26, mix: ["
                + "{product: paraquat-2sl, rate: 2 pt/acre},"
                + "{product: 2-4-d-amine-3.8sl, rate: 1 pt/acre}],"
                + " adjuvants: [{kind: nonionic-surfactant, rate: 0.25 % v/v}],"
                + " carrier: {volume: 20 gal/acre}");

    assertThat(singleSite(j, 0, "KCHSC"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.WARN));
    assertThat(lacking(j, 0)).isEqualTo(1);
  }

  /** Glufosinate in an April that is mostly cold is half a site, and is shown as one. */
  @Test
  void whatTheColdSlowsIsHalfASite() {
    Judgement j =
        judged(
            "at: 2027-04-22, mix: ["
                + "{product: paraquat-2sl, rate: 2 pt/acre},"
                + "{product: glufosinate-2.34sl, rate: 32 fl oz/acre}],"
                + " adjuvants: [{kind: nonionic-surfactant, rate: 0.25 % v/v}],"
                + " carrier: {volume: 20 gal/acre}");

    assertThat(singleSite(j, 0, "AMAPA"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.WARN);
              assertThat(f.message()).contains("a half in the cold");
              assertThat(f.remedy()).contains("warmer days for site 10");
            });
    assertThat(j.findings()).anyMatch(f -> f.rule().value().equals("cold-days"));
  }

  private static void isNote(Finding f) {
    assertThat(f.severity()).isEqualTo(Severity.NOTE);
  }
}
