package org.swathbook.cli.report;

import org.swathbook.book.Field;
import org.swathbook.plan.keep.Kept;

/**
 * A field whose written program is kept as far as may be.
 *
 * @param asked the word by which the program was named
 */
public record KeptField(Field field, String asked, Kept kept) {

  public static KeptField of(String asked, Field field, Kept kept) {
    return new KeptField(field, asked, kept);
  }

  /** Whether no change was found that makes a legal program with all that is asked. */
  public boolean isRefused() {
    return kept.programs().isEmpty();
  }
}
