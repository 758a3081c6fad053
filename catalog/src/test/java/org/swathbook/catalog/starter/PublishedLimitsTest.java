package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.file.CatalogLoader;

/**
 * The starter is at least as strict as every limit of {@code published-limits.csv}, which names the
 * source beside each. What it deliberately does not follow stands with a reason in {@code
 * not-followed.csv}, what concerns a use that it does not have in {@code no-such-use.csv}, and what
 * only people can compare in {@code left-to-reading.csv}. Nothing is passed over in silence, and
 * none of the lists may hold more than it must.
 */
class PublishedLimitsTest {
  private final Comparison comparison = new Comparison(new CatalogLoader().starter());
  private final List<PublishedLimit> limits = PublishedTables.limits();
  private final Map<String, String> notFollowed = PublishedTables.reasons("not-followed.csv");
  private final Map<String, String> noSuchUse = PublishedTables.reasons("no-such-use.csv");
  private final Map<String, String> reading = PublishedTables.reasons("left-to-reading.csv");

  @Test
  void everyLimitIsFollowedOrSaysWhyNot() {
    List<String> lax = new ArrayList<>();
    List<String> listedInVain = new ArrayList<>();
    for (PublishedLimit limit : Comparison.comparable(limits)) {
      Verdict v = comparison.judge(limit);
      boolean lags = v.outcome() == Verdict.Outcome.NOT_FOLLOWED;
      if (lags && !notFollowed.containsKey(limit.key())) {
        lax.add(limit + "; " + v.detail());
      }
      if (!lags && notFollowed.containsKey(limit.key())) {
        listedInVain.add(limit.toString());
      }
    }
    assertThat(lax).as("laxer than published, and not in not-followed.csv").isEmpty();
    assertThat(listedInVain).as("in not-followed.csv, but followed").isEmpty();
  }

  @Test
  void usesThatTheStarterLacksAreListed() {
    Set<String> without = new LinkedHashSet<>();
    for (PublishedLimit limit : Comparison.comparable(limits)) {
      if (comparison.judge(limit).outcome() == Verdict.Outcome.NO_USE) {
        without.add(limit.key());
      }
    }
    assertThat(noSuchUse.keySet()).containsExactlyInAnyOrderElementsOf(without);
  }

  @Test
  void whatIsLeftToReadingIsListedAndCounted() {
    Set<String> read = new LinkedHashSet<>();
    for (PublishedLimit limit : limits) {
      if (limit.kind().equals("reading")) {
        read.add(limit.key());
      }
    }
    assertThat(reading.keySet()).containsExactlyInAnyOrderElementsOf(read);
    Map<String, Integer> counts = new TreeMap<>();
    reading.values().forEach(reason -> counts.merge(reason, 1, Integer::sum));
    assertThat(counts)
        .containsOnly(
            Map.entry("crop is none of the catalog", 27),
            Map.entry("next crop is none of the catalog", 16),
            Map.entry("advice without a number", 12),
            Map.entry("restricted by a state", 5),
            Map.entry("asked by the condition of the use", 3),
            Map.entry("place that the format has no key for", 1),
            Map.entry("handling of containers", 2),
            Map.entry("opening date by state", 1),
            Map.entry("a partner is asked for", 1));
    assertThat(limits).hasSize(584);
  }

  /** A crop that joins the catalog makes its rows ready to be compared. */
  @Test
  void rowsOfOtherCropsAreOfOtherCrops() {
    for (PublishedLimit limit : limits) {
      String reason = reading.getOrDefault(limit.key(), "");
      if (reason.equals("next crop is none of the catalog")) {
        assertThat(limit.of()).as(limit.toString()).isNotEmpty().noneMatch(comparison::isCrop);
      } else if (!limit.kind().equals("rotation")) { // whatever crop it was sprayed in
        assertThat(limit.crops().stream().allMatch(comparison::isCrop))
            .as(limit.toString())
            .isEqualTo(!reason.equals("crop is none of the catalog"));
      }
    }
  }

  @Test
  void keysAreUniqueAndEveryRowHasItsSourceAndAnIngredientOfTheStarter() {
    Set<String> keys = new HashSet<>();
    for (PublishedLimit limit : limits) {
      assertThat(keys.add(limit.key())).as(limit.key()).isTrue();
      assertThat(limit.source()).as(limit.key()).hasSizeGreaterThan(15);
      assertThat(comparison.knowsAnIngredientOf(limit)).as(limit.toString()).isTrue();
    }
    assertThat(keys).containsAll(notFollowed.keySet()).containsAll(noSuchUse.keySet());
  }
}
