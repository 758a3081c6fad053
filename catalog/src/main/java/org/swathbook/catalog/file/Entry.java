package org.swathbook.catalog.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** What the readers of all kinds need of one file: its keys, its sources, where problems go. */
final class Entry {
  private static final LocalDate NEVER = LocalDate.EPOCH;

  private final CatalogFile file;
  private final MapReader map;
  private final Sources sources;
  private final int problemsBefore;
  private final Map<String, Source> further = new LinkedHashMap<>();

  Entry(CatalogFile file, MapReader map, String format) {
    this.file = file;
    this.map = map;
    this.problemsBefore = map.problems().count();
    this.sources = new Sources(map, file.starter());
    checkFormat(map, format);
  }

  /** A problem when the file is of another kind, or of a version that is not known here. */
  static void checkFormat(MapReader map, String format) {
    TextParser<String> parser =
        text -> {
          if (!text.strip().equalsIgnoreCase(format)) {
            throw new MeasureException(
                "'" + text + "' is not the format of this file; write '" + format + "'");
          }
          return format;
        };
    map.require("format", parser, format, format);
  }

  MapReader map() {
    return map;
  }

  Problems problems() {
    return map.problems();
  }

  boolean isSound() {
    return problems().count() == problemsBefore;
  }

  /** A problem when the file does not bear the name of what it holds. */
  void checkFileName(String key, String id) {
    if (!file.stem().equals(id) && isSound()) {
      problems()
          .add(
              map.mark(key),
              "the file " + file.stem() + ".yaml holds '" + id + "'",
              "name it " + id + ".yaml, or correct '" + key + "'");
    }
  }

  LocalDate reviewed() {
    return map.require("reviewed", Texts::date, "2026-11-01", NEVER);
  }

  Source source(Place place, Mark mark) {
    return sources.of(place, mark);
  }

  /** Keeps the sources of values that carry none of their own. */
  void keepSources(MapReader in, Place place, String... keys) {
    for (String key : keys) {
      if (in.node().find(key).isPresent()) {
        keepSource(place.then(key), in.mark(key));
      }
    }
  }

  void keepSource(Place place, Mark mark) {
    further.put(place.path(), source(place, mark));
  }

  /** The sources kept so far, by path. */
  Map<String, Source> kept() {
    return further;
  }

  /** The three answers: key missing, {@code none}, or a value that the reader makes. */
  <T> Stated<T> stated(
      MapReader in, String key, Place holder, String what, Function<Node, Optional<T>> reader) {
    Optional<Node> node = in.find(key);
    if (node.isEmpty()) {
      return Stated.unknown(what);
    }
    Source source = source(holder.then(key), node.get().mark());
    if (isNone(node.get())) {
      return Stated.none(source);
    }
    return reader
        .apply(node.get())
        .map(v -> Stated.value(v, source))
        .orElseGet(() -> Stated.unknown(what));
  }

  /** The same for a single value. */
  <T> Stated<T> stated(
      MapReader in, String key, Place holder, String what, TextParser<T> parser, String example) {
    return stated(in, key, holder, what, scalar(parser, example));
  }

  <T> Function<Node, Optional<T>> scalar(TextParser<T> parser, String example) {
    return node -> MapReader.scalar(node, parser, example, problems());
  }

  /** A map of keys read by a function; unknown keys are problems. */
  <T> Function<Node, Optional<T>> map(String example, Function<MapReader, Optional<T>> reader) {
    return node ->
        MapReader.of(node, example, problems())
            .flatMap(
                m -> {
                  Optional<T> value = reader.apply(m);
                  m.done();
                  return value;
                });
  }

  /** The rows of a table written as a list; a single row may stand without one. */
  <T> Optional<List<T>> rows(Node node, String example, Function<MapReader, Optional<T>> reader) {
    List<T> out = new ArrayList<>();
    for (Node item : MapReader.itemsOf(node, example, problems())) {
      map(example, reader).apply(item).ifPresent(out::add);
    }
    return Optional.of(out);
  }

  /** Other names; the list may be empty. */
  List<String> aliases() {
    List<String> out = new ArrayList<>();
    for (Node item : map.findList("aliases", "[another name]")) {
      MapReader.scalar(item, Texts::text, "another name", problems()).ifPresent(out::add);
    }
    return out;
  }

  static boolean isNone(Node node) {
    return node instanceof ScalarNode s && s.text().equals("none");
  }
}
