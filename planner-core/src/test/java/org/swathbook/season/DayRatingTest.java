package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;

class DayRatingTest {
  private static final LocalDate SPRAYED = LocalDate.parse("2027-06-05");

  private static Kernel kernel() {
    Field f =
        FieldBuilder.of("T", "soybean", "2027-05-11")
            .traits("glyphosate", "2,4-D")
            .tilled()
            .build();
    Book book = Fixtures.bookWith(f, Fixtures.weed("T", "AMAPA", 80, DriverKind.YES, 0));
    return Kernel.of(book, TraceBuilder.build(book, f));
  }

  private static double rated(Kernel k, LocalDate on, PreparedPass... passes) {
    return DayRating.of(k, List.of(passes), on).controlPct(0);
  }

  @Test
  void whatWasNotSprayedIsNotControlled() {
    Kernel k = kernel();

    assertThat(rated(k, SPRAYED)).isZero();
    // A pass of a later day is not seen yet.
    PreparedPass later = k.made(Sprays.mix("glyphosate", 1.0), SPRAYED.plusDays(1));
    assertThat(rated(k, SPRAYED, later)).isZero();
  }

  @Test
  void anEyeSeesAGoodPassAndLaterTheNewPlants() {
    Kernel k = kernel();
    PreparedPass post = k.made(Sprays.mix("glyphosate", 1.0, "2,4-D choline", 0.95), SPRAYED);

    double soon = rated(k, SPRAYED.plusDays(14), post);
    double late = rated(k, SPRAYED.plusDays(60), post);
    assertThat(soon).isBetween(85.0, 100.0);
    assertThat(late).isBetween(0.0, 100.0);
    // Of the plants that come up after a pass without soil life nothing is controlled.
    double fresh =
        DayRating.of(k, List.of(post), SPRAYED.plusDays(30), SPRAYED.plusDays(20)).controlPct(0);
    assertThat(fresh).isLessThan(5);
  }

  @Test
  void moreIsNeverRatedLess() {
    Kernel k = kernel();
    double last = 0;
    for (double lb : new double[] {0.2, 0.4, 0.8, 1.6}) {
      double now = rated(k, SPRAYED.plusDays(14), k.made(Sprays.mix("glyphosate", lb), SPRAYED));
      assertThat(now).isGreaterThanOrEqualTo(last - 1e-9);
      last = now;
    }
  }

  @Test
  void aDayOutsideTheSeasonIsRefused() {
    Kernel k = kernel();

    assertThatThrownBy(() -> rated(k, LocalDate.parse("2029-06-05")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
