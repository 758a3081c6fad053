package org.swathbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.Fixtures;

class BookChangesTest {

  @Test
  void anotherStateOfAFieldOrAWeedKeepsWhatWasScouted() {
    Field field = Fixtures.field("ND-1");
    Scouting seen =
        new Scouting(
            LocalDate.parse("2027-06-01"),
            field.id(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of("V2"),
            0);
    Book book = Fixtures.book().withScoutings(List.of(seen));

    assertThat(book.withField(field).scoutings()).containsExactly(seen);
    assertThat(book.withWeed(book.weedsOf(field.id()).get(0)).scoutings()).containsExactly(seen);
  }
}
