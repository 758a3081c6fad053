package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * Giant ragweed in corn, where site 4 alone is rated at the house's 80 % on plants of the control
 * height. Mesotrione is rated at 75 % on plants of 5 in, and takes more of smaller ones.
 */
class StrengthsTest {
  private static final WeedId RAGWEED = WeedId.of("AMBTR");
  private static Book book;
  private static Field field;

  @BeforeAll
  static void load(@TempDir Path folder) {
    book = new DemoCopy(folder.resolve("book")).load();
    field = book.findField("ND-2").orElseThrow();
  }

  @Test
  void whatSmallPlantsFeelIsASiteToTry() {
    TraceSet traces = TraceBuilder.build(book, field);
    List<DoseOption> options = OptionMaker.make(book, field).options();
    Strengths strengths = new Strengths(book, traces, options);
    Set<String> foliar = new TreeSet<>();
    assertThat(strengths.drivers().get(0).weed().id()).isEqualTo(RAGWEED);
    options.stream()
        .filter(o -> strengths.foliar(o.index(), 0))
        .forEach(o -> foliar.add(o.ingredient().value()));

    assertThat(foliar)
        .contains("dicamba", "2-4-d-ester", "mesotrione", "glufosinate-ammonium")
        .doesNotContain("atrazine", "glyphosate", "s-metolachlor");
  }

  /** 2,4-D alone over young corn, and the doses that the search would add to it. */
  @Test
  void thePassThatLacksASiteIsTriedWithIt() {
    PlanGround ground = new PlanGround(book, "ND-2");
    PlanSpace space = ground.space;
    FieldEvaluator evaluator = ground.evaluator;
    Mending mending = ground.mending;
    int date = space.grid().placeOf(13);
    int ester =
        space.legalOn(date).stream()
            .filter(o -> space.option(o).ingredient().value().equals("2-4-d-ester"))
            .reduce((a, b) -> b)
            .orElseThrow();
    Walked alone = evaluator.full(Draft.EMPTY.with(new Stop(date, List.of(ester))));

    assertThat(alone.brokenNames()).contains("minFoliarSites");
    assertThat(mending.of(alone))
        .filteredOn(d -> d.stops().get(0).options().contains(ester))
        .flatExtracting(d -> d.stops().get(0).options())
        .extracting(o -> space.option(o).ingredient().value())
        .contains("mesotrione");
  }
}
