package org.swathbook.catalog.file;

import java.util.Set;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.source.Node;

/**
 * One value of an entry.
 *
 * @param key the keys that lead to it within its group, joined by dots, {@code soil.halfLife}
 * @param node what stands there
 */
public record WrittenValue(String key, Node node, Source source) {
  private static final Set<String> NAMING =
      Set.of(
          "name", "id", "aliases", "eppo", "latin", "rateBasis", "capGroup", "condition", "note");

  /**
   * Whether a source could stand behind it: a name or a remark is no fact, and a condition in words
   * is held against the label in every verdict.
   */
  public boolean isFact() {
    return !NAMING.contains(key);
  }

  /** What stands there, on one line for people; a site of action by its current number. */
  public String text() {
    String text = NodeText.plain(node);
    return key.equals("site") ? Site.find(text).map(Site::toString).orElse(text) : text;
  }
}
