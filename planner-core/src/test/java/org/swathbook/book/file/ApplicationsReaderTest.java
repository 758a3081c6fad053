package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.catalog.Cap;
import org.swathbook.ledger.Ledger;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;

class ApplicationsReaderTest {
  private static final String HEADER =
      "id,line,corrects,date,field,season,product,rate,unit,crop,cropStage,startTime,windMph\n";

  @TempDir Path dir;

  private List<Application> journal(String rows) {
    return new BookOnDisk(dir)
        .with("applications.csv", HEADER + rows)
        .load()
        .journal()
        .applications();
  }

  @Test
  void aProductBringsItsActivesAndABareIngredientItsCheapestProduct() {
    List<Application> all =
        journal(
            """
            P-1,1,,2026-05-01,A-1,2026,glyphosate-4.5sl,32,fl oz/acre,corn,pre,08:30,7
            P-1,2,,2026-05-01,A-1,2026,Atrazine,1.0,lb ai/acre,corn,pre,08:30,7
            """);
    Application product = all.get(0);
    assertThat(product.dose().actives().get(0).lbPerAcre()).isEqualTo(1.125, within(1e-12));
    assertThat(product.dose().named()).isFalse();
    assertThat(product.record().start()).contains(LocalTime.of(8, 30));
    assertThat(product.record().windMph()).hasValue(7);
    Application named = all.get(1);
    assertThat(named.dose().named()).isTrue();
    assertThat(named.dose().actives().get(0).rate().basis()).isEqualTo(Basis.AI);
    assertThat(named.dose().product().id()).hasToString("atrazine-4sc");
    assertThat(named.position()).isEqualTo("pre");
  }

  @Test
  void aCorrectionStandsInThePlaceOfTheRowAboveEvenOfOneWithProblems() {
    List<Application> all =
        journal(
            """
            P-1,1,,2026-05-01,A-1,2026,atrazin,100,lbs,corn,V99,,
            P-1,2,P-1/1,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre,,
            """);
    assertThat(all).extracting(Application::line).containsExactly("2");
  }

  @Test
  void aCorrectionMayItselfBeCorrected() {
    List<Application> all =
        journal(
            """
            P-1,1,,2026-05-01,A-1,2026,atrazine,10,lb ai/acre,corn,pre,,
            P-1,2,P-1/1,2026-05-01,A-1,2026,atrazine,2.0,lb ai/acre,corn,pre,,
            P-1,3,P-1/2,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre,,
            """);
    assertThat(all).extracting(a -> a.dose().actives().get(0).lbPerAcre()).containsExactly(1.0);
  }

  @Test
  void aRateOfZeroVoidsAndNeedsNothingElse() {
    assertThat(
            journal(
                """
                P-1,1,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre,,
                P-2,1,,2026-05-02,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre,,
                V-1,1,P-1,,,,,0,,,,,
                """))
        .extracting(Application::pass)
        .containsExactly("P-2");
  }

  @Test
  void theLedgerCountsNeitherVoidedNorCorrectedRows() {
    Book book =
        new BookOnDisk(dir)
            .with(
                "applications.csv",
                HEADER
                    + """
                    P-1,1,,2026-05-01,A-1,2026,atrazine,11,lb ai/acre,corn,pre,,
                    P-1,2,P-1/1,2026-05-01,A-1,2026,atrazine,1.1,lb ai/acre,corn,pre,,
                    P-2,1,,2026-06-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,V4,,
                    P-2,2,P-2/1,,,,,0,,,,,
                    """)
            .load();
    Cap cap = new Cap(Rate.parse("2.5 lb ai/acre"), Cap.CapPeriod.SEASON, Set.of());
    Ledger ledger = Ledger.of(book, book.fields().get(0), List.of());
    LocalDate end = LocalDate.of(2026, 12, 31);
    assertThat(ledger.ofGroup("atrazine", cap, 2026, end).used().lbPerAcre()).isEqualTo(1.1);
    assertThat(ledger.applications("atrazine", 2026, end)).hasSize(1);
  }

  @Test
  void rowsMayStandInAnyOrderOfDate() {
    assertThat(
            journal(
                """
                P-2,1,,2026-06-02,A-1,2026,atrazine,0.5,lb ai/acre,corn,V4,,
                P-1,1,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre,,
                """))
        .extracting(Application::pass)
        .containsExactly("P-1", "P-2");
  }

  @Test
  void anEmptyJournalIsAHeader() {
    assertThat(journal("")).isEmpty();
  }
}
