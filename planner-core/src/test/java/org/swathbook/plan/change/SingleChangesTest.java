package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.testing.DemoBook;

/** Changes to the demo's own program, under three weather years. */
class SingleChangesTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  private static final Book BOOK = DemoCopy.inMemory();
  private static final BookPaths PATHS = new BookPaths(DemoBook.FOLDER);
  private static final Kernel KERNEL =
      Kernel.of(BOOK, TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow(), TODAY));
  private static final SeasonOutcome NOW =
      SeasonWalk.walk(
          BOOK,
          KERNEL,
          ProgramReader.read(PATHS.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers"), PATHS, BOOK));

  private static List<JudgedChange> best(String from, Money extra, ProductId... unavailable) {
    return best(BOOK, from, extra, unavailable);
  }

  private static List<JudgedChange> best(
      Book book, String from, Money extra, ProductId... unavailable) {
    return new SingleChanges(
            book,
            KERNEL,
            NOW,
            ChangeTerms.helping(LocalDate.parse(from), List.of(unavailable), extra),
            TODAY)
        .best();
  }

  @Test
  void whatIsShownIsLegalLaterThanKnownAndAddsUp() {
    List<JudgedChange> best = best("2027-05-20", Money.ZERO);
    assertThat(best).isNotEmpty().hasSizeLessThanOrEqualTo(2);
    for (JudgedChange c : best) {
      assertThat(c.change().pass()).isAfterOrEqualTo(LocalDate.of(2027, 5, 20));
      c.change()
          .movedTo()
          .ifPresent(d -> assertThat(d).isAfterOrEqualTo(LocalDate.of(2027, 5, 20)));
      SeasonOutcome again = SeasonWalk.walk(BOOK, KERNEL, c.change().program());
      Judgement judged = ProgramJudge.judge(BOOK, KERNEL.traces(), again, TODAY);
      assertThat(judged.verdict()).isNotEqualTo(Verdict.BLOCKED);
      assertThat(c.net()).contains(again.net().orElseThrow().minus(NOW.net().orElseThrow()));
      assertThat(c.mends().isEmpty() && c.net().orElseThrow().cents() < 100).isFalse();
      assertThat(c.mends()).allMatch(HouseRuleCheck.NAMES::contains);
    }
  }

  /** House rules that a change mends less those that it breaks. */
  private static int mended(JudgedChange c) {
    return c.mends().size() - c.breaks().size();
  }

  /** Every change of a pass that stands, walked and judged: what helps and is legal. */
  private static List<WalkedChange> helping(String from) {
    ChangeTerms terms = ChangeTerms.helping(LocalDate.parse(from), List.of(), Money.ZERO);
    StandingPasses passes = new StandingPasses(BOOK, KERNEL);
    WalkedChange.Standing standing = WalkedChange.Standing.of(BOOK, KERNEL, NOW, terms, TODAY);
    ChangeMaker maker =
        ChangeMaker.of(
            BOOK,
            KERNEL.traces(),
            NOW.program(),
            passes,
            terms,
            OptionMaker.make(BOOK, KERNEL.traces().field()).options(),
            TODAY);
    return maker.ofPasses().stream()
        .filter(c -> passes.isLegalInOrder(c.program()))
        .map(c -> new WalkedChange(standing, maker.filled(c)))
        .filter(w -> w.helps() && w.isLegal())
        .toList();
  }

  /**
   * In March another change pays a dollar more than the first, which mends as many house rules or
   * more; on 20 May and 1 June none does, and the next that mends some changes another pass.
   */
  @ParameterizedTest
  @CsvSource({"2027-03-01, true", "2027-05-20, false", "2027-06-01, false"})
  void theFirstMendsMostAndTheSecondPaysMoreOrChangesSomethingElse(String from, boolean paysMore) {
    List<JudgedChange> best =
        best(from, Money.ZERO).stream().filter(c -> c.near().isEmpty()).toList();
    List<WalkedChange> all = helping(from);
    assertThat(best).hasSize(2);
    assertThat(all).hasSizeGreaterThan(3);
    JudgedChange first = best.get(0);
    JudgedChange second = best.get(1);
    Money net = first.net().orElseThrow();
    assertThat(mended(first)).isPositive().isGreaterThanOrEqualTo(mended(second));
    assertThat(all)
        .allMatch(
            w ->
                w.mended() < mended(first)
                    || w.mended() == mended(first) && w.gain().compareTo(net) <= 0);
    assertThat(second.net().orElseThrow().compareTo(net.plus(Money.ofDollars(1))) >= 0)
        .isEqualTo(paysMore);
    if (paysMore) {
      assertThat(all).allMatch(w -> w.gain().compareTo(second.net().orElseThrow()) <= 0);
    } else {
      assertThat(mended(second)).isNotNegative();
      assertThat(second.change().pass()).isNotEqualTo(first.change().pass());
    }
  }

  @Test
  void whatCannotBeHadIsNotAdvised() {
    List<JudgedChange> all = best("2027-03-01", Money.ZERO);
    List<ProductId> advised =
        all.stream()
            .flatMap(c -> c.change().in().stream())
            .map(d -> d.product().id())
            .distinct()
            .toList();
    assertThat(advised).isNotEmpty();
    assertThat(best("2027-03-01", Money.ZERO, advised.toArray(ProductId[]::new)))
        .flatExtracting(c -> c.change().in())
        .extracting(d -> d.product().id())
        .doesNotContainAnyElementsOf(advised);
  }

  @Test
  void anUnplannedTripCostsItsExtra() {
    JudgedChange without = added(best("2027-03-01", Money.ZERO));
    JudgedChange with = added(best("2027-03-01", Money.ofDollars(2.5)));
    assertThat(with.change().key()).isEqualTo(without.change().key());
    assertThat(with.net().orElseThrow())
        .isEqualTo(without.net().orElseThrow().minus(Money.ofDollars(2.5)));
    assertThat(with.cost().orElseThrow())
        .isEqualTo(without.cost().orElseThrow().plus(Money.ofDollars(2.5)));
  }

  private static JudgedChange added(List<JudgedChange> all) {
    return all.stream()
        .filter(c -> c.change().kind() == SingleChange.Kind.ADD_PASS)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void afterTheSeasonNothingHelps() {
    assertThat(best("2027-09-20", Money.ZERO)).isEmpty();
  }

  private static Book apart(int days) {
    return BOOK.with(
        BOOK.house().laidOut(BOOK.house().maxPasses(), BOOK.house().maxProducts(), days));
  }

  /**
   * Where the house keeps passes three weeks apart, none fits between 11 May and 6 June: a pass
   * that comes nearer is worth more than what is left, and says how near it comes.
   */
  @Test
  void aPassNearerThanTheHouseAsksIsOfferedLastAndSaysSo() {
    List<JudgedChange> best = best(apart(21), "2027-05-20", Money.ZERO);
    JudgedChange near = best.get(best.size() - 1);

    NearPass told = near.near().orElseThrow();
    assertThat(near.change().kind()).isEqualTo(SingleChange.Kind.ADD_PASS);
    assertThat(near.breaks()).contains("minDaysBetweenPasses");
    assertThat(told.asked()).isEqualTo(21);
    assertThat(told.days()).isPositive().isLessThan(21);
    assertThat(Math.abs(ChronoUnit.DAYS.between(told.other(), near.change().pass())))
        .isEqualTo(told.days());
    assertThat(NOW.passes()).extracting(PassOutcome::planned).contains(told.other());
    assertThat(near.judgement().verdict()).isNotEqualTo(Verdict.BLOCKED);
    for (JudgedChange other : best.subList(0, best.size() - 1)) {
      assertThat(other.near()).isEmpty();
      assertThat(other.breaks()).doesNotContain("minDaysBetweenPasses");
      assertThat(worth(near)).isGreaterThan(worth(other));
    }
  }

  /** In dollars an acre, with ten for each house rule. */
  private static double worth(JudgedChange c) {
    return c.net().orElseThrow().dollars() + 10 * mended(c);
  }

  /** What keeps to the house's days is worth as much here as what does not. */
  @Test
  void noPassComesNearerForNothing() {
    assertThat(best(apart(7), "2027-05-20", Money.ZERO)).allMatch(c -> c.near().isEmpty());
    assertThat(best(apart(0), "2027-05-20", Money.ZERO)).allMatch(c -> c.near().isEmpty());
  }
}
