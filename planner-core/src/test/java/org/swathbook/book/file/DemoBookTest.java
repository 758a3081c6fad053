package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.testing.DemoBook;

class DemoBookTest {
  static final Path FOLDER = Path.of("..", "demo-data");
  private static final Book BOOK = DemoBook.BOOK;

  @Test
  void loadsWhole() {
    assertThat(BOOK.season()).isEqualTo(2027);
    assertThat(BOOK.fields()).hasSize(12);
    assertThat(BOOK.weeds()).hasSize(34);
    assertThat(BOOK.journal().applications()).hasSize(107);
    assertThat(BOOK.pastSeasons()).hasSize(24);
    assertThat(BOOK.prices().products()).hasSize(BOOK.catalog().products().size());
    assertThat(BOOK.stations()).containsOnlyKeys("dry-butte", "sedge-fork");
    assertThat(BOOK.station(BOOK.fields().get(0)).days()).hasSize(3733);
    assertThat(BOOK.notes()).isEmpty();
  }
}
