package org.swathbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.swathbook.book.Application;
import org.swathbook.book.Journal;
import org.swathbook.catalog.Cap;
import org.swathbook.measure.Rate;

class LedgerProperties {
  private static final LocalDate END = LocalDate.of(2026, 10, 31);

  @Provide
  Arbitrary<List<Application>> journals() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 900),
            Arbitraries.of("atrazine", "2,4-D choline", "glyphosate"),
            Arbitraries.doubles().between(0.01, 3).ofScale(4),
            Arbitraries.of("pre", "V5", ""))
        .as(
            (day, active, lb, stage) ->
                JournalRows.row(
                    LocalDate.of(2024, 1, 1).plusDays(day).toString(), active, lb, stage, 80))
        .list()
        .ofMaxSize(15);
  }

  @Provide
  Arbitrary<Cap> caps() {
    return Arbitraries.of(Cap.CapPeriod.values())
        .map(per -> new Cap(Rate.parse("2.5 lb ai/acre"), per, Set.of()));
  }

  private static Ledger ledger(List<Application> rows) {
    return Ledger.of(
        JournalRows.CATALOG,
        JournalRows.FIELD,
        2027,
        new Journal(rows).of(JournalRows.FIELD.id()),
        List.of());
  }

  @Property
  void theOrderOfRowsDoesNotMatterToTheLastBit(
      @ForAll("journals") List<Application> rows, @ForAll("caps") Cap cap, @ForAll Random random) {
    List<Application> shuffled = new ArrayList<>(rows);
    Collections.shuffle(shuffled, random);
    Ledger a = ledger(rows);
    Ledger b = ledger(shuffled);
    assertThat(a.ofGroup("atrazine", cap, 2026, END).used())
        .isEqualTo(b.ofGroup("atrazine", cap, 2026, END).used());
    assertThat(a.applications("2,4-D", 2026, END))
        .hasSameSizeAs(b.applications("2,4-D", 2026, END));
    assertThat(a.lastApplication("2,4-D", END).map(LedgerEntry::date))
        .isEqualTo(b.lastApplication("2,4-D", END).map(LedgerEntry::date));
  }

  @Property
  void anotherRowNeverLowersWhatIsUsed(
      @ForAll("journals") List<Application> rows, @ForAll("caps") Cap cap) {
    if (rows.isEmpty()) {
      return;
    }
    double all = ledger(rows).ofGroup("atrazine", cap, 2026, END).used().lbPerAcre();
    double fewer =
        ledger(rows.subList(1, rows.size())).ofGroup("atrazine", cap, 2026, END).used().lbPerAcre();
    assertThat(all).isGreaterThanOrEqualTo(fewer - 1e-12);
  }

  @Property
  void usedAndLeftMakeTheCapUnlessItIsExceeded(
      @ForAll("journals") List<Application> rows, @ForAll("caps") Cap cap) {
    UsedAndLeft u = ledger(rows).ofGroup("atrazine", cap, 2026, END);
    if (u.exceeded()) {
      assertThat(u.left().lbPerAcre()).isZero();
    } else {
      assertThat(u.used().lbPerAcre() + u.left().lbPerAcre())
          .isCloseTo(cap.amount().lbPerAcre(), within(1e-9));
    }
  }

  @Property
  void applicationsOfASeasonHoldEachOfItsEntriesOnceAndStartMoreThanTwoDaysApart(
      @ForAll("journals") List<Application> rows) {
    List<OneApplication> runs = ledger(rows).applications("glyphosate", 2026, END);
    long entries = runs.stream().mapToLong(r -> r.entries().size()).sum();
    long wanted =
        rows.stream()
            .filter(a -> a.season() == 2026 && !a.date().isAfter(END))
            .filter(a -> a.dose().actives().get(0).ingredient().name().equals("glyphosate"))
            .count();
    assertThat(entries).isEqualTo(wanted);
    for (int i = 1; i < runs.size(); i++) {
      assertThat(runs.get(i).first()).isAfter(runs.get(i - 1).first().plusDays(2));
    }
  }
}
