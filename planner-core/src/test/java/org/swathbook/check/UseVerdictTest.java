package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Findings;

/** For which tanks what was said of an active in one of them is said anew. */
class UseVerdictTest {
  private static final Dose CHLORIMURON = dose("chlorimuron-ethyl", 0.008);
  private static final Dose GLYPHOSATE = dose("glyphosate", 1);

  private static Dose dose(String name, double lbPerAcre) {
    Ingredient active = DemoFields.BOOK.catalog().findIngredient(name).orElseThrow();
    return Doses.ofIngredient(
        active,
        DemoFields.BOOK.catalog().singles(active.id()).get(0),
        Rate.lbPerAcre(lbPerAcre, active.rateBasis()));
  }

  private static boolean holdsWith(Dose... tank) {
    return holds(GLYPHOSATE, tank);
  }

  /**
   * @param partner what the active was judged beside
   * @param tank another, the active first
   */
  private static boolean holds(Dose partner, Dose... tank) {
    Field field = DemoFields.field("ND-1");
    TraceSet traces = DemoFields.traces(field);
    Mix first = Mix.of(List.of(partner, CHLORIMURON));
    UseVerdict said =
        UseVerdict.of(
            UseJudge.facts(
                    DemoFields.BOOK,
                    traces,
                    0,
                    Timings.at(traces, field.plantDate().plusDays(25)),
                    first)
                .get(1),
            Findings.places());
    return said.holds(tank[0], tank[0].actives().get(0), Mix.of(List.of(tank)));
  }

  @Test
  void withOtherPartnersOfOtherSitesItHolds() {
    assertThat(holdsWith(CHLORIMURON, GLYPHOSATE)).isTrue();
    assertThat(holdsWith(CHLORIMURON)).isTrue();
    assertThat(holdsWith(CHLORIMURON, dose("fomesafen", 0.25))).isTrue();
  }

  @Test
  void withMoreOfTheActiveItIsJudgedAnew() {
    Dose more = dose("chlorimuron-ethyl", 0.002);
    assertThat(holdsWith(CHLORIMURON, more)).isFalse();
    Dose asMuchOfItsSite = dose("cloransulam-methyl", 0.002);
    assertThat(holds(asMuchOfItsSite, CHLORIMURON, asMuchOfItsSite)).isTrue();
    assertThat(holds(asMuchOfItsSite, CHLORIMURON, more)).isFalse();
  }

  /** A rate that is low by itself is less of a matter beside a partner of its site. */
  @Test
  void withAPartnerOfItsSiteItIsJudgedAnew() {
    assertThat(holdsWith(CHLORIMURON, dose("cloransulam-methyl", 0.016))).isFalse();
  }

  @Test
  void anotherDoseIsJudgedAnew() {
    assertThat(holdsWith(dose("chlorimuron-ethyl", 0.006))).isFalse();
  }
}
