package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.PlannedApplication;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;

/**
 * Sequence rules on passes in order, after all that the journal holds; a pass that the journal
 * holds already counts once.
 */
public final class SequenceJudge {
  private static final List<SequenceRule> RULES = RuleBook.ofScope(SequenceRule.class);

  private static final List<SequenceRule> BLOCKING =
      RULES.stream().filter(r -> r.card().severity() == Severity.BLOCK).toList();

  private final Book book;
  private final Field field;
  private final JournalMatch journal;

  /** What the journal alone holds. */
  private final Ledger past;

  private SequenceJudge(Book book, Field field) {
    this.book = book;
    this.field = field;
    this.journal = new JournalMatch(book, field);
    this.past = Ledger.of(book, field, List.of());
  }

  /** For many questions about one field: its journal is gone through once. */
  public static SequenceJudge of(Book book, Field field) {
    return new SequenceJudge(book, field);
  }

  public static Findings judge(Book book, Field field, List<DatedMix> passes) {
    return judge(book, field, passes, Findings.all());
  }

  /** The same, put into a collector. */
  public static Findings judge(Book book, Field field, List<DatedMix> passes, Findings out) {
    return of(book, field).judge(RULES, passes, false, out);
  }

  /** The same of one tank that is about to be loaded, put into a collector. */
  static Findings judgeTank(Book book, Field field, DatedMix tank, Findings out) {
    return of(book, field).judge(RULES, List.of(tank), true, out);
  }

  /** Whether a cap, a count or an interval is broken; makes no words. */
  public static boolean blocks(Book book, Field field, List<DatedMix> passes) {
    return of(book, field).blocks(passes);
  }

  /** The same of the field at hand. */
  public boolean blocks(List<DatedMix> passes) {
    return judge(BLOCKING, passes, false, Findings.counting()).isBlocked();
  }

  private Findings judge(
      List<SequenceRule> rules, List<DatedMix> passes, boolean atLoading, Findings out) {
    List<DatedMix> dated = passes.stream().map(journal::dated).toList();
    List<DatedMix> planned = passes.stream().map(p -> journal.dated(p.asPlanned())).toList();
    Ledger ledger = ledger(dated);
    // On one day, as a tank is, both are the same book-keeping.
    Ledger plannedLedger = dates(dated).equals(dates(planned)) ? ledger : ledger(planned);
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
      for (SequenceRule rule : rules) {
        rule.judge(facts, out);
      }
    }
    return out;
  }

  private static List<LocalDate> dates(List<DatedMix> passes) {
    return passes.stream().map(DatedMix::date).toList();
  }

  private Ledger ledger(List<DatedMix> passes) {
    List<PlannedApplication> toCome = new ArrayList<>();
    passes.forEach(p -> toCome.addAll(journal.toCome(p)));
    return past.with(book.season(), field, toCome);
  }
}
