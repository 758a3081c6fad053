package org.swathbook.source;

import java.util.List;

/** A list in the order of the file. */
public record ListNode(Mark mark, List<Node> items) implements Node {

  public ListNode {
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "a list";
  }
}
