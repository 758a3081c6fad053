package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.change.SingleChange.Kind.ADD_PASS;
import static org.swathbook.plan.change.SingleChange.Kind.ADD_PRODUCT;
import static org.swathbook.plan.change.SingleChange.Kind.EXCHANGE_PRODUCT;
import static org.swathbook.plan.change.SingleChange.Kind.LEAVE_OUT_PASS;
import static org.swathbook.plan.change.SingleChange.Kind.LEAVE_OUT_PRODUCT;
import static org.swathbook.plan.change.SingleChange.Kind.LOWER_RATE;
import static org.swathbook.plan.change.SingleChange.Kind.MOVE_PASS;
import static org.swathbook.plan.change.SingleChange.Kind.RAISE_RATE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.Restated;

/**
 * All changes of one step to soybean of 11 May with one post on 5 June, named one by one. Seven
 * doses are at hand, all labelled over soybean then but flumioxazin, which is over at emergence.
 */
class ChangeMakerTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow());
  private static final List<DoseOption> ALL = OptionMaker.make(BOOK, TRACES.field()).options();
  private static final StandingPasses PASSES = new StandingPasses(BOOK, Kernel.of(BOOK, TRACES));

  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);
  private static final LocalDate POST = LocalDate.of(2027, 6, 5);

  private static final DoseOption GLUFOSINATE_29 = option("glufosinate-ammonium", 29);
  private static final DoseOption GLUFOSINATE_32 = option("glufosinate-ammonium", 32);
  private static final DoseOption GLUFOSINATE_36 = option("glufosinate-ammonium", 36);
  private static final DoseOption CLETHODIM = option("clethodim", 16);
  private static final DoseOption CHOLINE = option("2-4-d-choline", 2);
  private static final DoseOption METOLACHLOR = option("s-metolachlor", 1.3);
  private static final DoseOption FLUMIOXAZIN = option("flumioxazin", 3);
  private static final List<DoseOption> OPTIONS =
      List.of(
          GLUFOSINATE_29,
          GLUFOSINATE_32,
          GLUFOSINATE_36,
          CLETHODIM,
          CHOLINE,
          METOLACHLOR,
          FLUMIOXAZIN);

  private static DoseOption option(String active, double amount) {
    return ALL.stream()
        .filter(o -> o.ingredient().value().equals(active))
        .filter(o -> o.dose().rate().amount() == amount)
        .findFirst()
        .orElseThrow();
  }

  private static Pass pass(LocalDate date, DoseOption... tank) {
    return new Pass(
        new Anchor.OnDate(date), Mix.of(Arrays.stream(tank).map(DoseOption::dose).toList()));
  }

  private static Program program(Pass... passes) {
    return new Program("one", TRACES.field().id(), List.of(passes));
  }

  private static ChangeTerms keeping(LocalDate from) {
    return ChangeTerms.keeping(from, PlanWishes.NONE);
  }

  private static ChangeTerms helping() {
    return ChangeTerms.helping(WINTER, List.of(), Money.ZERO);
  }

  private static ChangeMaker maker(Book book, Program program, ChangeTerms terms) {
    return ChangeMaker.of(book, TRACES, program, PASSES, terms, OPTIONS, WINTER);
  }

  /** As {@code raise-rate glufosinate-ammonium 32 -> glufosinate-ammonium 36}. */
  private static List<String> said(List<SingleChange> all, SingleChange.Kind... kinds) {
    return all.stream()
        .filter(c -> List.of(kinds).contains(c.kind()))
        .map(
            c ->
                c.kind().word()
                    + c.out().map(d -> " " + dose(d)).orElse("")
                    + (c.in().isEmpty() ? "" : " -> " + dose(c.in().get(0))))
        .toList();
  }

  private static String dose(Dose d) {
    return d.actives().get(0).ingredient().id() + " " + d.rate().amount();
  }

  private static final SingleChange.Kind[] OF_A_TANK = {
    LEAVE_OUT_PRODUCT, EXCHANGE_PRODUCT, RAISE_RATE, LOWER_RATE, ADD_PRODUCT
  };

  /** Neither glufosinate nor 2,4-D goes with clethodim there. */
  @Test
  void aTankHasOneRateOrProductMoreLessOrAnother() {
    Program program = program(pass(POST, GLUFOSINATE_32, METOLACHLOR));
    assertThat(said(maker(BOOK, program, keeping(WINTER)).ofPasses(), OF_A_TANK))
        .containsExactlyInAnyOrder(
            "leave-out-product glufosinate-ammonium 32.0",
            "leave-out-product s-metolachlor 1.3",
            "lower-rate glufosinate-ammonium 32.0 -> glufosinate-ammonium 29.0",
            "raise-rate glufosinate-ammonium 32.0 -> glufosinate-ammonium 36.0",
            "exchange-product glufosinate-ammonium 32.0 -> 2-4-d-choline 2.0",
            "exchange-product glufosinate-ammonium 32.0 -> clethodim 16.0",
            "exchange-product s-metolachlor 1.3 -> 2-4-d-choline 2.0",
            "add-product -> 2-4-d-choline 2.0");
    assertThat(said(maker(BOOK, program, helping()).ofPasses(), OF_A_TANK))
        .as("nothing is taken that may help")
        .hasSize(7)
        .noneMatch(s -> s.startsWith("lower-rate"));
  }

  /** The last product goes with its pass, and a full tank takes no other. */
  @Test
  void aTankKeepsItsLastProductAndHoldsNoMoreThanTheHouseSays() {
    Program program = program(pass(POST, METOLACHLOR));
    assertThat(said(maker(BOOK, program, keeping(WINTER)).ofPasses(), OF_A_TANK))
        .containsExactlyInAnyOrder(
            "exchange-product s-metolachlor 1.3 -> glufosinate-ammonium 29.0",
            "exchange-product s-metolachlor 1.3 -> glufosinate-ammonium 32.0",
            "exchange-product s-metolachlor 1.3 -> glufosinate-ammonium 36.0",
            "exchange-product s-metolachlor 1.3 -> 2-4-d-choline 2.0",
            "exchange-product s-metolachlor 1.3 -> clethodim 16.0",
            "add-product -> glufosinate-ammonium 29.0",
            "add-product -> glufosinate-ammonium 32.0",
            "add-product -> glufosinate-ammonium 36.0",
            "add-product -> clethodim 16.0",
            "add-product -> 2-4-d-choline 2.0");
    assertThat(
            said(maker(house("maxProducts", 1), program, keeping(WINTER)).ofPasses(), ADD_PRODUCT))
        .isEmpty();
    assertThat(
            said(maker(house("maxProducts", 2), program, keeping(WINTER)).ofPasses(), ADD_PRODUCT))
        .hasSize(5);
  }

  private static Book house(String rule, int value) {
    return BookParts.of(BOOK).house(Restated.with(BOOK.house(), rule, value)).whole();
  }

  /** The changed tank stands in the place of the old one; what else is in it stays. */
  @Test
  void aChangedTankIsThatOfItsPassAlone() {
    Pass early = pass(LocalDate.of(2027, 5, 30), CLETHODIM);
    Adjuvant sulfate = new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal");
    Pass post =
        new Pass(
            new Anchor.OnDate(POST),
            new Mix(List.of(GLUFOSINATE_32.dose()), List.of(sulfate), OptionalDouble.of(20)));
    SingleChange raised =
        maker(BOOK, program(early, post), keeping(WINTER)).ofPasses().stream()
            .filter(c -> c.kind() == RAISE_RATE)
            .findFirst()
            .orElseThrow();
    assertThat(raised.pass()).isEqualTo(POST);
    assertThat(raised.program().passes().get(0)).isEqualTo(early);
    assertThat(raised.program().passes().get(1).mix())
        .isEqualTo(
            new Mix(List.of(GLUFOSINATE_36.dose()), List.of(sulfate), OptionalDouble.of(20)));
    assertThat(raised.program().passes()).hasSize(2);
  }

  private static List<LocalDate> movedTo(Program program, ChangeTerms terms) {
    return movedTo(BOOK, program, terms);
  }

  private static List<LocalDate> movedTo(Book book, Program program, ChangeTerms terms) {
    return maker(book, program, terms).ofPasses().stream()
        .filter(c -> c.kind() == MOVE_PASS && c.pass().equals(POST))
        .map(c -> c.movedTo().orElseThrow())
        .toList();
  }

  /** One and two days and so many steps of three, not before the first day and not on a pass. */
  @Test
  void aPassMovesByDaysAndHouseSteps() {
    Program program = program(pass(POST, CLETHODIM));
    assertThat(movedTo(program, helping()))
        .containsExactlyInAnyOrderElementsOf(around(POST, 1, 2, 3, 6, 9, 12));
    assertThat(movedTo(program, keeping(WINTER)))
        .containsExactlyInAnyOrderElementsOf(around(POST, 1, 2, 3, 6, 9, 12, 15, 18, 21));
    assertThat(movedTo(program, keeping(LocalDate.of(2027, 6, 3))))
        .hasSize(11)
        .contains(LocalDate.of(2027, 6, 3))
        .doesNotContain(LocalDate.of(2027, 6, 2));
    Pass later = pass(POST.plusDays(3), GLUFOSINATE_32);
    Program near = program(pass(POST, CLETHODIM), later);
    assertThat(movedTo(house("minDaysBetweenPasses", 0), near, helping()))
        .hasSize(11)
        .doesNotContain(POST.plusDays(3));
    SingleChange moved =
        maker(BOOK, program, helping()).ofPasses().stream()
            .filter(c -> c.kind() == MOVE_PASS)
            .findFirst()
            .orElseThrow();
    assertThat(moved.program().passes())
        .containsExactly(pass(moved.movedTo().orElseThrow(), CLETHODIM));
  }

  /** The house asks for a week: what was written nearer may part, and comes no nearer. */
  @Test
  void aPassMovesNoNearerToAnotherThanTheHouseLetsIt() {
    Pass far = pass(POST.plusDays(14), GLUFOSINATE_32);
    assertThat(movedTo(program(pass(POST, CLETHODIM), far), helping()))
        .containsExactlyInAnyOrderElementsOf(plus(POST, -12, -9, -6, -3, -2, -1, 1, 2, 3, 6));
    Pass near = pass(POST.plusDays(3), GLUFOSINATE_32);
    assertThat(movedTo(program(pass(POST, CLETHODIM), near), helping()))
        .containsExactlyInAnyOrderElementsOf(plus(POST, -12, -9, -6, -3, -2, -1, 6, 9, 12));
    Pass made = new Pass(new Anchor.Made(POST.minusDays(7)), far.mix());
    assertThat(movedTo(program(made, pass(POST, CLETHODIM)), helping()))
        .containsExactlyInAnyOrderElementsOf(plus(POST, 1, 2, 3, 6, 9, 12));
  }

  private static List<LocalDate> plus(LocalDate date, int... days) {
    return Arrays.stream(days).mapToObj(date::plusDays).toList();
  }

  private static List<LocalDate> around(LocalDate date, int... days) {
    List<LocalDate> out = new ArrayList<>();
    for (int d : days) {
      out.add(date.minusDays(d));
      out.add(date.plusDays(d));
    }
    return out;
  }

  /** Flumioxazin goes out up to three days after planting: no such tank moves beyond. */
  @Test
  void aPassMovesToWhereItsLabelsLetIt() {
    LocalDate planting = TRACES.field().plantDate();
    Program program = program(pass(planting, FLUMIOXAZIN));
    assertThat(maker(BOOK, program, helping()).ofPasses())
        .filteredOn(c -> c.kind() == MOVE_PASS)
        .extracting(c -> c.movedTo().orElseThrow())
        .contains(planting.minusDays(12))
        .allMatch(d -> d.isBefore(planting.plusDays(4)));
  }

  @Test
  void whatIsPastOrMadeStays() {
    Pass post = pass(POST, GLUFOSINATE_32, CLETHODIM);
    assertThat(maker(BOOK, program(post), keeping(POST)).ofPasses()).isNotEmpty();
    assertThat(maker(BOOK, program(post), keeping(POST.plusDays(1))).ofPasses()).isEmpty();
    Pass made = new Pass(new Anchor.Made(POST), post.mix());
    assertThat(maker(BOOK, program(made), keeping(WINTER)).ofPasses()).isEmpty();
  }

  @Test
  void aPassIsLeftOutWhereThatIsAllowed() {
    Pass early = pass(LocalDate.of(2027, 5, 30), CLETHODIM);
    Program program = program(early, pass(POST, GLUFOSINATE_32));
    List<SingleChange> gone =
        maker(BOOK, program, keeping(WINTER)).ofPasses().stream()
            .filter(c -> c.kind() == LEAVE_OUT_PASS)
            .toList();
    assertThat(gone).extracting(c -> c.program().passes().size()).containsExactly(1, 1);
    assertThat(gone.get(1).program().passes()).containsExactly(early);
    assertThat(maker(BOOK, program, helping()).ofPasses())
        .noneMatch(c -> c.kind() == LEAVE_OUT_PASS);
  }

  /** Every second house step from the first day that may change: the grid begins on 11 April. */
  @Test
  void aPassIsAddedOnEverySixthDayThatHasNone() {
    Program post = program(pass(POST, CLETHODIM));
    ChangeTerms terms = keeping(POST.minusDays(6));
    assertThat(maker(house("minDaysBetweenPasses", 6), post, terms).openDates())
        .startsWith(POST.minusDays(6), POST.plusDays(6), POST.plusDays(12))
        .endsWith(LocalDate.of(2027, 7, 11))
        .hasSize(7);
    assertThat(maker(BOOK, post, terms).openDates())
        .startsWith(POST.plusDays(12))
        .endsWith(LocalDate.of(2027, 7, 11))
        .hasSize(5);
    assertThat(maker(BOOK, program(), keeping(WINTER)).openDates())
        .startsWith(LocalDate.of(2027, 4, 11), LocalDate.of(2027, 4, 17))
        .hasSize(17);
    assertThat(maker(BOOK, program(), keeping(LocalDate.of(2027, 7, 16))).openDates())
        .containsExactly(LocalDate.of(2027, 7, 16));
    assertThat(maker(BOOK, program(), keeping(LocalDate.of(2027, 7, 17))).openDates()).isEmpty();
    Program one = program(pass(POST, CLETHODIM));
    assertThat(maker(house("maxPasses", 1), one, keeping(WINTER)).openDates()).isEmpty();
    assertThat(maker(house("maxPasses", 2), one, keeping(WINTER)).openDates()).isNotEmpty();
  }

  @Test
  void anAddedPassIsCountedWithItsProducts() {
    Pass post = pass(POST, CLETHODIM);
    List<Dose> tank = List.of(GLUFOSINATE_32.dose(), CHOLINE.dose());
    LocalDate day = POST.plusDays(6);
    SingleChange added = maker(BOOK, program(post), helping()).added(day, tank);
    assertThat(added.kind()).isEqualTo(ADD_PASS);
    assertThat(added.pass()).isEqualTo(day);
    assertThat(added.program().passes()).containsExactly(post, pass(day, GLUFOSINATE_32, CHOLINE));
    assertThat(added.size()).isEqualTo(3);
    assertThat(maker(BOOK, program(post), helping()).ofPasses())
        .isNotEmpty()
        .allMatch(c -> c.size() == 1);
  }

  /** Glufosinate asks for ammonium sulfate; the tank that stood is left as it was written. */
  @Test
  void onlyTanksThatAreNewGetWhatTheyAskFor() {
    Pass stood = pass(POST, GLUFOSINATE_32);
    SingleChange added =
        maker(BOOK, program(stood), helping())
            .added(POST.plusDays(12), List.of(GLUFOSINATE_29.dose()));
    Program filled = ChangeMaker.filled(BOOK, TRACES, program(stood), added.program());
    assertThat(filled.passes().get(0)).isEqualTo(stood);
    assertThat(filled.passes().get(1).mix().adjuvants())
        .extracting(Adjuvant::kind)
        .contains("ammonium-sulfate");
    assertThat(filled.passes().get(1).mix().doses()).containsExactly(GLUFOSINATE_29.dose());
    assertThat(maker(BOOK, program(stood), helping()).filled(added).program()).isEqualTo(filled);
    assertThat(maker(BOOK, program(stood), helping()).filled(added).kind()).isEqualTo(ADD_PASS);
  }

  /** What a label refuses on a day and what cannot be had. */
  @Test
  void onADayOnlyWhatIsLegalAndAtHandGoesIn() {
    ChangeMaker maker = maker(BOOK, program(), helping());
    assertThat(maker.legalOn(POST))
        .containsExactly(
            GLUFOSINATE_29, GLUFOSINATE_32, GLUFOSINATE_36, CLETHODIM, CHOLINE, METOLACHLOR);
    assertThat(maker.legalOn(TRACES.field().plantDate())).contains(FLUMIOXAZIN);
    ChangeTerms without =
        ChangeTerms.helping(WINTER, List.of(CHOLINE.dose().product().id()), Money.ZERO);
    assertThat(maker(BOOK, program(), without).legalOn(POST))
        .containsExactly(GLUFOSINATE_29, GLUFOSINATE_32, GLUFOSINATE_36, CLETHODIM, METOLACHLOR);
  }

  /** Two rates of one active make no tank; nor do glufosinate and clethodim. */
  @Test
  void aTankTakesNoActiveTwice() {
    ChangeMaker maker = maker(BOOK, program(), helping());
    PassTiming timing = Timings.at(TRACES, POST);
    assertThat(maker.takes(List.of(GLUFOSINATE_32.dose()), GLUFOSINATE_29.dose(), timing))
        .isFalse();
    assertThat(maker.takes(List.of(GLUFOSINATE_32.dose()), CHOLINE.dose(), timing)).isTrue();
    assertThat(maker.takes(List.of(), CHOLINE.dose(), timing)).isTrue();
    assertThat(maker.takes(List.of(GLUFOSINATE_32.dose()), CLETHODIM.dose(), timing)).isFalse();
    assertThat(
            maker.takes(
                List.of(CLETHODIM.dose(), GLUFOSINATE_32.dose()), GLUFOSINATE_36.dose(), timing))
        .isFalse();
  }

  /** What tells a change from the others of its program. */
  @Test
  void everyChangeHasItsOwnKey() {
    Program program = program(pass(POST, GLUFOSINATE_32, CLETHODIM));
    List<SingleChange> all = maker(BOOK, program, keeping(WINTER)).ofPasses();
    assertThat(all).extracting(SingleChange::key).doesNotHaveDuplicates();
    assertThat(
            new SingleChange(
                    MOVE_PASS,
                    POST,
                    Optional.of(POST.plusDays(3)),
                    List.of(),
                    Optional.empty(),
                    program)
                .key())
        .isEqualTo("MOVE_PASS 2027-06-05 to 2027-06-08[]");
  }
}
