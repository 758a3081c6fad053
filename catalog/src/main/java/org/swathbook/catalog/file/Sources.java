package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;

/**
 * The sources of an entry. A value takes the source with the longest path that names it or
 * something that holds it; of two as long, the first. The number of a use stands for its crop and
 * its position and is as long as both.
 */
final class Sources {
  private static final String EXAMPLE = "- {for: [all], source: from memory}";

  private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");

  /** A path as text, how many steps it has, and the source of what it names. */
  private record Line(String path, int length, Source source) {

    static Line of(List<String> steps, Source source) {
      boolean numbered =
          steps.size() > 1 && steps.get(0).equals("uses") && NUMBER.matcher(steps.get(1)).matches();
      return new Line(String.join(".", steps), numbered ? steps.size() + 1 : steps.size(), source);
    }
  }

  private final boolean needed;
  private final Problems problems;
  private final List<Line> lines = new ArrayList<>();

  /**
   * Takes the key {@code sources} of an entry.
   *
   * @param needed whether a value without a source is a problem
   */
  Sources(MapReader entry, boolean needed) {
    this.needed = needed;
    this.problems = entry.problems();
    for (Node item : entry.findList("sources", EXAMPLE)) {
      MapReader.of(item, EXAMPLE, problems).ifPresent(m -> read(m, entry.node()));
    }
    lines.sort(Comparator.comparingInt(Line::length).reversed());
  }

  private void read(MapReader line, MapNode entry) {
    String text = line.require("source", Texts::text, "from memory", Source.FROM_MEMORY.text());
    Optional<Node> paths = line.require("for", "[all]");
    line.done();
    if (paths.isEmpty()) {
      return;
    }
    List<Node> items = MapReader.oneOrMore(paths.get());
    for (Node item : items) {
      MapReader.scalar(item, Texts::text, "soil.halfLife", problems)
          .ifPresent(
              path -> {
                List<String> steps =
                    path.equals("all") ? List.of() : List.of(path.split("\\.", -1));
                if (!names(entry, steps)) {
                  problems.add(
                      item.mark(),
                      "the path '" + path + "' leads to nothing that stands in this file",
                      "write the keys that lead to a value, joined by dots, or 'all'");
                }
                lines.add(Line.of(steps, new Source(text)));
              });
    }
  }

  private static boolean names(MapNode entry, List<String> path) {
    if (path.isEmpty() || !path.get(0).equals("uses")) {
      return holds(entry, path);
    }
    List<String> rest = path.subList(1, path.size());
    List<Node> uses =
        entry.find("uses").orElse(null) instanceof ListNode list ? list.items() : List.of();
    for (int i = 0; i < uses.size(); i++) {
      if (uses.get(i) instanceof MapNode use && isInUse(use, i + 1, rest)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isInUse(MapNode use, int number, List<String> path) {
    List<String> crops = new ArrayList<>(words(use, "crop"));
    crops.add(Integer.toString(number));
    List<String> rest = after(crops, path);
    return holds(use, after(words(use, "position"), rest));
  }

  /** The path behind the first of the names that it starts with; all of it when with none. */
  private static List<String> after(List<String> names, List<String> path) {
    for (int end = 1; end <= path.size(); end++) {
      if (names.contains(String.join(".", path.subList(0, end)))) {
        return path.subList(end, path.size());
      }
    }
    return path;
  }

  private static List<String> words(MapNode use, String key) {
    return texts(use, key).stream().map(Slug::of).toList();
  }

  /** The value or values under a key as text; what is no single value is left out. */
  static List<String> texts(MapNode map, String key) {
    return map.find(key).map(MapReader::oneOrMore).orElse(List.of()).stream()
        .filter(n -> n instanceof ScalarNode)
        .map(n -> ((ScalarNode) n).text())
        .toList();
  }

  private static boolean holds(Node node, List<String> path) {
    if (path.isEmpty()) {
      return true;
    }
    if (node instanceof MapNode map) {
      return map.entries().stream().anyMatch(e -> holds(e, path));
    }
    return node instanceof ListNode list
        && list.items().stream().anyMatch(item -> holds(item, path));
  }

  /** A key may hold dots of its own. */
  private static boolean holds(MapNode.Entry entry, List<String> path) {
    int parts = (int) entry.key().chars().filter(c -> c == '.').count() + 1;
    return parts <= path.size()
        && String.join(".", path.subList(0, parts)).equals(entry.key())
        && holds(entry.value(), path.subList(parts, path.size()));
  }

  /** The source of the value at a place. */
  Source of(Place place, Mark mark) {
    // The lines stand by length, so the first that leads here is the longest.
    Optional<Line> best = Optional.empty();
    for (Line line : lines) {
      if (place.isUnder(line.path())) {
        best = Optional.of(line);
        break;
      }
    }
    if (best.isEmpty() && needed) {
      problems.add(
          mark,
          "'" + place + "' has no source",
          "add it under sources, as '{for: [" + place + "], source: from memory}'");
    }
    return best.map(Line::source).orElse(Source.NOT_GIVEN);
  }
}
