package org.swathbook.catalog;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Where a value comes from: a citation, {@code from memory}, or {@code default} for a value of our
 * own.
 */
public record Source(String text) {

  public static final Source FROM_MEMORY = new Source("from memory");

  /** A value whose keeper named no source. */
  public static final Source NOT_GIVEN = new Source("source not given");

  /** What stands behind a value. */
  public enum Kind {
    PUBLISHED("published"),
    MEMORY("from memory"),
    PRACTICE("common practice"),
    DEFAULT("our default"),
    INVENTED("invented"),
    NOT_GIVEN("not given");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** By the words that the text begins with; a text that begins otherwise is a citation. */
  public Kind kind() {
    String t = text.toLowerCase(Locale.ROOT);
    if (t.isBlank() || equals(NOT_GIVEN)) {
      return Kind.NOT_GIVEN;
    }
    if (fromMemory()) {
      return Kind.MEMORY;
    }
    if (isDefault()) {
      return Kind.DEFAULT;
    }
    if (t.startsWith("common practice")) {
      return Kind.PRACTICE;
    }
    return t.startsWith("invented") ? Kind.INVENTED : Kind.PUBLISHED;
  }

  public boolean fromMemory() {
    return text.toLowerCase(Locale.ROOT).startsWith("from memory");
  }

  public boolean isDefault() {
    return text.toLowerCase(Locale.ROOT).startsWith("default");
  }

  // Written out, as in every key that is hashed at a start: see IngredientId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Source o && text.equals(o.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
