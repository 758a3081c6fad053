package org.swathbook.cli.report;

import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.plan.Effort;
import org.swathbook.plan.keep.Kept;
import org.swathbook.plan.keep.KeptWithout;

/**
 * A field whose written program is kept as far as may be.
 *
 * @param asked the word by which the program was named
 * @param without what was asked without which it could be kept, where it cannot be
 * @param effort asked of the new plan beside it
 */
public record KeptField(
    Field field, String asked, Kept kept, List<KeptWithout> without, Effort effort) {

  public KeptField {
    without = List.copyOf(without);
  }

  /** Whether no change was found that makes a legal program with all that is asked. */
  public boolean isRefused() {
    return kept.programs().isEmpty();
  }
}
