package org.swathbook.plan.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Effort;
import org.swathbook.plan.change.ChangeMaker;
import org.swathbook.plan.change.ChangeTerms;
import org.swathbook.plan.change.LegalDoses;
import org.swathbook.plan.change.OwnWork;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.change.StandingPasses;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.draft.Broken;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** A written program changed as little as may be, under three weather years. */
class KeepingTest {
  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);
  private static final ProductId GLUFOSINATE = ProductId.of("glufosinate-2.34sl");

  @TempDir private Path dir;

  private static Program written(Book book, Path folder) {
    BookPaths paths = new BookPaths(folder);
    return ProgramReader.read(paths.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers"), paths, book);
  }

  private static Field field(Book book) {
    return book.findField("ND-1").orElseThrow();
  }

  /** Every week is close enough: there are days to move a pass to on either side of each window. */
  private DemoCopy copy() {
    return new DemoCopy(dir.resolve("book"))
        .change("book.yaml", "dateStep: 3 days", "dateStep: 7 days")
        .change("book.yaml", "maxPasses: 4", "maxPasses: 3")
        .change("book.yaml", "maxProducts: 4", "maxProducts: 3");
  }

  /**
   * What is planned anew beside it is not what is asked here, so a quick look is enough for that.
   */
  private Kept keep(Book book, PlanWishes wishes, LocalDate today) {
    Program written = written(book, dir.resolve("book"));
    return Keeping.of(
        book, TraceBuilder.build(book, field(book), today), written, wishes, today, Effort.QUICK);
  }

  private static void isLegal(Book book, Kept kept, KeptProgram p, LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, field(book), today);
    SeasonOutcome again = SeasonWalk.walk(book, traces, p.judged().outcome().program());
    assertThat(p.judged().outcome()).isEqualTo(again);
    assertThat(ProgramJudge.judge(book, traces, again, today).verdict())
        .isNotEqualTo(Verdict.BLOCKED);
    Set<Broken> before =
        Broken.of(
            HouseRuleCheck.broken(
                book, new TankOffers(book, traces), kept.written().judged().outcome()));
    assertThat(p.newlyBroken())
        .isEqualTo(
            Broken.without(
                Broken.of(HouseRuleCheck.broken(book, new TankOffers(book, traces), again)),
                before));
  }

  @Test
  void aProgramThatServesStaysAsItIs() {
    Book book = copy().load();
    Kept kept = keep(book, PlanWishes.NONE, WINTER);
    assertThat(kept.needsNothing()).isTrue();
    assertThat(kept.wanting()).isEmpty();
    assertThat(kept.programs().get(0).judged().outcome().program())
        .isEqualTo(written(book, dir.resolve("book")));
    assertThat(kept.anew()).isPresent();
  }

  /**
   * Of all single changes that take the product out, walked and judged, no other is better that
   * puts no product in its place that does nothing there. Palmer amaranth stands 11 in tall when
   * that pass comes: neither the product nor another contact herbicide does much to it.
   */
  @Test
  void aProductThatIsShortIsTheOnlyThingThatChangesAndNoOtherChangeServesBetter() {
    Book book = copy().load();
    PlanWishes wishes = PlanWishes.NONE.withoutAll(List.of(GLUFOSINATE));
    Kept kept = keep(book, wishes, WINTER);
    onlyTheProductChanges(book, kept);
    assertThat(kept.notes())
        .anySatisfy(
            n ->
                assertThat(n)
                    .startsWith("glufosinate-2.34sl itself would give ")
                    .endsWith("what helps is an earlier pass."));
    assertThat(kept.programs().get(0).changes().get(0).in())
        .extracting(d -> d.product().id().value())
        .as("site 14 does 1 % there")
        .doesNotContain("fomesafen-2sl", "acifluorfen-2sl", "lactofen-2ec");
    noOtherSingleChangeServesBetter(book, wishes, kept.programs().get(0));
  }

  private void onlyTheProductChanges(Book book, Kept kept) {
    assertThat(kept.wanting())
        .containsExactly("glufosinate-2.34sl is in a pass and is to be left out.");
    KeptProgram first = kept.programs().get(0);
    assertThat(first.size()).isEqualTo(1);
    assertThat(first.changes().get(0).out().orElseThrow().product().id()).isEqualTo(GLUFOSINATE);
    isLegal(book, kept, first, WINTER);
    List<Pass> before = written(book, dir.resolve("book")).passes();
    List<Pass> after = first.judged().outcome().program().passes();
    assertThat(after.get(0)).isEqualTo(before.get(0));
    assertThat(after.get(1).at()).isEqualTo(before.get(1).at());
    for (KeptProgram p : kept.programs()) {
      assertThat(p.judged().outcome().program().passes())
          .flatExtracting(x -> x.mix().doses())
          .extracting(d -> d.product().id())
          .doesNotContain(GLUFOSINATE);
    }
  }

  private void noOtherSingleChangeServesBetter(Book book, PlanWishes wishes, KeptProgram found) {
    TraceSet traces = TraceBuilder.build(book, field(book), WINTER);
    Kernel kernel = Kernel.of(book, traces);
    TankOffers offers = new TankOffers(book, traces);
    Program now = written(book, dir.resolve("book"));
    SeasonOutcome asWritten = SeasonWalk.walk(book, kernel, now);
    Set<Broken> before = Broken.of(HouseRuleCheck.broken(book, offers, asWritten));
    ChangeTerms terms = ChangeTerms.keeping(WINTER, wishes);
    LegalDoses doses =
        new LegalDoses(
            book,
            traces,
            terms,
            SeasonSoFar.of(book, field(book), WINTER),
            OptionMaker.make(book, field(book)).options());
    List<SingleChange> all =
        new ChangeMaker(book, traces, now, new StandingPasses(book, kernel).of(now), terms, doses)
            .ofPasses();
    Wanting wanting = new Wanting(book, wishes);
    Map<SeasonOutcome, Double> serving = new LinkedHashMap<>();
    int idle = 0;
    for (SingleChange c : all) {
      Program changed = ChangeMaker.filled(book, traces, now, c.program());
      if (!wanting.of(changed).isEmpty()) {
        continue;
      }
      SeasonOutcome outcome = SeasonWalk.walk(book, kernel, changed);
      List<BrokenHouseRule> broken = HouseRuleCheck.broken(book, offers, outcome);
      if (Broken.without(Broken.of(broken), before).isEmpty()
          && ProgramJudge.judge(book, traces, outcome, WINTER).verdict() != Verdict.BLOCKED) {
        if (OwnWork.isDone(book, asWritten, outcome, c)) {
          serving.put(outcome, HouseDeficit.of(broken));
        } else {
          idle++;
        }
      }
    }
    assertThat(idle).as("that would serve, but for doing nothing themselves").isGreaterThan(5);
    assertThat(serving).containsKey(found.judged().outcome());
    double least = Collections.min(serving.values());
    assertThat(HouseDeficit.of(found.judged().judgement().brokenHouseRules())).isEqualTo(least);
    Optional<Money> most =
        serving.entrySet().stream()
            .filter(e -> e.getValue() == least)
            .map(e -> e.getKey().net().orElseThrow())
            .max(Comparator.naturalOrder());
    assertThat(found.judged().outcome().net()).isEqualTo(most);
  }

  /** A dated residual that may not go on after the crop is up follows the planting, or goes. */
  @Test
  void whenPlantingComesForwardAPassMovesOutOfTheWay() {
    Book book =
        copy()
            .change("fields.csv", "2027-05-11", "2027-05-04")
            .change(
                "programs/nd-1-two-layers.yaml",
                "at: planting               #",
                "at: 2027-05-11             #")
            .load();
    Kept kept = keep(book, PlanWishes.NONE, WINTER);
    assertThat(kept.written().judged().judgement().verdict()).isEqualTo(Verdict.BLOCKED);
    assertThat(kept.needsNothing()).isFalse();
    KeptProgram first = kept.programs().get(0);
    assertThat(first.size()).isPositive().isLessThanOrEqualTo(2);
    assertThat(first.changes())
        .allSatisfy(c -> assertThat(c.pass()).isEqualTo(LocalDate.of(2027, 5, 11)));
    isLegal(book, kept, first, WINTER);
  }

  @Test
  void whatIsMadeIsAFactAndOnlyTheRestChanges() {
    String row =
        "A-27-001,1,,2027-05-12,08:00,ND-1,2027,76.0,flumioxazin,D,0.08,lb ai/acre,M,soybean,pre,"
            + "AMAPA,One,D-1,5,NW,60,";
    Book book =
        copy()
            .replaceAll("applications.csv", "(?m)^(id,line,corrects,date,.*)$", "$1\n" + row)
            .load();
    LocalDate today = LocalDate.of(2027, 5, 12);
    Kept kept = keep(book, PlanWishes.NONE.withoutAll(List.of(GLUFOSINATE)), today);
    assertThat(kept.programs()).isNotEmpty();
    for (KeptProgram p : kept.programs()) {
      List<Pass> passes = p.judged().outcome().program().passes();
      assertThat(passes.get(0).at()).isEqualTo(new Anchor.Made(today));
      assertThat(passes.get(0).mix().doses())
          .singleElement()
          .satisfies(d -> assertThat(d.product().id().value()).startsWith("flumioxazin"));
      assertThat(p.judged().outcome().passes().subList(1, passes.size()))
          .allSatisfy(x -> assertThat(x.planned()).isAfterOrEqualTo(today));
    }
    isLegal(book, kept, kept.programs().get(0), today);
  }

  @Test
  void whatCannotBeMetIsToldAndNothingIsMadeUp() {
    Kept kept = keep(copy().load(), atMost(5), WINTER);
    assertThat(kept.wanting())
        .singleElement()
        .asString()
        .contains("when every pass is made, and may cost $5.00");
    assertThat(kept.programs()).as("a season without a pass keeps nothing").isEmpty();
  }

  private static PlanWishes atMost(double dollars) {
    return new PlanWishes(
        PlanWishes.NONE.without(),
        PlanWishes.NONE.withoutSites(),
        PlanWishes.NONE.include(),
        Optional.of(Money.ofDollars(dollars)),
        PlanWishes.NONE.maxPasses());
  }

  /** A pass alone is above it, so that it changes too; none is changed first and then left out. */
  @Test
  void aBudgetIsMetByFewChangesAndSomePassIsKept() {
    Kept kept = keep(copy().load(), atMost(15), WINTER);
    assertThat(kept.programs()).isNotEmpty();
    for (KeptProgram p : kept.programs()) {
      assertThat(p.judged().outcome().passes()).isNotEmpty();
      assertThat(p.judged().outcome().cost().orElseThrow())
          .isLessThanOrEqualTo(Money.ofDollars(15));
      for (int i = 0; i < p.changes().size(); i++) {
        SingleChange c = p.changes().get(i);
        if (c.kind() == SingleChange.Kind.LEAVE_OUT_PASS) {
          assertThat(p.changes().subList(0, i))
              .noneMatch(b -> b.movedTo().orElse(b.pass()).equals(c.pass()));
        }
      }
    }
  }
}
