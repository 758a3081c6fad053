package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.check.DatedMix;
import org.swathbook.check.SequenceJudge;
import org.swathbook.measure.Rate;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.testing.DemoBook;

/**
 * A cap for stubble is no leave in a crop: dicamba in corn, 0.75 lb ae/acre a season (from memory).
 */
class StubbleCapTest {
  private static final Book BOOK = DemoBook.BOOK;

  private static DatedMix dicamba(int pass, LocalDate date, double lbAe, Position position) {
    Product product = BOOK.catalog().findProduct("dicamba-4sl").orElseThrow();
    Rate rate =
        new Rate(
            lbAe * 32, product.spoken().unit(), product.spoken().area(), product.spoken().basis());
    return new DatedMix(
        pass,
        date,
        Set.of(position),
        Mix.of(List.of(Doses.ofProduct(BOOK.catalog(), product, rate))));
  }

  @Test
  void threeSpraysOfDicambaAboveTheCapOfCornAreBlocked() {
    Field corn = BOOK.findField("ND-2").orElseThrow();
    DatedMix first = dicamba(0, LocalDate.of(2027, 4, 20), 0.25, Position.PREPLANT);
    DatedMix second = dicamba(1, LocalDate.of(2027, 5, 13), 0.375, Position.POST);
    DatedMix atTheCap = dicamba(2, LocalDate.of(2027, 6, 6), 0.125, Position.POST);
    DatedMix above = dicamba(2, LocalDate.of(2027, 6, 6), 0.25, Position.POST);

    assertThat(SequenceJudge.blocks(BOOK, corn, List.of(first, second, atTheCap))).isFalse();
    assertThat(SequenceJudge.blocks(BOOK, corn, List.of(first, second, above))).isTrue();
  }
}
