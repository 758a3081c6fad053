package org.swathbook.source;

import java.util.List;
import java.util.Optional;

/** Keys with their values in the order of the file; no key comes twice. */
public record MapNode(Mark mark, List<Entry> entries) implements Node {

  /** A key, where it stands, and its value. */
  public record Entry(String key, Mark keyMark, Node value) {}

  public MapNode {
    entries = List.copyOf(entries);
  }

  public Optional<Node> find(String key) {
    // A plain loop: this is asked for every key of every file.
    for (Entry e : entries) {
      if (e.key().equals(key)) {
        return Optional.of(e.value());
      }
    }
    return Optional.empty();
  }

  @Override
  public String kind() {
    return "a map of keys";
  }
}
