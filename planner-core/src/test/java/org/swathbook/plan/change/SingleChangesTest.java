package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
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
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
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
    return new SingleChanges(
            BOOK,
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
}
