package org.swathbook.plan.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.plan.DemoCopy;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;

/**
 * What the journal has of a season and this one cannot take as it is. ND-1 was planted on 9 May
 * 2025 and is to be on 11 May 2027, so that its post of 9 June comes 31 days after planting again.
 */
class LastSeasonTest {
  private static final String POST = "2025-06-09,10:30,ND-1,2025";

  private DemoCopy copy;

  @BeforeEach
  void copy(@TempDir Path dir) {
    copy = new DemoCopy(dir.resolve("book"));
  }

  private LastSeason last() {
    Book book = copy.load();
    return LastSeason.of(
        book,
        TraceBuilder.build(
            book, book.findField("ND-1").orElseThrow(), LocalDate.parse("2027-03-01")));
  }

  @Test
  void aPassThatTheSeasonJustHoldsIsInIt() {
    copy.change("applications.csv", POST, POST.replace("06-09", "10-29"));
    assertThat(last().program().passes())
        .extracting(Pass::at)
        .containsExactly(new Anchor.FromPlanting(1), new Anchor.FromPlanting(173));
  }

  @Test
  void aPassADayLaterIsLeftOutAndTold() {
    copy.change("applications.csv", POST, POST.replace("06-09", "10-30"));
    LastSeason last = last();
    assertThat(last.program().passes())
        .extracting(Pass::at)
        .containsExactly(new Anchor.FromPlanting(1));
    assertThat(last.notes())
        .contains("Left out: the pass of 30 Oct 2025, which would lie outside this season.");
  }

  /** 95 % of 76 acres are 72.2: default, ours. */
  @Test
  void aPassOnAPartOfTheFieldGoesOnAllOfItAndThatIsTold() {
    String note =
        "The pass of 9 Jun 2025 went on a part of the field only; here it goes on all of it.";
    assertThat(last().notes()).doesNotContain(note);
    copy.change("applications.csv", POST + ",76.0", POST + ",72.3");
    assertThat(last().notes()).doesNotContain(note);
    copy.change("applications.csv", POST + ",72.3", POST + ",72.1");
    LastSeason last = last();
    assertThat(last.notes()).contains(note);
    assertThat(last.program().passes()).hasSize(2);
  }

  /** The journal's own crop stands in where seasons.csv has no row, and only of that season. */
  @Test
  void theCropOfTheJournalIsTakenWhereSeasonsHasNone() {
    copy.change("seasons.csv", "ND-1,2026,corn", "ND-1,2026,soybean");
    assertThat(last().season()).as("the last in soybean").isEqualTo(2026);
    copy.replaceAll("seasons.csv", "ND-1,2026,.*\n", "");
    assertThat(last().season()).as("the journal has corn in 2026").isEqualTo(2025);
  }

  /** Of two seasons in soybean the later one, were it known when it was planted. */
  @Test
  void aSeasonThatOnlyTheJournalHasCountsToo() {
    copy.replaceAll("applications.csv", "(ND-1,2026,.*,)corn,(?:pre|V7),", "$1soybean,pre,")
        .replaceAll("seasons.csv", "ND-1,2026,.*\n", "");
    assertThatIllegalArgumentException()
        .isThrownBy(this::last)
        .withMessageContaining("when ND-1 was planted in 2026");
  }

  @Test
  void whatIsSprayedThisSeasonIsNotOfAnEarlierOne() {
    copy.replaceAll(
        "applications.csv",
        "2026-06-08,14:10,ND-1,2026,(.*),corn,V7,",
        "2026-11-05,14:10,ND-1,2027,$1,soybean,fall,");
    assertThat(last().season()).isEqualTo(2025);
  }

  @Test
  void aJournalWithoutThePastSaysSo() {
    copy.replaceAll("applications.csv", "(?m)^[^,]*,[^,]*,[^,]*,[^,]*,[^,]*,ND-1,.*\n", "");
    assertThatIllegalArgumentException()
        .isThrownBy(this::last)
        .withMessageContaining("applications.csv has no pass on ND-1 in a season before 2027");
  }

  @Test
  void theProgramIsNamedAfterItsSeason() {
    LastSeason last = last();
    assertThat(last.program().name()).isEqualTo("As sprayed in 2025");
    assertThat(last.program().field().value()).isEqualTo("ND-1");
    assertThat(last.notes()).last().asString().contains("neither adjuvants nor spray volumes");
  }
}
