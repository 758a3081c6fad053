package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.measure.Money;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.ExactSearch;

/** What is said of a proof, by whether it was given up and whether what it found is shown. */
class ProofTest {
  private static final String FIRST = "first";
  private static final double NOTHING = Double.NEGATIVE_INFINITY;

  private static Walked better;
  private static Walked worse;

  @BeforeAll
  static void walkTwo() {
    PlanGround ground = new PlanGround(DemoCopy.inMemory(), "ND-4");
    Search search = ground.search();
    search.climb(Draft.EMPTY, 1);
    List<Walked> sorted =
        search.walked().stream().filter(Walked::hasPasses).sorted(Goal.BEST).toList();
    better = sorted.stream().max(Comparator.comparing(Walked::net)).orElseThrow();
    worse = sorted.stream().min(Comparator.comparing(Walked::net)).orElseThrow();
    assertThat(worse.net()).isLessThan(better.net());
  }

  private static ExactSearch.Result result(Walked best, boolean exact, double mostLeft) {
    return new ExactSearch.Result(Optional.of(best), exact, mostLeft, 1);
  }

  private static Proof proof(
      ExactSearch.Result first, Map<String, ExactSearch.Result> beside, Map<String, Walked> shown) {
    return Proof.of(
        new Combining.Result(2, 1, Optional.of(first), beside, List.of(), Optional.empty()), shown);
  }

  @Test
  void whatIsProvedAndShownHasNoGap() {
    Proof proof = proof(result(better, true, NOTHING), Map.of(), Map.of(FIRST, better));
    assertThat(proof.exact()).isTrue();
    assertThat(proof.gap()).contains(Money.ZERO);
  }

  @Test
  void whatWasGivenUpHasTheGapOfWhatIsLeftRoundedUp() {
    double left = better.net().dollars() + 1.234;
    Proof proof = proof(result(better, false, left), Map.of(), Map.of(FIRST, better));
    assertThat(proof.exact()).isFalse();
    assertThat(proof.gap()).contains(new Money(124));
  }

  @Test
  void whereABlockedProgramWasTheBestTheGapReachesUpToIt() {
    Proof proof = proof(result(better, true, NOTHING), Map.of(), Map.of(FIRST, worse));
    assertThat(proof.exact()).isFalse();
    assertThat(proof.gap()).contains(better.net().minus(worse.net()));
  }

  @Test
  void ofTheOthersThoseAreProvedThatAreFoundShownAndSearchedToTheEnd() {
    Map<String, Walked> shown = new LinkedHashMap<>();
    shown.put(FIRST, better);
    shown.put("shown", worse);
    shown.put("given up", worse);
    shown.put("another shown", worse);
    Proof proof =
        proof(
            result(better, true, NOTHING),
            Map.of(
                "shown",
                result(worse, true, NOTHING),
                "given up",
                result(worse, false, 0),
                "another shown",
                result(better, true, NOTHING),
                "not shown",
                result(worse, true, NOTHING)),
            shown);
    assertThat(proof.proved()).containsExactly("shown");
  }

  @Test
  void whereNothingWasCombinedNothingIsSaid() {
    Combining.Result nothing =
        new Combining.Result(0, 0, Optional.empty(), Map.of(), List.of(), Optional.empty());
    assertThat(Proof.of(nothing, Map.of(FIRST, better)))
        .isEqualTo(new Proof(false, Optional.empty(), List.of()));
  }
}
