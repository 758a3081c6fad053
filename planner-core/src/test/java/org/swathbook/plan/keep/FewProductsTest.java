package org.swathbook.plan.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Effort;
import org.swathbook.plan.change.OwnWork;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.Restated;

/** Written programs of a book that buys five products: little to change them to. */
class FewProductsTest {
  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);
  private static final LocalDate PLANTING = LocalDate.of(2027, 5, 11);
  private static final LocalDate POST = LocalDate.of(2027, 6, 3);

  private static Book book;
  private static TraceSet traces;
  private static List<DoseOption> options;

  @BeforeAll
  static void load(@TempDir Path folder) {
    book =
        new DemoCopy(folder.resolve("book"))
            .change("book.yaml", "dateStep: 3 days", "dateStep: 14 days")
            .change("book.yaml", "maxPasses: 4", "maxPasses: 2")
            .change("book.yaml", "maxProducts: 4", "maxProducts: 2")
            .replaceAll(
                "prices.csv",
                "(?m)^(?!product,|glufosinate-2\\.34sl,|2-4-d-choline-3\\.8sl,|clethodim-2ec,"
                    + "|flumioxazin-|s-metolachlor-).*\n",
                "")
            .load();
    traces = TraceBuilder.build(book, book.findField("ND-1").orElseThrow(), WINTER);
    options = OptionMaker.make(book, traces.field()).options();
  }

  private static Pass pass(LocalDate date, String... actives) {
    return new Pass(
        new Anchor.OnDate(date),
        Mix.of(
            Arrays.stream(actives)
                .map(
                    a ->
                        options.stream()
                            .filter(o -> o.ingredient().value().equals(a))
                            .reduce((x, y) -> y)
                            .orElseThrow()
                            .dose())
                .toList()));
  }

  private static Program program(Pass... passes) {
    return new Program("As it was", traces.field().id(), List.of(passes));
  }

  private static Kept keep(PlanWishes wishes, LocalDate today, Pass... passes) {
    return Keeping.of(book, traces, program(passes), wishes, today, Effort.QUICK);
  }

  private static final String TAKEN = ", which lies before today: it is taken as made as written.";

  /** The journal of the season is empty. */
  @Test
  void aPassBeforeTodayIsTakenAsMadeAndSaidSo() {
    Pass early = pass(PLANTING, "flumioxazin");
    Pass post = pass(POST, "glufosinate-ammonium");
    assertThat(keep(PlanWishes.NONE, POST, early, post).notes())
        .filteredOn(n -> n.endsWith(TAKEN))
        .containsExactly("The journal has nothing of the pass of 11 May 2027" + TAKEN);
    assertThat(keep(PlanWishes.NONE, PLANTING, early, post).notes())
        .noneMatch(n -> n.endsWith(TAKEN));
  }

  @Test
  void onePassTooManyGoes() {
    PlanWishes one =
        new PlanWishes(
            new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), Optional.empty(), OptionalInt.of(1));
    Kept kept =
        keep(one, WINTER, pass(PLANTING, "flumioxazin"), pass(POST, "glufosinate-ammonium"));
    assertThat(kept.wanting()).containsExactly("It has 2 passes and may have 1.");
    assertThat(kept.needsNothing()).isFalse();
    KeptProgram first = kept.programs().get(0);
    assertThat(first.name()).isEqualTo("With one change");
    assertThat(first.changes())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.kind()).isEqualTo(SingleChange.Kind.LEAVE_OUT_PASS);
              assertThat(c.pass()).isEqualTo(POST);
            });
    assertThat(first.against().isNothing()).isFalse();
  }

  /** It breaks four house rules, and did so before: nothing is asked of it but to serve. */
  @Test
  void whatServesStaysAsItIs() {
    Kept kept = keep(PlanWishes.NONE, WINTER, pass(POST, "glufosinate-ammonium"));
    assertThat(kept.programs()).as("none of two changes more is within the rules").hasSize(1);
    KeptProgram first = kept.programs().get(0);
    assertThat(kept.needsNothing()).isTrue();
    assertThat(first.name()).isEqualTo("As written");
    assertThat(first.size()).isZero();
    assertThat(first.newlyBroken()).isEmpty();
    assertThat(first.meetsHouseRules()).isFalse();
    assertThat(first.against().isNothing()).isTrue();
    assertThat(kept.notes()).isEmpty();
    assertThat(kept.anew()).isPresent();
  }

  /** 2,4-D takes the place of glufosinate, which does 2 % on plants of a foot. */
  @Test
  void onlyOfAProductThatGoesIsSaidThatItFails() {
    PlanWishes without = PlanWishes.NONE.withoutAll(List.of(ProductId.of("glufosinate-2.34sl")));
    Kept kept = keep(without, WINTER, pass(POST, "glufosinate-ammonium"));
    assertThat(kept.notes())
        .singleElement()
        .asString()
        .startsWith("glufosinate-2.34sl itself would give 2 % of Palmer amaranth");
    assertThat(kept.programs().get(0).changes())
        .singleElement()
        .satisfies(
            c ->
                assertThat(c.in().get(0).product().id())
                    .isEqualTo(ProductId.of("2-4-d-choline-3.8sl")));
  }

  @Test
  void ofAProductThatWorksNothingIsSaid() {
    PlanWishes without = PlanWishes.NONE.withoutAll(List.of(ProductId.of("2-4-d-choline-3.8sl")));
    Pass small = pass(LocalDate.of(2027, 5, 24), "2-4-d-choline");
    Kept kept = keep(without, WINTER, small);
    assertThat(
            OwnWork.countedOn(
                    book,
                    kept.written().judged().outcome(),
                    LocalDate.of(2027, 5, 24),
                    small.mix().doses().get(0))
                .orElseThrow()
                .pct())
        .isGreaterThan(50);
    assertThat(kept.notes()).isEmpty();
  }

  /** Without the two that work through the soil no change of up to five meets all it met. */
  @Test
  void whereNothingServesTheNearestIsToldAndWhatItBreaks() {
    PlanWishes without =
        PlanWishes.NONE.withoutAll(
            List.of(ProductId.of("flumioxazin-51wg"), ProductId.of("s-metolachlor-7.62ec")));
    Kept kept =
        keep(
            without,
            WINTER,
            pass(PLANTING, "flumioxazin", "s-metolachlor"),
            pass(LocalDate.of(2027, 5, 27), "glufosinate-ammonium", "2-4-d-choline"));
    assertThat(kept.wanting()).hasSize(2);
    assertThat(kept.programs())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.name()).isEqualTo("As near to the house rules as was found");
              assertThat(p.newlyBroken()).containsExactly(HouseRuleCheck.SEASON_CONTROL);
              assertThat(p.size()).isBetween(2, 5);
              assertThat(p.judged().judgement().verdict()).isNotEqualTo(Verdict.BLOCKED);
              assertThat(new Wanting(book, without).of(p.judged().outcome().program())).isEmpty();
            });
  }

  /** A house that asks for 60 % of control and nothing else: glufosinate gives 40 %, late. */
  @Test
  void whatMeetsTheHouseRulesTooIsToldBesideWhatServes() {
    HouseRules lenient = book.house();
    for (String share : List.of("oneSiteGone", "otherControl", "windowConfidence")) {
      lenient = Restated.with(lenient, share, 0.0);
    }
    lenient = Restated.with(lenient, "maxExposedEmergence", Map.of());
    lenient = Restated.with(lenient, "maxExposedEmergenceOthers", 1.0);
    lenient = Restated.with(lenient, "minFoliarSites", 0);
    lenient = Restated.with(lenient, "seasonControl", 0.6);
    Kept kept =
        Keeping.of(
            BookParts.of(book).house(lenient).whole(),
            traces,
            program(pass(POST, "glufosinate-ammonium")),
            PlanWishes.NONE,
            WINTER,
            Effort.QUICK);
    assertThat(kept.programs())
        .extracting(KeptProgram::name)
        .containsExactly("As written", "With one change, within the house rules");
    KeptProgram within = kept.programs().get(1);
    assertThat(within.meetsHouseRules()).isTrue();
    assertThat(within.size()).isEqualTo(1);
    assertThat(kept.programs().get(0).meetsHouseRules()).isFalse();
    assertThat(kept.needsNothing()).isTrue();
  }
}
