package org.swathbook.cli.report;

import org.swathbook.book.Field;
import org.swathbook.plan.Effort;
import org.swathbook.plan.keep.Kept;

/**
 * A field whose written program is kept as far as may be.
 *
 * @param asked the word by which the program was named
 * @param effort asked of the new plan beside it
 */
public record KeptField(Field field, String asked, Kept kept, Effort effort) {

  /** Whether no change was found that makes a legal program with all that is asked. */
  public boolean isRefused() {
    return kept.programs().isEmpty();
  }
}
