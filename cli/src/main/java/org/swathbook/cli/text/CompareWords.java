package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.rules.Finding;
import org.swathbook.season.outcome.WeedOutcome;

/** A comparison in words, whatever it is printed on. */
public final class CompareWords {
  private final ComparedField compared;
  private final CompareText text;

  public CompareWords(Book book, ComparedField compared) {
    this.compared = compared;
    this.text = new CompareText(book, compared, new Page());
  }

  /** Number and name of a program. */
  public String head(int i) {
    return text.head(i);
  }

  /** The names of the programs, then their figures: what, and a cell each. */
  public List<List<String>> rows() {
    return text.rows(0, compared.programs().size());
  }

  /** The weeds of the rows: those that decide; all of them where none does. */
  public List<WeedOutcome> weeds() {
    return text.weeds();
  }

  public static List<Finding> blocks(ComparedProgram p) {
    return CompareText.blocks(p);
  }
}
