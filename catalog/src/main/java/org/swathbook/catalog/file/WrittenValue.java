package org.swathbook.catalog.file;

import org.swathbook.catalog.Source;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;

/**
 * One value of an entry.
 *
 * @param key the keys that lead to it within its group, joined by dots, {@code soil.halfLife}
 * @param node what stands there
 */
public record WrittenValue(String key, Node node, Source source) {

  /** A remark says nothing that could be published or wrong, and needs no source. */
  public boolean isRemark() {
    return key.equals("note");
  }

  public Mark mark() {
    return node.mark();
  }

  /** What stands there, on one line for people. */
  public String text() {
    return NodeText.plain(node);
  }
}
