package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;

/**
 * A plan follows its book: change a planting date, a resistance, a residual, a trait, and it
 * changes as an adviser would expect. What to expect is common practice, no source.
 */
class PlanChangesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final WeedId PALMER = WeedId.of("AMAPA");

  /** The plan of the unchanged book, made once. */
  private static FieldPlan unchanged;

  @TempDir private Path dir;

  @BeforeAll
  static void planTheUnchangedBook(@TempDir Path folder) {
    unchanged = plan(new DemoCopy(folder.resolve("book")), "ND-1");
  }

  private static FieldPlan plan(DemoCopy copy, String field) {
    var book = copy.load();
    return quick(book).plan(book.findField(field).orElseThrow(), TODAY);
  }

  /** What changes in a book moves the plan of a first look as much as that of a long one. */
  private static Planner quick(Book book) {
    return new Planner(book, PlanWishes.NONE, Effort.QUICK);
  }

  private static SeasonOutcome first(FieldPlan plan) {
    return plan.programs().get(0).outcome();
  }

  private static Set<String> actives(SeasonOutcome season, Predicate<PassOutcome> passes) {
    Set<String> out = new TreeSet<>();
    season.passes().stream()
        .filter(passes)
        .flatMap(p -> p.mix().actives().stream())
        .forEach(a -> out.add(a.ingredient().id().value()));
    return out;
  }

  @Test
  void aFieldPlantedLaterIsSprayedLater() {
    FieldPlan early = unchanged;
    DemoCopy copy = new DemoCopy(dir);
    copy.change("fields.csv", "15 in,2027-05-11,2027-10-01", "15 in,2027-06-05,2027-10-15");
    FieldPlan late = plan(copy, "ND-1");

    PassOutcome before = lastBeforeCrop(first(early));
    PassOutcome after = lastBeforeCrop(first(late));
    assertThat(after.planned()).isAfterOrEqualTo(before.planned().plusDays(14));
    assertThat(standingAtPlanting(late)).isGreaterThan(2 * standingAtPlanting(early));
    assertThat(first(late).passes())
        .filteredOn(p -> !p.planned().isAfter(LocalDate.of(2027, 6, 8)))
        .as(
            "with more weeds up, something that takes them through their leaves goes on before the crop")
        .anyMatch(p -> palmer(p).stands() && palmer(p).effectiveFoliarSites() >= 1);
  }

  private static PassWeed palmer(PassOutcome pass) {
    return pass.weeds().stream().filter(w -> w.weed().equals(PALMER)).findFirst().orElseThrow();
  }

  /** The last pass that goes on before the crop is up. */
  private static PassOutcome lastBeforeCrop(SeasonOutcome season) {
    return season.passes().stream()
        .filter(p -> p.daysAfterPlanting() <= 3)
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  /** Palmer amaranth up when the planter comes, untreated: what a burndown has to deal with. */
  private static double standingAtPlanting(FieldPlan plan) {
    var cohorts = plan.traces().years().get(0).cohorts(0);
    double sum = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      if (cohorts.emergedOn(c) < plan.traces().years().get(0).plantingDay()) {
        sum += cohorts.perM2(c);
      }
    }
    return sum;
  }

  @Test
  void aResistedSiteIsNoLongerReliedOn() {
    DemoCopy copy =
        new DemoCopy(dir)
            .change(
                "weeds.csv", "ND-1,AMAPA,80 /m2,yes,2;9,90 %", "ND-1,AMAPA,80 /m2,yes,2;9;14,90 %");
    FieldPlan plan = plan(copy, "ND-1");

    assertThat(plan.programs()).isNotEmpty();
    for (PlannedProgram p : plan.programs()) {
      for (PassOutcome pass : p.outcome().passes()) {
        List<Site> counted =
            pass.weeds().stream()
                .filter(w -> w.weed().equals(PALMER))
                .flatMap(w -> Stream.concat(w.foliar().stream(), w.soil().stream()))
                .filter(SiteControl::effective)
                .map(SiteControl::site)
                .toList();
        assertThat(counted).doesNotContain(new Site(2), new Site(9), new Site(14));
      }
    }
    FieldPlan before = unchanged;
    assertThat(first(before).weed(PALMER).survivorsPerAcre())
        .isLessThan(first(plan).weed(PALMER).survivorsPerAcre() * 3);
    assertThat(actives(first(plan), p -> true)).isNotEqualTo(actives(first(before), p -> true));
  }

  @Test
  void aResidualThatFadesSoonerCoversLess() {
    DemoCopy copy = new DemoCopy(dir);
    SeasonOutcome before = first(unchanged);
    String active = longestResidual(before);
    String entry = "ingredients/" + active + ".yaml";
    copy.changeCatalog(entry, "format:", "format:");
    copy.replaceAll("catalog/" + entry, "(residual: \\{at: [^,}]*, days: )[0-9-]+", "$18");
    copy.replaceAll("catalog/" + entry, "(residualHigh: \\{at: [^,}]*, days: )[0-9-]+", "$19");
    Book changed = copy.load();
    FieldPlan after = quick(changed).plan(changed.findField("ND-1").orElseThrow(), TODAY);
    SeasonOutcome oldProgram = SeasonWalk.walk(changed, after.traces(), readAnew(before, changed));

    assertThat(oldProgram.net().orElseThrow()).isLessThan(before.net().orElseThrow());
    assertThat(oldProgram.weed(PALMER).controlPct()).isLessThan(before.weed(PALMER).controlPct());
    assertThat(doses(first(after))).isNotEqualTo(doses(before));
    assertThat(first(after).net().orElseThrow()).isGreaterThan(oldProgram.net().orElseThrow());
  }

  /** The same program with the ingredients of another catalog. */
  private static Program readAnew(SeasonOutcome season, Book book) {
    return new Program(
        "as before",
        season.program().field(),
        season.program().passes().stream()
            .map(
                p ->
                    new Pass(
                        p.at(),
                        Mix.of(
                            p.mix().doses().stream()
                                .map(
                                    d ->
                                        Doses.ofProduct(
                                            book.catalog(),
                                            book.catalog().product(d.product().id()),
                                            d.rate()))
                                .toList())))
            .toList());
  }

  private static String longestResidual(SeasonOutcome season) {
    return season.passes().stream()
        .flatMap(p -> p.mix().actives().stream())
        .filter(a -> a.ingredient().hasSoilActivity())
        .max(
            Comparator.comparingInt(
                    (ActiveDose a) -> a.ingredient().residual().find().orElseThrow().highDays())
                .thenComparing(a -> a.ingredient().id()))
        .orElseThrow()
        .ingredient()
        .id()
        .value();
  }

  private static List<String> doses(SeasonOutcome season) {
    return season.passes().stream()
        .flatMap(
            p ->
                p.mix().doses().stream()
                    .map(d -> p.planned() + " " + d.product().id() + " " + d.rate()))
        .toList();
  }

  @Test
  void withoutTheTraitNothingThatNeedsItIsSprayedOverTheCrop() {
    FieldPlan with = unchanged;
    FieldPlan without =
        plan(
            new DemoCopy(dir)
                .change("fields.csv", "soybean,2-4-D;glufosinate;glyphosate,62", "soybean,none,62"),
            "ND-1");

    assertThat(without.programs()).isNotEmpty();
    for (PlannedProgram p : without.programs()) {
      assertThat(actives(p.outcome(), x -> x.daysAfterPlanting() > 14))
          .doesNotContain("2-4-d-choline", "glufosinate-ammonium", "glyphosate");
    }
    Set<String> needTrait = Set.of("2-4-d-choline", "glufosinate-ammonium", "glyphosate");
    assertThat(with.programs())
        .anyMatch(
            p ->
                actives(p.outcome(), x -> x.daysAfterPlanting() > 14).stream()
                    .anyMatch(needTrait::contains));
    assertThat(first(without).net().orElseThrow())
        .isLessThanOrEqualTo(first(with).net().orElseThrow());
  }

  @Test
  void aCropThatTheJournalForbidsIsRefusedWithTheReason() {
    FieldPlan plan = plan(new DemoCopy(dir), "QH-4");

    assertThat(plan.programs()).isEmpty();
    assertThat(plan.refusal().orElseThrow().because())
        .anySatisfy(
            f -> {
              assertThat(f.rule().value()).isEqualTo("next-crop-interval");
              assertThat(f.message()).containsIgnoringCase("nicosulfuron").contains("18 months");
            });
  }

  @Test
  void everyProgramIsLegalAndTheFirstIsTheBest() {
    FieldPlan plan = unchanged;

    assertThat(plan.programs().size()).isGreaterThanOrEqualTo(3);
    assertThat(plan.programs()).allMatch(p -> p.judgement().verdict() != Verdict.BLOCKED);
    assertThat(plan.programs().stream().filter(PlannedProgram::recommended)).hasSize(1);
    assertThat(plan.programs().get(0).recommended()).isTrue();
    assertThat(plan.programs().get(0).judgement().brokenHouseRules()).isEmpty();
    assertThat(plan.programs())
        .filteredOn(p -> p.judgement().brokenHouseRules().isEmpty())
        .allMatch(
            p -> p.outcome().net().orElseThrow().compareTo(first(plan).net().orElseThrow()) <= 0);
    assertThat(plan.search().combined()).isBetween(1, 100);
    assertThat(plan.programs().stream().map(PlannedProgram::name)).doesNotHaveDuplicates();
    assertThat(plan.programs().stream().flatMap(p -> p.outcome().passes().stream()))
        .allMatch(p -> p.mix().doses().size() <= 4);
    assertThat(plan.programs()).allMatch(p -> p.outcome().passes().size() <= 4);
  }
}
