package org.swathbook.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Puts the keys of a map together, as {@link MapReader} takes them. The nodes have no place in a
 * file until {@link YamlWriter} writes them.
 */
public final class MapWriter {
  private static final Mark NOWHERE = Mark.startOf("");

  private final List<MapNode.Entry> entries = new ArrayList<>();

  /** A single value, in quotes where it needs them. */
  public static ScalarNode scalar(String text) {
    return new ScalarNode(NOWHERE, text, !YamlWriter.isPlain(text));
  }

  /**
   * A text that may be long: without quotes where a line of its own can hold it so, as with commas.
   */
  public static ScalarNode line(String text) {
    return new ScalarNode(NOWHERE, text, !YamlScalars.isPlain(text, false));
  }

  /** A single value in quotes. */
  public static ScalarNode quoted(String text) {
    return new ScalarNode(NOWHERE, text, true);
  }

  public static ListNode list(Collection<? extends Node> items) {
    return new ListNode(NOWHERE, List.copyOf(items));
  }

  /** Single values; one alone stands without a list. */
  public static Node oneOrMore(Collection<String> texts) {
    List<ScalarNode> items = texts.stream().map(MapWriter::scalar).toList();
    return items.size() == 1 ? items.get(0) : list(items);
  }

  public MapWriter put(String key, Node value) {
    entries.add(new MapNode.Entry(key, NOWHERE, value));
    return this;
  }

  public MapWriter put(String key, String text) {
    return put(key, scalar(text));
  }

  /** The key with its value, or no key for no value. */
  public MapWriter put(String key, Optional<? extends Node> value) {
    value.ifPresent(v -> put(key, v));
    return this;
  }

  /** A list of single values; no key for none. */
  public MapWriter putAll(String key, Collection<String> texts) {
    if (!texts.isEmpty()) {
      put(key, list(texts.stream().map(MapWriter::scalar).toList()));
    }
    return this;
  }

  public boolean isEmpty() {
    return entries.isEmpty();
  }

  public MapNode node() {
    return new MapNode(NOWHERE, entries);
  }
}
