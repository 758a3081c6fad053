package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.file.CatalogLoader;

/**
 * The comparison itself can say no: the published rows that the starter follows, with values that
 * nobody could follow, are no longer followed.
 */
class AbsurdLimitsTest {
  private static final Map<String, String> ABSURD =
      Map.ofEntries(
          Map.entry("rotation", "9999 days"),
          Map.entry("wait", "9999 days"),
          Map.entry("clock-rain", "99 in"),
          Map.entry("earliest", "0 days"),
          Map.entry("height-to", "0.1 in"),
          Map.entry("height-from", "999 in"),
          Map.entry("harvest", "9999 days"),
          Map.entry("applications", "0"),
          Map.entry("repeat", "9999 days"),
          Map.entry("cutoff", "01-01"),
          Map.entry("rainfast", "999 h"),
          Map.entry("reentry", "999 h"),
          Map.entry("carrier", "999 gal/acre"),
          Map.entry("restricted-use", "yes"),
          Map.entry("activating-rain", "99 in"),
          Map.entry("weed-height", "0.1 in"),
          Map.entry("droplets", "extremely fine-extremely fine"),
          Map.entry("wind-to", "0.1 mph"),
          Map.entry("wind-from", "99 mph"),
          Map.entry("temperature-to", "0 F"),
          Map.entry("hours", "23 h"),
          Map.entry("buffer", "99999 ft"),
          Map.entry("setback", "99999 ft"),
          Map.entry("incorporate", "0 h"));

  /** Kinds without a number to exaggerate; {@link #whatTheStarterDoesNotSayIsNotFollowed}. */
  private static final Set<String> WITHOUT_A_NUMBER =
      Set.of(
          "not-in-the-year",
          "not-in-the-next-year",
          "bioassay",
          "latest",
          "before-planting",
          "stage-to",
          "stage-before",
          "stage-from",
          "not-labelled",
          "trait",
          "jar-test-refused",
          "no-residual",
          "adjuvant-needed",
          "adjuvant-refused",
          "runoff-rain");

  private final Comparison comparison = new Comparison(new CatalogLoader().starter());

  @Test
  void anAbsurdValueIsNotFollowed() {
    Set<String> tried = new TreeSet<>();
    for (PublishedLimit limit : Comparison.comparable(PublishedTables.limits())) {
      Optional<PublishedLimit> absurd = absurd(limit);
      if (absurd.isEmpty()) {
        assertThat(WITHOUT_A_NUMBER).as(limit.toString()).contains(limit.kind());
        continue;
      }
      tried.add(limit.kind());
      Verdict v = comparison.judge(absurd.get());
      // Restricted, refused and absent things stay so whatever the number.
      boolean isBeyondNumbers =
          limit.kind().equals("restricted-use") && limit.value().equals("yes")
              || v.outcome() == Verdict.Outcome.NO_USE
              || limit.kind().equals("harvest") && isRefused(limit);
      if (!isBeyondNumbers) {
        assertThat(v.outcome()).as(absurd.get().toString()).isEqualTo(Verdict.Outcome.NOT_FOLLOWED);
      }
    }
    assertThat(tried).containsAll(ABSURD.keySet()).contains("rate-to", "cap");
  }

  /** Statements of which the opposite stands in the starter. */
  @ParameterizedTest
  @CsvSource({
    "glyphosate, , any, not-in-the-year, soybean, ''",
    "atrazine, , any, not-in-the-next-year, soybean, 03-01",
    "atrazine, , any, bioassay, soybean, ''",
    "flumioxazin, soybean, pre, latest, , 1 days",
    "flumioxazin, soybean, pre, before-planting, , ''",
    "glyphosate, corn, post, stage-to, , V7",
    "glyphosate, corn, post, stage-before, , V8",
    "glyphosate, corn, post, stage-from, , V1",
    "glyphosate, corn, post, not-labelled, , ''",
    "glyphosate, corn, post, trait, , dicamba",
    "glyphosate, corn, post, jar-test-refused, , ''",
    "atrazine, corn, pre, no-residual, , ''",
    "atrazine, corn, post, adjuvant-needed, , volatility-reducer",
    "atrazine, corn, post, adjuvant-refused, , crop-oil",
    "atrazine, corn, post, runoff-rain, , 48 h",
  })
  void whatTheStarterDoesNotSayIsNotFollowed(
      String ingredient,
      @Nullable String crop,
      String position,
      String kind,
      @Nullable String of,
      String value) {
    PublishedLimit limit =
        new PublishedLimit(
            "made up",
            List.of(List.of(ingredient)),
            Optional.ofNullable(crop).stream().toList(),
            position,
            kind,
            Optional.ofNullable(of).stream().toList(),
            value,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            "nowhere");
    assertThat(WITHOUT_A_NUMBER).contains(kind);
    assertThat(comparison.judge(limit).outcome()).isEqualTo(Verdict.Outcome.NOT_FOLLOWED);
  }

  private boolean isRefused(PublishedLimit limit) {
    return comparison.judge(with(limit, "refused")).outcome() == Verdict.Outcome.FOLLOWED;
  }

  private static Optional<PublishedLimit> absurd(PublishedLimit limit) {
    if (limit.kind().equals("rate-to") || limit.kind().equals("cap")) {
      String unit = limit.value().substring(limit.value().indexOf(' '));
      return Optional.of(with(limit, "0.00001" + unit));
    }
    return Optional.ofNullable(ABSURD.get(limit.kind())).map(v -> with(limit, v));
  }

  private static PublishedLimit with(PublishedLimit l, String value) {
    return new PublishedLimit(
        l.key(),
        l.ingredients(),
        l.crops(),
        l.position(),
        l.kind(),
        l.of(),
        value,
        l.formulation(),
        l.method(),
        l.rate(),
        l.ground(),
        l.states(),
        l.source());
  }
}
