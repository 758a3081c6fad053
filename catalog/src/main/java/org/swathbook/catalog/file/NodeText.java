package org.swathbook.catalog.file;

import java.util.stream.Collectors;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/** What a node says, on one line for people. */
public final class NodeText {
  private NodeText() {}

  /**
   * {@code upTo 0.25 lb ae/acre, days 14} for a map, {@code corn, soybean} for a list of values,
   * and rows one after the other with semicolons between.
   */
  public static String plain(Node node) {
    if (node instanceof ScalarNode s) {
      return s.text();
    }
    if (node instanceof MapNode m) {
      return m.entries().stream()
          .map(e -> e.key() + " " + inside(e.value()))
          .collect(Collectors.joining(", "));
    }
    ListNode list = (ListNode) node;
    boolean rows = list.items().stream().anyMatch(i -> !(i instanceof ScalarNode));
    return list.items().stream()
        .map(NodeText::plain)
        .collect(Collectors.joining(rows ? "; " : ", "));
  }

  private static String inside(Node node) {
    boolean apart = node instanceof MapNode || node instanceof ListNode l && l.items().size() > 1;
    return apart ? "(" + plain(node) + ")" : plain(node);
  }
}
