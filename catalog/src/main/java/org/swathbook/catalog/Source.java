package org.swathbook.catalog;

import java.util.Locale;

/**
 * Where a value comes from: a citation, {@code from memory}, or {@code default} for a value of our
 * own.
 */
public record Source(String text) {

  public static final Source FROM_MEMORY = new Source("from memory");

  /** A value whose keeper named no source. */
  public static final Source NOT_GIVEN = new Source("source not given");

  public boolean fromMemory() {
    return text.toLowerCase(Locale.ROOT).startsWith("from memory");
  }

  public boolean isDefault() {
    return text.toLowerCase(Locale.ROOT).startsWith("default");
  }

  @Override
  public String toString() {
    return text;
  }
}
