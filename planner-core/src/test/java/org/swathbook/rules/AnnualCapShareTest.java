package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/**
 * From which share of a cap on it is named, with atrazine in corn: 2.5 lb ai in a calendar year, of
 * which 2.0 after emergence (Cornell University, atrazine application rates).
 */
class AnnualCapShareTest {

  private static MixCase corn(String before, String now) {
    return MixCase.in("corn").day(20, "V3", 6).applied(4, before).tank(now);
  }

  private static List<Severity> atLoading(String before, String now) {
    return corn(before, now).findings().stream()
        .filter(f -> f.rule().value().equals("annual-cap"))
        .map(Finding::severity)
        .toList();
  }

  @Test
  void aTankThatTakesNineTenthsOfACapIsWarnedOf() {
    assertThat(atLoading("atrazine 0.80 ai", "atrazine 1.0 ai")).containsExactly(Severity.WARN);
    assertThat(atLoading("atrazine 0.79 ai", "atrazine 1.0 ai")).isEmpty();
  }

  @Test
  void aTankThatTakesAllOfItIsWarnedOfAndMoreIsBlocked() {
    assertThat(atLoading("atrazine 1.0 ai", "atrazine 1.0 ai")).containsExactly(Severity.WARN);
    assertThat(atLoading("atrazine 1.01 ai", "atrazine 1.0 ai")).containsExactly(Severity.BLOCK);
  }

  /** The crop itself is allowed 2.5 lb; only what is sprayed in these positions is used up. */
  @Test
  void aCapOfSomePositionsSaysSo() {
    assertThat(corn("atrazine 1.0 ai", "atrazine 1.0 ai").findings())
        .filteredOn(f -> f.rule().value().equals("annual-cap"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .endsWith(
                        "2 lb ai/acre this calendar year is all that is allowed in corn (post)."));
  }

  @Test
  void inAPlanItIsANote() {
    MixCase tank = MixCase.in("corn").day(20, "V3", 6).tank("atrazine 1.0 ai");
    assertThat(MixCase.in("corn").applied(4, "atrazine 0.80 ai").judgedAsProgram(tank).findings())
        .filteredOn(f -> f.rule().value().equals("annual-cap"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
  }
}
