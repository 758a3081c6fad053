package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.LateCost;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What a product itself does to Palmer amaranth, which resists sites 2 and 9, in one pass over
 * soybean. What each site does there is what a test says. Glufosinate is rated as effective on it
 * through leaves, S-metolachlor works through the soil alone, velvetleaf is no driver.
 */
class OwnWorkTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow());
  private static final LocalDate DAY = LocalDate.of(2027, 6, 5);
  private static final WeedId PALMER = WeedId.of("AMAPA");
  private static final WeedId VELVETLEAF = WeedId.of("ABUTH");

  private static final Dose GLUFOSINATE = dose("glufosinate-ammonium", 36);
  private static final Dose LESS_GLUFOSINATE = dose("glufosinate-ammonium", 29);
  private static final Dose FOMESAFEN = dose("fomesafen", 16);
  private static final Dose LACTOFEN = dose("lactofen", 12.5);
  private static final Dose METOLACHLOR = dose("s-metolachlor", 1.3);
  private static final Dose GLYPHOSATE = dose("glyphosate", 32);
  private static final Dose CLETHODIM = dose("clethodim", 16);

  private static Dose dose(String active, double amount) {
    return OptionMaker.make(BOOK, TRACES.field()).options().stream()
        .filter(o -> o.ingredient().value().equals(active))
        .filter(o -> o.dose().rate().amount() == amount)
        .findFirst()
        .orElseThrow()
        .dose();
  }

  /** What a dose does through leaves by the model, percent. */
  private static SiteControl does(Dose dose, double pct) {
    return does(dose, pct, false);
  }

  private static SiteControl does(Dose dose, double pct, boolean struck) {
    var active = dose.actives().get(0).ingredient();
    return new SiteControl(active.site(), active.id(), pct, struck, pct >= 80);
  }

  private static PassWeed weed(WeedId id, double p90Cm, SiteControl... leaves) {
    return new PassWeed(id, true, 5, p90Cm / 2, p90Cm, p90Cm, p90Cm, List.of(leaves), List.of());
  }

  private static PassOutcome pass(LocalDate day, Mix mix, PassWeed... weeds) {
    return new PassOutcome(
        0,
        day,
        Timings.at(TRACES, day),
        day,
        day,
        25,
        "V4",
        mix,
        List.of(),
        Optional.empty(),
        List.of(weeds),
        LateCost.NONE,
        false);
  }

  private static SeasonOutcome season(PassOutcome... passes) {
    return new SeasonOutcome(
        new Program("one", TRACES.field().id(), List.of()),
        List.of(passes),
        List.of(),
        TRACES.weeds().stream()
            .map(
                w ->
                    new WeedOutcome(
                        w,
                        100,
                        100,
                        0,
                        0,
                        0,
                        0,
                        0,
                        0,
                        1,
                        0,
                        0,
                        100,
                        Optional.empty(),
                        100,
                        0,
                        List.of(),
                        List.of()))
            .toList(),
        Optional.empty(),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        100);
  }

  private static SeasonOutcome with(Dose dose, PassWeed... weeds) {
    return season(pass(DAY, Mix.of(List.of(dose)), weeds));
  }

  private static Optional<OwnWork> of(SeasonOutcome season, Dose dose) {
    return OwnWork.countedOn(BOOK, season, DAY, dose);
  }

  @Test
  void itIsWhatTheModelSaysOfItOnTheDriverThatStands() {
    OwnWork work =
        of(with(GLUFOSINATE, weed(PALMER, 20, does(GLUFOSINATE, 64))), GLUFOSINATE).orElseThrow();
    assertThat(work.pct()).isEqualTo(64);
    assertThat(work.heightCm()).isEqualTo(20);
    assertThat(work.weed().weed().id()).isEqualTo(PALMER);
    assertThat(work.product()).isEqualTo(GLUFOSINATE.product().name());
  }

  @Test
  void whatIsNotCountedOnHasNone() {
    assertThat(of(with(METOLACHLOR, weed(PALMER, 20, does(METOLACHLOR, 90))), METOLACHLOR))
        .as("through the soil")
        .isEmpty();
    assertThat(of(with(GLYPHOSATE, weed(PALMER, 20, does(GLYPHOSATE, 90))), GLYPHOSATE))
        .as("resisted")
        .isEmpty();
    assertThat(of(with(CLETHODIM, weed(PALMER, 20, does(CLETHODIM, 90))), CLETHODIM))
        .as("rated on grasses alone")
        .isEmpty();
    assertThat(of(with(GLUFOSINATE, weed(VELVETLEAF, 20, does(GLUFOSINATE, 90))), GLUFOSINATE))
        .as("no driver")
        .isEmpty();
    assertThat(of(with(GLUFOSINATE, weed(PALMER, Double.NaN, does(GLUFOSINATE, 90))), GLUFOSINATE))
        .as("none stands")
        .isEmpty();
  }

  @Test
  void onlyThePassThatIsAskedAboutCounts() {
    Mix mix = Mix.of(List.of(GLUFOSINATE));
    SeasonOutcome two =
        season(
            pass(DAY.minusDays(9), mix, weed(PALMER, 5, does(GLUFOSINATE, 95))),
            pass(DAY, Mix.of(List.of(FOMESAFEN)), weed(PALMER, 9, does(FOMESAFEN, 85))),
            pass(DAY, mix, weed(PALMER, 20, does(GLUFOSINATE, 40))));
    assertThat(of(two, GLUFOSINATE)).map(OwnWork::pct).contains(40.0);
    assertThat(of(two, FOMESAFEN)).map(OwnWork::pct).contains(85.0);
    assertThat(of(two, LACTOFEN)).isEmpty();
    assertThat(OwnWork.countedOn(BOOK, two, DAY.plusDays(1), GLUFOSINATE)).isEmpty();
  }

  /** Of one site the active that does most does the work; a resistant plant feels none of it. */
  @Test
  void whatAnotherOfItsSiteDoesIsNotItsWork() {
    SeasonOutcome beside =
        season(
            pass(
                DAY,
                Mix.of(List.of(FOMESAFEN, LACTOFEN)),
                weed(PALMER, 9, does(GLUFOSINATE, 70), does(LACTOFEN, 85))));
    assertThat(of(beside, FOMESAFEN)).map(OwnWork::pct).contains(0.0);
    assertThat(of(beside, LACTOFEN)).map(OwnWork::pct).contains(85.0);
    assertThat(of(with(GLUFOSINATE, weed(PALMER, 9, does(GLUFOSINATE, 90, true))), GLUFOSINATE))
        .map(OwnWork::pct)
        .contains(0.0);
  }

  /** Half is half-effective: default, ours. */
  @Test
  void lessThanHalfFails() {
    assertThat(works(50).fails()).isFalse();
    assertThat(works(49.9).fails()).isTrue();
    assertThat(works(30.4).words())
        .isEqualTo(
            GLUFOSINATE.product().name()
                + " itself would give 30 % of Palmer amaranth at 10 in, the height then standing:"
                + " what helps is an earlier pass.");
  }

  private static OwnWork works(double pct) {
    return of(with(GLUFOSINATE, weed(PALMER, 25.4, does(GLUFOSINATE, pct))), GLUFOSINATE)
        .orElseThrow();
  }

  /** Whether {@code in} does of the work of glufosinate, from what both do, percent. */
  private static boolean isDone(double gone, Dose in, double does, SingleChange.Kind kind) {
    SeasonOutcome now = with(GLUFOSINATE, weed(PALMER, 20, does(GLUFOSINATE, gone)));
    SeasonOutcome then = with(in, weed(PALMER, 20, does(in, does)));
    return OwnWork.isDone(
        BOOK,
        now,
        then,
        new SingleChange(
            kind,
            DAY,
            Optional.empty(),
            List.of(in),
            Optional.of(GLUFOSINATE),
            new Program(
                "then",
                TRACES.field().id(),
                List.of(new Pass(new Anchor.OnDate(DAY), Mix.of(List.of(in)))))));
  }

  private static boolean isDone(double gone, Dose in, double does) {
    return isDone(gone, in, does, SingleChange.Kind.EXCHANGE_PRODUCT);
  }

  @Test
  void itsWorkIsDoneByHalfOrByAsMuchAsItDid() {
    assertThat(isDone(90, FOMESAFEN, 50)).isTrue();
    assertThat(isDone(90, FOMESAFEN, 49.9)).isFalse();
    assertThat(isDone(30, FOMESAFEN, 30)).as("as much as a product that fails").isTrue();
    assertThat(isDone(30, FOMESAFEN, 29.9)).isFalse();
    assertThat(isDone(90, METOLACHLOR, 90)).as("through the soil").isFalse();
    assertThat(isDone(90, LESS_GLUFOSINATE, 10)).as("the same active").isTrue();
    assertThat(isDone(90, FOMESAFEN, 10, SingleChange.Kind.RAISE_RATE)).as("nothing goes").isTrue();
  }

  /** Through the soil it did no such work, so whatever comes in its place does it. */
  @Test
  void ofWhatWorksThroughTheSoilNoneIsAsked() {
    SeasonOutcome now = with(METOLACHLOR, weed(PALMER, 20, does(METOLACHLOR, 0)));
    SeasonOutcome then = with(FOMESAFEN, weed(PALMER, 20, does(FOMESAFEN, 10)));
    assertThat(
            OwnWork.isDone(
                BOOK,
                now,
                then,
                new SingleChange(
                    SingleChange.Kind.EXCHANGE_PRODUCT,
                    DAY,
                    Optional.empty(),
                    List.of(FOMESAFEN),
                    Optional.of(METOLACHLOR),
                    new Program("then", TRACES.field().id(), List.of()))))
        .isTrue();
  }
}
