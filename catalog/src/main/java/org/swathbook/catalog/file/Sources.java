package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * something that holds it; of two as long, the first.
 */
final class Sources {
  private static final String EXAMPLE = "- {for: [all], source: from memory}";

  private record Line(List<String> path, Source source) {}

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
  }

  private void read(MapReader line, MapNode entry) {
    String text = line.require("source", Texts::text, "from memory", Source.FROM_MEMORY.text());
    Optional<Node> paths = line.require("for", "[all]");
    line.done();
    if (paths.isEmpty()) {
      return;
    }
    List<Node> items = paths.get() instanceof ListNode l ? l.items() : List.of(paths.get());
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
                lines.add(new Line(steps, new Source(text)));
              });
    }
  }

  private static boolean names(MapNode entry, List<String> path) {
    if (path.isEmpty() || !path.get(0).equals("uses")) {
      return holds(entry, path);
    }
    List<String> rest = path.subList(1, path.size());
    return entry.find("uses").filter(u -> u instanceof ListNode).stream()
        .flatMap(u -> ((ListNode) u).items().stream())
        .anyMatch(use -> use instanceof MapNode m && isInUse(m, rest));
  }

  private static boolean isInUse(MapNode use, List<String> path) {
    int at = 0;
    if (at < path.size() && words(use, "crop").contains(Slug.of(path.get(at)))) {
      at++;
    }
    if (at < path.size() && words(use, "position").contains(path.get(at))) {
      at++;
    }
    return holds(use, path.subList(at, path.size()));
  }

  private static List<String> words(MapNode use, String key) {
    Optional<Node> found = use.find(key);
    if (found.isEmpty()) {
      return List.of();
    }
    List<Node> items = found.get() instanceof ListNode l ? l.items() : List.of(found.get());
    return items.stream()
        .filter(n -> n instanceof ScalarNode)
        .map(n -> Slug.of(((ScalarNode) n).text()))
        .toList();
  }

  private static boolean holds(Node node, List<String> path) {
    if (path.isEmpty()) {
      return true;
    }
    if (node instanceof MapNode map) {
      return map.find(path.get(0)).filter(v -> holds(v, path.subList(1, path.size()))).isPresent();
    }
    return node instanceof ListNode list
        && list.items().stream().anyMatch(item -> holds(item, path));
  }

  /** The source of the value at a place. */
  Source of(Place place, Mark mark) {
    Optional<Line> best = Optional.empty();
    for (Line line : lines) {
      boolean longer = best.isEmpty() || line.path().size() > best.get().path().size();
      if (longer && place.isUnder(line.path())) {
        best = Optional.of(line);
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
