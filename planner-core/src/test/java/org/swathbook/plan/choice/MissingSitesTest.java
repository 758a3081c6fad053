package org.swathbook.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;

/** How many effective sites a tank lacks on Palmer amaranth that resists sites 2 and 9. */
class MissingSitesTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow());

  private List<DoseOption> options = List.of();
  private Strengths strengths = new Strengths(BOOK, TRACES, options);

  @BeforeEach
  void make() {
    options = OptionMaker.make(BOOK, TRACES.field()).options();
    strengths = new Strengths(BOOK, TRACES, options);
  }

  private Ingredient active(int option) {
    return BOOK.catalog().ingredient(options.get(option).ingredient());
  }

  private Site site(int option) {
    return active(option).site();
  }

  private int missing(List<Integer> tank, int foliar, int soil) {
    return strengths.missing(tank, foliar, soil, this::site);
  }

  /** A rating of the response table before emergence, at the house's 70 % or above it. */
  @Test
  void theSoilCountsByItsRatingAndNotWhereItIsResisted() {
    assertThat(strengths.drivers()).hasSize(1);
    WeedPressure palmer = strengths.drivers().get(0);
    int works = 0;
    for (int o = 0; o < options.size(); o++) {
      Ingredient active = active(o);
      double pct =
          BOOK.catalog()
              .response(palmer.weed().id(), active.id(), Response.Timing.PRE)
              .find()
              .map(Response::emaxPct)
              .orElse(0.0);
      boolean resisted = List.of(2, 9).contains(active.site().number());
      assertThat(strengths.soil(o, 0))
          .as(active.name())
          .isEqualTo(!resisted && active.hasSoilActivity() && pct >= 70);
      assertThat(strengths.foliar(o, 0) && (resisted || !active.hasFoliarActivity())).isFalse();
      works += strengths.soil(o, 0) ? 1 : 0;
    }
    assertThat(works).isBetween(1, options.size() - 1);
  }

  /** Two of one site are one; what is more than asked makes up for nothing. */
  @Test
  void sitesAreCountedOnceAndLeavesAndSoilApart() {
    List<List<Integer>> tanks = new ArrayList<>(List.of(List.of()));
    for (int a = 0; a < options.size(); a++) {
      tanks.add(List.of(a));
      for (int b = 0; b < options.size(); b++) {
        tanks.add(List.of(a, b));
      }
    }
    Set<Integer> seen = new HashSet<>();
    for (List<Integer> tank : tanks) {
      Set<Site> leaves = new HashSet<>();
      Set<Site> soil = new HashSet<>();
      for (int o : tank) {
        if (strengths.foliar(o, 0)) {
          leaves.add(site(o));
        }
        if (strengths.soil(o, 0)) {
          soil.add(site(o));
        }
      }
      int lacks = Math.max(0, 2 - leaves.size()) + Math.max(0, 1 - soil.size());
      assertThat(missing(tank, 2, 1)).isEqualTo(lacks);
      assertThat(missing(tank, 0, 2)).isEqualTo(Math.max(0, 2 - soil.size()));
      seen.add(lacks);
    }
    assertThat(seen).contains(0, 1, 2, 3);
  }
}
