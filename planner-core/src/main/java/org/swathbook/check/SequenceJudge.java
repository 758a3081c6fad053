package org.swathbook.check;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.PlannedApplication;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;

/**
 * Sequence rules on passes in order, after all that the journal holds; a pass that the journal
 * holds already counts once.
 */
public final class SequenceJudge {
  private static final List<SequenceRule> RULES = RuleBook.ofScope(SequenceRule.class);

  private SequenceJudge() {}

  public static Findings judge(Book book, Field field, List<DatedMix> passes) {
    return judge(book, field, passes, false, Findings.all());
  }

  /** The same, put into a collector. */
  public static Findings judge(Book book, Field field, List<DatedMix> passes, Findings out) {
    return judge(book, field, passes, false, out);
  }

  /** The same of one tank that is about to be loaded, put into a collector. */
  static Findings judgeTank(Book book, Field field, DatedMix tank, Findings out) {
    return judge(book, field, List.of(tank), true, out);
  }

  /** Whether a cap, a count or an interval is broken; makes no words. */
  public static boolean blocks(Book book, Field field, List<DatedMix> passes) {
    return judge(book, field, passes, false, Findings.counting()).isBlocked();
  }

  private static Findings judge(
      Book book, Field field, List<DatedMix> passes, boolean atLoading, Findings out) {
    JournalMatch journal = new JournalMatch(book, field);
    List<DatedMix> dated = passes.stream().map(journal::dated).toList();
    List<DatedMix> planned = passes.stream().map(p -> journal.dated(p.asPlanned())).toList();
    Ledger ledger = ledger(book, field, journal, dated);
    // On one day, as a tank is, both are the same book-keeping.
    Ledger plannedLedger =
        dates(dated).equals(dates(planned)) ? ledger : ledger(book, field, journal, planned);
    for (int i = 0; i < dated.size(); i++) {
      DatedMix p = dated.get(i);
      SequenceFacts facts =
          new SequenceFacts(
              book,
              field,
              ledger,
              p.pass(),
              p.date(),
              p.positions(),
              p.mix(),
              planned.get(i).date(),
              plannedLedger,
              atLoading);
      for (SequenceRule rule : RULES) {
        rule.judge(facts, out);
      }
    }
    return out;
  }

  private static List<LocalDate> dates(List<DatedMix> passes) {
    return passes.stream().map(DatedMix::date).toList();
  }

  private static Ledger ledger(
      Book book, Field field, JournalMatch journal, List<DatedMix> passes) {
    List<PlannedApplication> toCome =
        passes.stream().flatMap(p -> journal.toCome(p).stream()).toList();
    return Ledger.of(book, field, toCome);
  }
}
