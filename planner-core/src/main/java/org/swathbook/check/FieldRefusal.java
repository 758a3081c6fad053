package org.swathbook.check;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.Severity;

/**
 * What the past of a field says against its crop, whatever is sprayed: with a block here the crop
 * itself may not be grown on its date.
 */
public record FieldRefusal(List<Finding> findings) {

  public FieldRefusal {
    findings = List.copyOf(findings);
  }

  public static FieldRefusal of(Book book, Field field) {
    Findings out = Findings.all();
    RuleBook.nextCrop().judgeJournal(book, field, out);
    return new FieldRefusal(out.sorted());
  }

  public boolean isRefused() {
    return findings.stream().anyMatch(f -> f.severity() == Severity.BLOCK);
  }
}
