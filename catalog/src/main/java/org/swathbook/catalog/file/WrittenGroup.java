package org.swathbook.catalog.file;

import java.util.List;
import org.swathbook.source.Mark;

/**
 * Values of an entry that belong together: those of the entry as a whole, or those of one use.
 *
 * @param name empty for the entry as a whole, else for people, {@code soybean, post}
 */
public record WrittenGroup(String name, Mark mark, List<WrittenValue> values) {

  public WrittenGroup {
    values = List.copyOf(values);
  }

  public boolean isUse() {
    return !name.isEmpty();
  }

  /** Whether a value, or one below it, is written under this key. */
  public boolean has(String key) {
    return values.stream().anyMatch(v -> v.key().equals(key) || v.key().startsWith(key + "."));
  }
}
