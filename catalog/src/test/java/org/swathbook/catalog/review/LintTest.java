package org.swathbook.catalog.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.catalog.file.SmallCatalog;

class LintTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String METRIBUZIN = "ingredients/metribuzin.yaml";
  private static final String GLYPHOSATE = "ingredients/glyphosate.yaml";

  private static List<String> errors(SmallCatalog catalog) {
    return remarks(catalog, Remark.Severity.ERROR);
  }

  private static List<String> advice(SmallCatalog catalog) {
    return remarks(catalog, Remark.Severity.ADVICE);
  }

  private static List<String> remarks(SmallCatalog catalog, Remark.Severity severity) {
    return Lint.remarks(catalog.written(), TODAY).stream()
        .filter(r -> r.severity() == severity)
        .map(r -> r.problem().toString())
        .toList();
  }

  @Test
  void aSoundCatalogHasNoErrors() {
    assertThat(errors(new SmallCatalog())).isEmpty();
  }

  @Test
  void aProductWithoutProtectiveEquipmentIsNamed() {
    String open =
        "products/glyphosate-4.5sl.yaml:1:1: not stated: protective equipment; look it up on the"
            + " label; 'protection: none' where it names nothing";
    assertThat(advice(new SmallCatalog())).contains(open);
    for (String said : List.of("{handlers: [long-sleeves]}", "none")) {
      assertThat(
              advice(
                  new SmallCatalog()
                      .with(
                          "products/glyphosate-4.5sl.yaml",
                          "package: 2.5 gal",
                          "package: 2.5 gal\nprotection: " + said)))
          .doesNotContain(open);
    }
  }

  @Test
  void anActiveWithoutSoilActivityIsNotRatedBeforeEmergence() {
    SmallCatalog c =
        new SmallCatalog()
            .with(
                "responses.csv",
                "AMAPA,glyphosate,post",
                "AMAPA,glyphosate,pre,50,40,60,,from memory,low\nAMAPA,glyphosate,post");
    assertThat(errors(c))
        .containsExactly(
            "ingredients/glyphosate.yaml:1:1: glyphosate has no soil activity and 1 ratings before"
                + " emergence; state its residual under soil, or rate it 0");
    assertThat(errors(c.with("responses.csv", "pre,50,40,60", "pre,0,0,0"))).isEmpty();
  }

  @Test
  void anActiveThatLeavesDoNotTakeIsNotRatedAfterEmergence() {
    SmallCatalog c =
        new SmallCatalog()
            .with(
                "responses.csv",
                "AMAPA,metribuzin,pre",
                "AMAPA,metribuzin,post,50,40,60,3,from memory,low\nAMAPA,metribuzin,pre");
    assertThat(errors(c))
        .containsExactly(
            "ingredients/metribuzin.yaml:1:1: metribuzin does nothing through leaves and has 1"
                + " ratings after emergence; state its rain-free time under foliar, or rate it 0");
  }

  /** A second form of glyphosate that differs in one more thing than its name. */
  private static SmallCatalog withASalt(String piece, String other) {
    return new SmallCatalog()
        .file(
            "ingredients/glyphosate-salt.yaml",
            new SmallCatalog()
                .with(GLYPHOSATE, "name: glyphosate", "name: glyphosate salt")
                .with(GLYPHOSATE, "aliases: [glyphosate acid]", "aliases: []")
                .with(GLYPHOSATE, piece, other)
                .text(GLYPHOSATE));
  }

  @Test
  void formsOfOneActiveShareItsSite() {
    SmallCatalog c = withASalt("site: 9", "site: 10");
    assertThat(errors(c))
        .containsExactly(
            "ingredients/glyphosate-salt.yaml:1:1: glyphosate salt shares the caps of glyphosate but"
                + " not its site or the basis of its rates; correct site or rateBasis, or give it a"
                + " capGroup of its own");
  }

  @Test
  void aGroupOfCapsIsSpelledOneWay() {
    SmallCatalog c = withASalt("capGroup: glyphosate", "capGroup: Glyphosate");
    assertThat(errors(c))
        .containsExactly(
            "ingredients/glyphosate-salt.yaml:1:1: the capGroup 'Glyphosate' is spelled otherwise"
                + " than that of glyphosate; write it 'glyphosate', or the two are counted apart");
  }

  /** The small soybean is 8 in tall at V3 and 1 in at emergence. */
  @Test
  void aWindowByStageAndOneByHeightMustMeet() {
    SmallCatalog tooTall =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "    timing: {from: emergence, before: R1}\n",
                "    timing: {from: V3, before: R1}\n    cropHeight: {to: 6 in}\n");
    assertThat(errors(tooTall))
        .containsExactly(
            "ingredients/glyphosate.yaml:1:1: soybean, post: the crop is 8 in tall when the window"
                + " begins, and 6 in is the most; correct timing or cropHeight, or the crop's"
                + " heights");
    SmallCatalog tooShort =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "    timing: {from: emergence, before: R1}\n",
                "    timing: {from: emergence, to: V3}\n    cropHeight: {from: 12 in}\n");
    assertThat(errors(tooShort)).hasSize(1).allMatch(e -> e.contains("12 in is the least"));
    SmallCatalog both =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "    timing: {from: emergence, before: R1}\n",
                "    timing: {from: emergence, to: V3}\n    cropHeight: {from: 4 in, to: 8 in}\n");
    assertThat(errors(both)).isEmpty();
  }

  private static SmallCatalog withPremix(String glyphosate, String metribuzin) {
    return new SmallCatalog()
        .file(
            "products/mix-se.yaml",
            """
            format: swathbook.product/1
            name: mix-se
            contains:
              - {ingredient: glyphosate, concentration: GLY lb ae/gal}
              - {ingredient: metribuzin, concentration: MET lb ai/gal}
            formulation: SE
            unit: pt/acre
            sources: [{for: [all], source: invented}]
            """
                .replace("GLY", glyphosate)
                .replace("MET", metribuzin));
  }

  /** Before emergence glyphosate needs 0.75 lb, and metribuzin may have 0.5 lb. */
  @Test
  void aPremixMustHaveADoseWithinAllItsLabels() {
    assertThat(errors(withPremix("3", "1"))).isEmpty();
    assertThat(errors(withPremix("3", "2"))).isEmpty();
    assertThat(errors(withPremix("1", "2")))
        .containsExactly(
            "products/mix-se.yaml:1:1: at no dose are both within their labels: where glyphosate"
                + " reaches its lowest rate, metribuzin is past its highest rate or cap; correct the"
                + " strengths, or the rates and caps of the ingredients");
  }

  @Test
  void aReviewOfMoreThanAYearAgoIsStale() {
    SmallCatalog c =
        new SmallCatalog().with(METRIBUZIN, "reviewed: 2026-11-01", "reviewed: 2025-11-01");
    assertThat(advice(c))
        .contains(
            "ingredients/metribuzin.yaml:52:11: last reviewed 2025-11-01, more than 12 months ago;"
                + " hold it against the current label and set the date");
    assertThat(advice(new SmallCatalog())).noneMatch(a -> a.contains("last reviewed"));
    assertThat(
            errors(
                new SmallCatalog()
                    .with(METRIBUZIN, "reviewed: 2026-11-01", "reviewed: 2027-01-01")))
        .hasSize(1)
        .allMatch(e -> e.contains("still to come"));
  }

  @Test
  void aRegistrationThatEndsIsNamed() {
    SmallCatalog c =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "    trait: glyphosate\n",
                "    trait: glyphosate\n    labelYears: 2025-2026\n");
    assertThat(advice(c)).anyMatch(a -> a.contains("a use in soybean is registered until 2026"));
    assertThat(advice(c.with(GLYPHOSATE, "2025-2026", "2026-2027")))
        .noneMatch(a -> a.contains("registered until"));
  }

  @Test
  void valuesWithoutASourceAreNamed() {
    SmallCatalog c =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "  - {for: [all], source: from memory}",
                "  - {for: [uses], source: from memory}");
    assertThat(advice(c))
        .anyMatch(
            a ->
                a.startsWith(
                    "ingredients/glyphosate.yaml:1:1: 8 values have no source: site; family; movement; soil and 4 more"));
    assertThat(advice(new SmallCatalog())).noneMatch(a -> a.contains("no source"));
  }

  @Test
  void whatIsNotStatedIsListed() {
    assertThat(advice(new SmallCatalog()))
        .anyMatch(
            a ->
                a.startsWith(
                        "ingredients/metribuzin.yaml:1:1: not stated: spray volume, distances from water,")
                    && a.contains("adjuvants needed"))
        .noneMatch(
            a -> a.startsWith("ingredients/metribuzin.yaml") && a.contains("most in a period"));
  }

  @Test
  void weedsThatNobodyRatedAreListed() {
    SmallCatalog c =
        new SmallCatalog()
            .with("responses.csv", "AMAPA,metribuzin,pre,80,70,90,,from memory,medium\n", "");
    assertThat(advice(c))
        .contains(
            "ingredients/metribuzin.yaml:1:1: its control is not known, pre, of any weed; add rows to"
                + " responses.csv; 0 only where it is known to do nothing");
    assertThat(advice(new SmallCatalog()))
        .noneMatch(a -> a.contains("metribuzin") && a.contains("not known"));
  }

  @Test
  void anIngredientThatNoProductBringsIsNamed() {
    assertThat(advice(new SmallCatalog().without("products/metribuzin-75wg.yaml")))
        .anyMatch(a -> a.contains("no product brings metribuzin"));
    assertThat(advice(new SmallCatalog())).noneMatch(a -> a.contains("no product brings"));
  }

  /** What comes with the program contradicts itself nowhere. */
  @Test
  void theStarterHasNoErrors() {
    assertThat(
            Lint.remarks(new CatalogLoader().written(true, Optional.empty(), "catalog"), TODAY)
                .stream()
                .filter(r -> r.severity() == Remark.Severity.ERROR)
                .map(r -> r.problem().toString()))
        .isEmpty();
  }
}
