package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.program.FieldId;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;

/** What nobody wrote down is told as not known, and makes no season one without herbicides. */
class RecordGapsTest {
  private static final Book DEMO = DemoBook.BOOK;
  private static final FieldId FIELD = DEMO.fields().get(0).id();

  /** The demo book with some seasons of a field out of the journal, or out of seasons.csv. */
  private static Book without(IntPredicate sprayed, IntPredicate grown) {
    return BookParts.of(DEMO)
        .journal(
            DEMO.journal().applications().stream()
                .filter(a -> !a.field().equals(FIELD) || !sprayed.test(a.season()))
                .toList())
        .pastSeasons(
            DEMO.pastSeasons().stream()
                .filter(p -> !p.field().equals(FIELD) || !grown.test(p.season()))
                .toList())
        .whole();
  }

  private static SiteAudit audit(Book book) {
    return SiteAudit.of(book, List.of(book.findField(FIELD.value()).orElseThrow()));
  }

  private static final int LAST = DEMO.season() - 1;

  @Test
  void aCropWithoutAJournalIsNotKnownAndCountsNowhere() {
    SiteAudit audit = audit(without(s -> s == LAST, s -> false));

    assertThat(audit.notAudited())
        .containsExactly(
            FIELD
                + ": "
                + LAST
                + " has a row in seasons.csv and none in applications.csv: whether and what was"
                + " sprayed is not known, and the season counts nowhere. It is not taken for one"
                + " without herbicides.");
    assertThat(audit.ranked()).isNotEmpty().noneMatch(r -> r.sites().season() == LAST);
  }

  @Test
  void yearsThatNoFileHasAreNamed() {
    SiteAudit audit = audit(without(s -> s == LAST, s -> s == LAST));

    assertThat(audit.notAudited())
        .containsExactly(
            FIELD
                + ": neither seasons.csv nor applications.csv has "
                + LAST
                + ", though they have earlier ones: what grew and what was sprayed is not known.");
  }

  @Test
  void aFieldThatHasAllLacksNothing() {
    assertThat(audit(DEMO).notAudited()).isEmpty();
  }
}
