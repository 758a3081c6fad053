package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.audit.PassMatch.Fate;
import org.swathbook.audit.PassMatches.Due;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.audit.PlannedAndApplied.Kind;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.testing.DemoBook;

/** Programs beside the corn of ND-1 in the journal of 2026. */
class PlanAgainstJournalTest {
  private static final Book BOOK = DemoBook.BOOK;
  private static final LocalDate DAY = LocalDate.of(2026, 5, 10);

  private static List<Application> rows() {
    return BOOK.journal().of(BOOK.findField("ND-1").orElseThrow().id()).stream()
        .filter(a -> a.season() == 2026)
        .toList();
  }

  private static Map<LocalDate, List<Dose>> byDate() {
    return rows().stream()
        .collect(
            Collectors.groupingBy(
                Application::date,
                java.util.TreeMap::new,
                Collectors.mapping(Application::dose, Collectors.toList())));
  }

  private static PlannedAndApplied compared(List<Pass> passes) {
    Program program = new Program("As agreed", BOOK.findField("ND-1").orElseThrow().id(), passes);
    return PlanAgainstJournal.of(BOOK, 2026, program).compared().orElseThrow();
  }

  private static Dose dose(String active, double times) {
    Dose d =
        BOOK.journal().applications().stream()
            .map(Application::dose)
            .filter(x -> x.actives().get(0).ingredient().id().value().equals(active))
            .findFirst()
            .orElseThrow();
    return new Dose(
        d.product(),
        d.rate(),
        d.actives().stream()
            .map(
                a ->
                    new org.swathbook.program.ActiveDose(
                        a.ingredient(),
                        org.swathbook.program.Doses.activeRate(
                            a.kgPerHa() * times, a.ingredient().rateBasis())))
            .toList(),
        d.named());
  }

  private static List<PassMatch> matches(int daysLater, double times, String... made) {
    List<Dose> doses = new ArrayList<>();
    for (String m : made) {
      doses.add(dose(m, times));
    }
    return PassMatches.of(
        List.of(new Due(DAY, Mix.of(List.of(dose("atrazine", 1), dose("acetochlor", 1))))),
        List.of(new Made("A", DAY.plusDays(daysLater), Mix.of(doses))),
        3);
  }

  /** The house's queue is three days; a month is 31. */
  @ParameterizedTest
  @CsvSource({"0,ON_TIME", "3,ON_TIME", "-3,ON_TIME", "4,LATE", "-4,EARLY", "31,LATE"})
  void aPassIsOnTimeWithinTheQueue(int daysLater, Fate fate) {
    PassMatch m = matches(daysLater, 1, "atrazine", "acetochlor").get(0);
    assertThat(m.fate()).isEqualTo(fate);
    assertThat(m.days()).isEqualTo(daysLater);
    assertThat(m.leftOut()).isEmpty();
    assertThat(m.added()).isEmpty();
    assertThat(m.rates()).isEmpty();
  }

  @Test
  void longAfterItsDayItIsAnotherPass() {
    assertThat(matches(32, 1, "atrazine", "acetochlor"))
        .extracting(PassMatch::fate)
        .containsExactly(Fate.LEFT_OUT, Fate.ADDED);
  }

  @Test
  void nothingInCommonIsAnotherPass() {
    assertThat(matches(0, 1, "glyphosate"))
        .extracting(PassMatch::fate)
        .containsExactlyInAnyOrder(Fate.LEFT_OUT, Fate.ADDED);
  }

  @Test
  void whatDiffersIsNamed() {
    PassMatch m = matches(1, 1, "atrazine", "glyphosate").get(0);
    assertThat(m.leftOut()).containsExactly("acetochlor");
    assertThat(m.added()).containsExactly("glyphosate");
    assertThat(matches(1, 1.05, "atrazine", "acetochlor").get(0).rates()).isEmpty();
    assertThat(matches(1, 1.06, "atrazine", "acetochlor").get(0).rates())
        .hasSize(2)
        .allSatisfy(r -> assertThat(r).contains(" where ").contains("was planned"));
  }

  /** A program that is what was sprayed has nothing late, left out or added. */
  @Test
  void whatWasMadeAsPlannedIsOnTime() {
    List<Pass> passes = new ArrayList<>();
    byDate().forEach((d, doses) -> passes.add(new Pass(new Anchor.OnDate(d), Mix.of(doses))));
    PlannedAndApplied c = compared(passes);
    assertThat(c.passes())
        .hasSize(passes.size())
        .allSatisfy(
            p -> {
              assertThat(p.fate()).isEqualTo(Fate.ON_TIME);
              assertThat(p.leftOut()).isEmpty();
              assertThat(p.added()).isEmpty();
            });
    Account planned = account(c, Kind.PLANNED);
    Account sprayed = account(c, Kind.SPRAYED);
    assertThat(planned.cost()).isEqualTo(sprayed.cost());
    assertThat(planned.weeds().get(0).controlPct())
        .isCloseTo(
            sprayed.weeds().get(0).controlPct(), org.assertj.core.api.Assertions.within(2.0));
  }

  /** Weather of 2026 was not known in the winter before it: nine of the ten years are. */
  @Test
  void thePromiseKnowsNothingOfItsOwnSeason() {
    PlannedAndApplied c =
        compared(
            List.of(new Pass(new Anchor.FromPlanting(0), Mix.of(List.of(dose("acetochlor", 1))))));
    assertThat(account(c, Kind.PROMISED).years()).isEqualTo(9);
    assertThat(account(c, Kind.SPRAYED).years()).isEqualTo(1);
    // Corn of 2026 is priced; the field grows soybeans in the book's own season.
    assertThat(account(c, Kind.SPRAYED).net()).isPresent();
  }

  /** The walk of the audit and the account of what was sprayed are the same walk. */
  @Test
  void asSprayedIsTheAuditsOwnFigure() {
    PlannedAndApplied c = compared(List.of());
    SeasonSites audited =
        SiteAudit.of(BOOK, List.of(BOOK.findField("ND-1").orElseThrow())).ranked().stream()
            .map(RankedSites::sites)
            .filter(s -> s.season() == 2026)
            .findFirst()
            .orElseThrow();
    assertThat(account(c, Kind.SPRAYED).weeds().get(0).controlPct())
        .isEqualTo(audited.dependence().orElseThrow().controlPct());
    assertThat(c.passes()).allSatisfy(p -> assertThat(p.fate()).isEqualTo(Fate.ADDED));
  }

  private static Account account(PlannedAndApplied c, Kind kind) {
    return c.accounts().stream().filter(a -> a.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void aSeasonWithoutItsWeatherIsNotCompared() {
    Program program = new Program("x", BOOK.findField("ND-1").orElseThrow().id(), List.of());
    PlanAgainstJournal.Result r = PlanAgainstJournal.of(BOOK, 2027, program);
    assertThat(r.compared()).isEmpty();
    assertThat(r.why()).first().asString().contains("no full weather of that season");
    assertThat(PlanAgainstJournal.of(BOOK, 2019, program).why().get(0))
        .contains("seasons.csv has no row of ND-1 in 2019");
  }
}
