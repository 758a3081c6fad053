package org.swathbook.source;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.measure.MeasureException;

/**
 * Takes the keys of a map one by one; what is left at {@link #done} is unknown and a problem with
 * the nearest key that was asked for. A value that cannot be read is a problem too, and reading
 * goes on with a stand-in, so that one run finds them all; the caller compares {@link
 * Problems#count} before and after and throws its result away when anything was found.
 */
public final class MapReader {
  private final MapNode node;
  private final Problems problems;
  private final Set<String> asked = new LinkedHashSet<>();

  public MapReader(MapNode node, Problems problems) {
    this.node = node;
    this.problems = problems;
  }

  /** The reader of a node that must be a map; empty, with a problem, when it is none. */
  public static Optional<MapReader> of(Node node, String example, Problems problems) {
    if (node instanceof MapNode map) {
      return Optional.of(new MapReader(map, problems));
    }
    problems.add(node.mark(), "here stands " + node.kind(), "write '" + example + "'");
    return Optional.empty();
  }

  public Mark mark() {
    return node.mark();
  }

  /** Place of a key's value, or of the map when it has no such key. */
  public Mark mark(String key) {
    return node.find(key).map(Node::mark).orElse(node.mark());
  }

  public Problems problems() {
    return problems;
  }

  public MapNode node() {
    return node;
  }

  /** Whether the key is written; this counts as asking for it. */
  public boolean has(String key) {
    return find(key).isPresent();
  }

  /** The value of a key, read or not. */
  public Optional<Node> find(String key) {
    asked.add(key);
    return node.find(key);
  }

  /** The value of a key that must be there. */
  public Optional<Node> require(String key, String example) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      problems.add(
          node.mark(), "the key '" + key + "' is missing", "write '" + key + ": " + example + "'");
    }
    return found;
  }

  /** A single value read by a parser; empty when the key is missing or its value has a problem. */
  public <T> Optional<T> find(String key, TextParser<T> parser, String example) {
    return find(key).flatMap(n -> scalar(n, parser, example, problems));
  }

  /** The value of a key that holds a number, or a measure that is kept in one unit. */
  public OptionalDouble findNumber(String key, TextParser<Double> parser, String example) {
    Optional<Double> value = find(key, parser, example);
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /** A single value that must be there; empty when it is missing or has a problem. */
  public <T> Optional<T> require(String key, TextParser<T> parser, String example) {
    return require(key, example).flatMap(n -> scalar(n, parser, example, problems));
  }

  /** The same with a stand-in for what is missing or has a problem. */
  public <T> T require(String key, TextParser<T> parser, String example, T standIn) {
    return require(key, parser, example).orElse(standIn);
  }

  /** The map under a key. */
  public Optional<MapReader> findMap(String key, String example) {
    return find(key).flatMap(n -> of(n, example, problems));
  }

  /** The map under a key that must be there. */
  public Optional<MapReader> requireMap(String key, String example) {
    return require(key, example).flatMap(n -> of(n, example, problems));
  }

  /** The items under a key; none when the key is missing. */
  public List<Node> findList(String key, String example) {
    return find(key).map(n -> items(n, example)).orElse(List.of());
  }

  /** The items under a key that must be there. */
  public List<Node> requireList(String key, String example) {
    return require(key, example).map(n -> items(n, example)).orElse(List.of());
  }

  private List<Node> items(Node n, String example) {
    if (n instanceof ListNode list) {
      return list.items();
    }
    problems.add(n.mark(), "here stands " + n.kind(), "write a list, as '" + example + "'");
    return List.of();
  }

  /** One value or a list of values under a key, each read by the parser; none when missing. */
  public <T> List<T> findAll(String key, TextParser<T> parser, String example) {
    return find(key).map(n -> all(n, parser, example, problems)).orElse(List.of());
  }

  /** One value or a list of values; a list without any is a problem. */
  public static <T> List<T> all(
      Node node, TextParser<T> parser, String example, Problems problems) {
    List<Node> items = itemsOf(node, example, problems);
    List<T> out = new ArrayList<>();
    items.forEach(i -> scalar(i, parser, example, problems).ifPresent(out::add));
    return out;
  }

  /** The items of a list, or the one thing that stands in its place. */
  public static List<Node> oneOrMore(Node node) {
    return node instanceof ListNode list ? list.items() : List.of(node);
  }

  /** The same, where none is a problem. */
  public static List<Node> itemsOf(Node node, String example, Problems problems) {
    if (node instanceof ListNode list && list.items().isEmpty()) {
      problems.add(
          node.mark(),
          "the list is empty",
          "write for example '" + example + "', or no key at all");
    }
    return oneOrMore(node);
  }

  /** A single value read by a parser; a problem of the parser gets the node's place. */
  public static <T> Optional<T> scalar(
      Node node, TextParser<T> parser, String example, Problems problems) {
    if (!(node instanceof ScalarNode scalar) || scalar.text().isBlank()) {
      String kind = node instanceof ScalarNode ? "nothing" : node.kind();
      problems.add(node.mark(), "here stands " + kind, "write for example '" + example + "'");
      return Optional.empty();
    }
    return cell(new Cell(scalar.mark(), scalar.text()), parser, example, problems);
  }

  /** The same for a cell of a table. */
  public static <T> Optional<T> cell(
      Cell cell, TextParser<T> parser, String example, Problems problems) {
    try {
      return Optional.of(parser.parse(cell.text()));
    } catch (MeasureException e) {
      problems.add(cell.mark(), e, example);
      return Optional.empty();
    }
  }

  /** The keys nobody asked for become problems. */
  public void done() {
    for (MapNode.Entry e : node.entries()) {
      if (!asked.contains(e.key())) {
        problems.add(
            e.keyMark(),
            "the key '" + e.key() + "' is not known here",
            Nearest.hint(e.key(), asked));
      }
    }
  }
}
