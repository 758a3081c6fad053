package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;

/** A season that has begun: what the journal holds is a fact, and the plan is of what is left. */
class PlanSoFarTest {
  private static final String HEAD = "id,line,corrects,date,";
  private static final LocalDate TODAY = LocalDate.parse("2027-05-26");

  @TempDir private Path dir;

  /** The demo book with a residual on ND-1 this season. */
  private DemoCopy sprayed(String date, String flumioxazinLbPerAcre) {
    return row(
        new DemoCopy(dir.resolve("book")),
        "A-27-001,1,,"
            + date
            + ",08:00,ND-1,2027,76.0,flumioxazin,D,"
            + flumioxazinLbPerAcre
            + ",lb ai/acre,M,soybean,pre,AMAPA,One,D-1,5,NW,60,");
  }

  /** Adds a row at the top of the journal; the order of rows means nothing. */
  private static DemoCopy row(DemoCopy copy, String row) {
    return copy.replaceAll("applications.csv", "(?m)^(" + HEAD + ".*)$", "$1\n" + row);
  }

  private static FieldPlan plan(Book book, LocalDate today) {
    return new Planner(book, PlanWishes.NONE, Effort.QUICK)
        .plan(book.findField("ND-1").orElseThrow(), today);
  }

  private static PlanWishes atMost(int passes) {
    return new PlanWishes(
        new TreeSet<>(),
        new TreeSet<>(),
        new TreeSet<>(),
        Optional.empty(),
        OptionalInt.of(passes));
  }

  @Test
  void everyProgramStartsFromWhatIsMadeAndChangesNothingBeforeToday() {
    Book book = sprayed("2027-05-12", "0.08").load();
    FieldPlan plan = plan(book, TODAY);

    assertThat(plan.programs()).isNotEmpty();
    for (PlannedProgram p : plan.programs()) {
      List<PassOutcome> passes = p.outcome().passes();
      assertThat(passes.get(0).made()).isTrue();
      assertThat(passes.get(0).planned()).isEqualTo(LocalDate.parse("2027-05-12"));
      assertThat(passes.get(0).missedYears()).isEmpty();
      assertThat(passes.subList(1, passes.size()))
          .allSatisfy(x -> assertThat(x.planned()).isAfterOrEqualTo(TODAY))
          .noneMatch(PassOutcome::made);
      assertThat(passes.size()).isLessThanOrEqualTo(book.house().maxPasses());
      assertThat(p.judgement().verdict()).isNotEqualTo(Verdict.BLOCKED);
      assertThat(p.judgement().findings())
          .noneMatch(f -> f.about().pass().isPresent() && f.about().pass().getAsInt() == 0);
      assertThat(p.outcome())
          .isEqualTo(SeasonWalk.walk(book, plan.traces(), p.outcome().program()));
    }
    assertThat(plan.programs().get(0).outcome().passes().size()).isGreaterThan(1);
    assertThat(plan.search().combined()).isPositive();
    assertThat(plan.search().gap()).isPresent();
  }

  @Test
  void whatComesNextLiesAWeekFromWhatIsMade() {
    FieldPlan plan = plan(sprayed("2027-05-24", "0.08").load(), TODAY);
    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs())
        .flatMap(p -> p.outcome().passes())
        .filteredOn(p -> !p.made())
        .isNotEmpty()
        .allMatch(p -> !p.planned().isBefore(LocalDate.parse("2027-05-31")));
  }

  /**
   * Ten times the rate is for the audit to find; it must not take every plan away. Caps are of the
   * season: what is used up is used up.
   */
  @Test
  void whatWasMadeAgainstALabelBlocksNoPlanAndCountsAgainstTheCaps() {
    FieldPlan plan = plan(sprayed("2027-05-12", "0.8").load(), TODAY);

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs().get(0).judgement().brokenHouseRules())
        .noneMatch(
            b ->
                b.name().equals(HouseRuleCheck.MIN_SOIL_SITES)
                    && b.pass().isPresent()
                    && b.pass().getAsInt() == 0);
    assertThat(plan.programs())
        .flatMap(p -> p.outcome().passes())
        .filteredOn(p -> !p.made())
        .flatMap(p -> p.mix().actives())
        .isNotEmpty()
        .noneMatch(a -> a.ingredient().id().value().equals("flumioxazin"));
  }

  @Test
  void whenNoDayIsLeftThePlanIsWhatWasMade() {
    FieldPlan plan = plan(sprayed("2027-05-12", "0.08").load(), LocalDate.parse("2027-09-20"));

    assertThat(plan.programs()).hasSize(1);
    assertThat(plan.programs().get(0).outcome().passes())
        .singleElement()
        .matches(PassOutcome::made);
  }

  @Test
  void whenNoDayIsLeftAndNothingIsMadeTheFieldIsRefusedWithTheReason() {
    FieldPlan plan = plan(new DemoCopy(dir.resolve("book")).load(), LocalDate.parse("2027-09-20"));

    assertThat(plan.programs()).isEmpty();
    assertThat(plan.refusal()).isPresent();
    assertThat(plan.search().leftOut().get(0)).contains("before today, 20 Sep 2027");
  }

  @Test
  void aProductWithoutAPriceLeavesTheReturnUnknownAndThePlanThere() {
    Book book =
        sprayed("2027-05-12", "0.08").replaceAll("prices.csv", "(?m)^flumioxazin.*\n", "").load();
    // One pass more than is made: how many there may be has no say in what is told of prices.
    FieldPlan plan = new Planner(book, atMost(2)).plan(book.findField("ND-1").orElseThrow(), TODAY);

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs().get(0).outcome().net()).isEmpty();
    assertThat(plan.programs().get(0).outcome().passes().size()).isGreaterThan(1);
  }

  @Test
  void aRowOfTomorrowIsNoFactYet() {
    Book book = sprayed("2027-05-27", "0.08").load();

    assertThat(SeasonSoFar.of(book, book.findField("ND-1").orElseThrow(), TODAY).isEmpty())
        .isTrue();
  }

  /** The demo program plans 11 May and 6 June. */
  @Test
  void aWrittenProgramStandsOnWhatIsMade() {
    Book book = sprayed("2027-05-14", "0.09").load();
    TraceSet traces = TraceBuilder.build(book, book.findField("ND-1").orElseThrow(), TODAY);
    SeasonSoFar soFar = SeasonSoFar.of(book, traces.field(), TODAY);
    Path folder = dir.resolve("book");
    Program written =
        ProgramReader.read(
            folder.resolve("programs/nd-1-two-layers.yaml"), new BookPaths(folder), book);

    SeasonSoFar.Standing onTime = soFar.standing(book, traces, written, TODAY);
    assertThat(onTime.origins()).containsExactly(0, 1);
    assertThat(onTime.program().passes().get(0)).isEqualTo(soFar.made().get(0));
    assertThat(onTime.program().passes().get(1)).isEqualTo(written.passes().get(1));
    assertThat(onTime.notes()).isEmpty();

    SeasonSoFar.Standing late =
        soFar.standing(book, traces, written, LocalDate.parse("2027-06-09"));
    assertThat(late.origins()).containsExactly(0, 1);
    assertThat(late.notes()).singleElement().asString().contains("taken to come on 9 Jun 2027");

    SeasonSoFar.Standing over =
        soFar.standing(book, traces, written, LocalDate.parse("2027-07-09"));
    assertThat(over.origins()).containsExactly(0);
    assertThat(over.notes()).singleElement().asString().contains("left out");
  }
}
