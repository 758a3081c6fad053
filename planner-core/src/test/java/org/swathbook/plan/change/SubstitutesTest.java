package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DayDoses;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/** What goes into one pass of several with the very same tank, under three weather years. */
class SubstitutesTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final LocalDate FIRST = LocalDate.of(2027, 6, 1);
  private static final LocalDate SECOND = LocalDate.of(2027, 6, 12);

  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow(), TODAY);

  private static Mix tank() {
    List<Dose> full =
        DayDoses.of(BOOK, TRACES).byActive().stream().map(all -> all.get(0)).limit(2).toList();
    return Mix.of(full);
  }

  private static Substitutes twice(Mix tank) {
    Program program =
        new Program(
            "twice",
            TRACES.field().id(),
            List.of(
                new Pass(new Anchor.OnDate(FIRST), tank),
                new Pass(new Anchor.OnDate(SECOND), tank)));
    SeasonOutcome now = SeasonWalk.walk(BOOK, TRACES, program);
    assertThat(now.passes()).extracting(PassOutcome::planned).containsExactly(FIRST, SECOND);
    return new Substitutes(BOOK, TRACES, now, TODAY);
  }

  @Test
  void onlyThePassThatIsAskedAboutGoesWithoutTheProduct() {
    Mix tank = tank();
    ProductId gone = tank.doses().get(0).product().id();
    Mix less = Mix.of(List.of(tank.doses().get(1)));
    Substitutes substitutes = twice(tank);
    assertThat(substitutes.without(FIRST, gone).passes())
        .extracting(Pass::mix)
        .containsExactly(less, tank);
    assertThat(substitutes.without(SECOND, gone).passes())
        .extracting(Pass::mix)
        .containsExactly(tank, less);
  }

  private static Dose dose(String active) {
    return DayDoses.of(BOOK, TRACES).byActive().stream()
        .map(all -> all.get(all.size() - 1))
        .filter(d -> d.actives().get(0).ingredient().name().equals(active))
        .findFirst()
        .orElseThrow();
  }

  /** What a dose that was put in does itself to Palmer amaranth, percent. */
  private static double ownPct(SeasonOutcome season, LocalDate planned, Dose dose) {
    return season.passes().stream()
        .filter(p -> p.planned().equals(planned))
        .flatMap(p -> p.weeds().stream())
        .filter(w -> w.weed().value().equals("AMAPA"))
        .flatMap(w -> w.foliar().stream())
        .filter(s -> s.best().equals(dose.actives().get(0).ingredient().id()))
        .mapToDouble(SiteControl::controlPct)
        .max()
        .orElse(0);
  }

  /**
   * Contact herbicides do next to nothing to Palmer amaranth a foot tall (labels: up to 3 or 4 in),
   * so that fomesafen or acifluorfen is no answer to glufosinate there: common practice, no source.
   */
  @Test
  void whatItselfDoesNothingAtThatHeightIsNoSubstitute() {
    Dose gone = dose("glufosinate-ammonium");
    Substitutes substitutes = twice(Mix.of(List.of(dose("2,4-D choline"), gone)));
    OwnWork failing = substitutes.failing(SECOND, gone).orElseThrow();
    assertThat(failing.pct()).isLessThan(50);
    assertThat(failing.words()).contains("Palmer amaranth", "earlier pass");
    assertThat(substitutes.of(SECOND, gone.product().id()))
        .allSatisfy(
            c ->
                assertThat(ownPct(c.outcome(), SECOND, c.change().in().get(0)))
                    .as(c.change().in().get(0).product().id().value())
                    .isGreaterThanOrEqualTo(failing.pct()));
  }

  /** Small plants: whatever is offered does half of them at least, as glufosinate did. */
  @Test
  void inThePlaceOfWhatWorksComesWhatWorks() {
    LocalDate early = TRACES.field().plantDate().plusDays(5);
    Dose gone = dose("glufosinate-ammonium");
    Program program =
        new Program(
            "early",
            TRACES.field().id(),
            List.of(new Pass(new Anchor.OnDate(early), Mix.of(List.of(gone)))));
    SeasonOutcome now = SeasonWalk.walk(BOOK, TRACES, program);
    double own = ownPct(now, early, gone);
    Substitutes substitutes = new Substitutes(BOOK, TRACES, now, TODAY);
    assertThat(substitutes.failing(early, gone).isPresent()).isEqualTo(own < 50);
    assertThat(substitutes.of(early, gone.product().id()))
        .isNotEmpty()
        .allSatisfy(
            c ->
                assertThat(ownPct(c.outcome(), early, c.change().in().get(0)))
                    .isGreaterThanOrEqualTo(Math.min(50, own)));
  }

  @Test
  void aPassWithoutTheProductIsAMistakeOfTheCaller() {
    Mix tank = tank();
    Substitutes substitutes = twice(Mix.of(List.of(tank.doses().get(1))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> substitutes.without(FIRST, tank.doses().get(0).product().id()))
        .withMessageContaining("2027-06-01");
  }

  private static Dose dose(TraceSet of, String product) {
    return DayDoses.of(BOOK, of).byActive().stream()
        .flatMap(List::stream)
        .filter(d -> d.product().id().equals(ProductId.of(product)))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Legal ones alone, in their order, each in that place, and of them those that give back half of
   * what the weeds lose that lose most. Acetochlor is sold in two formulations.
   */
  @ParameterizedTest
  @ValueSource(strings = {"acetochlor-6.4ec", "atrazine-4sc"})
  void whatIsNamedDoesTheWorkOfTheProduct(String product) {
    TraceSet corn = TraceBuilder.build(BOOK, BOOK.findField("ND-2").orElseThrow(), TODAY);
    Mix tank = Mix.of(List.of(dose(corn, "acetochlor-6.4ec"), dose(corn, "atrazine-4sc")));
    Pass pass = new Pass(new Anchor.FromPlanting(0), tank);
    SeasonOutcome now =
        SeasonWalk.walk(BOOK, corn, new Program("one", corn.field().id(), List.of(pass)));
    Dose gone = dose(corn, product);
    Substitutes substitutes = new Substitutes(BOOK, corn, now, TODAY);
    LocalDate planned = now.passes().get(0).planned();
    Program less = substitutes.without(planned, gone.product().id());
    SeasonOutcome without = SeasonWalk.walk(BOOK, corn, less);
    double most = now.weeds().stream().mapToDouble(w -> lost(w, without)).max().orElseThrow();

    List<JudgedChange> all = substitutes.of(planned, gone.product().id());

    assertThat(all).hasSize(3);
    assertThat(all)
        .extracting(c -> c.change().in().get(0).product().id())
        .doesNotHaveDuplicates()
        .doesNotContain(gone.product().id());
    for (JudgedChange c : all) {
      assertThat(c.change().kind()).isEqualTo(SingleChange.Kind.EXCHANGE_PRODUCT);
      assertThat(c.change().pass()).isEqualTo(planned);
      assertThat(c.change().out()).contains(gone);
      assertThat(c.judgement().verdict()).isNotEqualTo(Verdict.BLOCKED);
      assertThat(c.outcome()).isEqualTo(SeasonWalk.walk(BOOK, corn, c.change().program()));
      assertThat(c.net()).contains(c.outcome().net().orElseThrow().minus(now.net().orElseThrow()));
      assertThat(now.weeds())
          .filteredOn(w -> lost(w, without) >= most / 2)
          .isNotEmpty()
          .allMatch(w -> lost(w, c.outcome()) <= Math.max(0.1, lost(w, without) / 2));
    }
    assertThat(all)
        .isSortedAccordingTo(
            Comparator.comparing((JudgedChange c) -> !isSameActive(c, gone))
                .thenComparing(c -> c.breaks().size())
                .thenComparing(c -> Substitutes.warnings(c).size())
                .thenComparing(c -> c.net().orElseThrow(), Comparator.reverseOrder()));
    assertThat(isSameActive(all.get(0), gone)).isEqualTo(product.startsWith("acetochlor"));
    assertThat(all)
        .as("all that break nothing are among them")
        .filteredOn(c -> c.breaks().isEmpty())
        .hasSize(product.startsWith("acetochlor") ? 3 : 2);
  }

  private static boolean isSameActive(JudgedChange change, Dose gone) {
    return actives(change.change().in().get(0)).equals(actives(gone));
  }

  private static Set<IngredientId> actives(Dose dose) {
    return dose.actives().stream().map(a -> a.ingredient().id()).collect(Collectors.toSet());
  }

  /** Percent points of control of a weed. */
  private static double lost(WeedOutcome now, SeasonOutcome then) {
    return now.controlPct() - then.weed(now.pressure().weed().id()).controlPct();
  }
}
