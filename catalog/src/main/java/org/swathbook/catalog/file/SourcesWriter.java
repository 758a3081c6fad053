package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Source;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/**
 * Gathers the source of every value of an entry and says it in few lines: the commonest for all,
 * that of a whole block where most of the block has it, and every other one for its own paths.
 * Since the longest path wins, a line for a block is taken back by longer ones.
 */
final class SourcesWriter {
  private static final KeyPath USES = KeyPath.ROOT.then("uses");

  /** A place in the entry with its source, if it has one, and with what lies below it. */
  private record Spot(Optional<Source> own, Map<String, Spot> below) {

    boolean isEmpty() {
      return own.isEmpty() && below.isEmpty();
    }

    /** How often each source stands here and below, the first met first. */
    void count(Map<Source, Integer> counts) {
      own.ifPresent(s -> counts.merge(s, 1, Integer::sum));
      below.values().forEach(s -> s.count(counts));
    }
  }

  private final Map<KeyPath, Source> sources = new HashMap<>();
  private final Map<Source, List<String>> lines = new LinkedHashMap<>();

  /** The value under these keys has this source. */
  void add(KeyPath path, Source source) {
    sources.put(path, source);
  }

  /** The lines of {@code sources}, in the order of the entry's keys; paths that lead nowhere go. */
  ListNode lines(MapNode entry) {
    lines.clear();
    Spot root = spot(entry, KeyPath.ROOT);
    Source most = commonest(root, Source.NOT_GIVEN, 0);
    if (!most.equals(Source.NOT_GIVEN)) {
      line(most, "all");
    }
    root.below().forEach((key, spot) -> write(spot, KeyPath.ROOT.then(key), most));
    return MapWriter.list(
        lines.entrySet().stream()
            .map(
                e ->
                    new MapWriter()
                        .put("for", MapWriter.list(texts(e.getValue())))
                        .put("source", e.getKey().text())
                        .node())
            .toList());
  }

  private Spot spot(Node node, KeyPath path) {
    Map<String, Spot> below = new LinkedHashMap<>();
    if (node instanceof MapNode map) {
      map.entries().forEach(e -> below.put(e.key(), spot(e.value(), path.then(e.key()))));
    } else if (node instanceof ListNode list) {
      for (Node item : list.items()) {
        String number = Integer.toString(below.size() + 1);
        below.put(number, spot(item, path.then(number)));
      }
    }
    below.values().removeIf(Spot::isEmpty);
    return new Spot(Optional.ofNullable(sources.get(path)), below);
  }

  private static List<ScalarNode> texts(List<String> paths) {
    return paths.stream().map(MapWriter::scalar).toList();
  }

  private void write(Spot spot, KeyPath path, Source inherited) {
    // Uses have nothing in common; a line for another block costs one path itself.
    Source here =
        path.equals(USES) ? inherited : spot.own().orElseGet(() -> commonest(spot, inherited, 1));
    if (!here.equals(inherited)) {
      line(here, path.toString());
    }
    spot.below().forEach((key, s) -> write(s, path.then(key), here));
  }

  private void line(Source source, String path) {
    lines.computeIfAbsent(source, s -> new ArrayList<>()).add(path);
  }

  /** The source that most values have, unless the inherited one has nearly as many. */
  private static Source commonest(Spot spot, Source inherited, int cost) {
    Map<Source, Integer> counts = new LinkedHashMap<>();
    spot.count(counts);
    Source best = inherited;
    int most = counts.getOrDefault(inherited, 0) + cost;
    for (Map.Entry<Source, Integer> e : counts.entrySet()) {
      if (e.getValue() > most) {
        best = e.getKey();
        most = e.getValue();
      }
    }
    return best;
  }
}
