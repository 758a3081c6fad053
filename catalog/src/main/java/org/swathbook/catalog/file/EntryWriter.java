package org.swathbook.catalog.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** What the writers of all kinds need of one file: its sources, and the three answers. */
final class EntryWriter {
  private final SourcesWriter sources = new SourcesWriter();

  void source(KeyPath path, Source source) {
    sources.add(path, source);
  }

  /** The key with its value, with {@code none}, or no key. */
  <T> void stated(
      MapWriter into, String key, KeyPath holder, Stated<T> value, Function<T, Node> writer) {
    value
        .match(
            (v, s) -> Optional.of(writer.apply(v)),
            s -> Optional.<Node>of(MapWriter.scalar("none")),
            what -> Optional.<Node>empty())
        .ifPresent(node -> into.put(key, node));
    value.findSource().ifPresent(s -> source(holder.then(key), s));
  }

  /** The same for a value of one text. */
  <T> void text(
      MapWriter into, String key, KeyPath holder, Stated<T> value, Function<T, String> writer) {
    stated(into, key, holder, value, v -> MapWriter.scalar(writer.apply(v)));
  }

  /** A statement that can only be made in one way. */
  void only(MapWriter into, String key, KeyPath holder, Stated<Boolean> value, String phrase) {
    text(
        into,
        key,
        holder,
        value,
        said -> {
          if (!said) {
            throw new IllegalArgumentException(
                holder.then(key) + " is either '" + phrase + "' or none");
          }
          return phrase;
        });
  }

  /**
   * The lines of {@code sources} for an entry with these keys.
   *
   * @param kept sources of values that keep none of their own, by path
   */
  ListNode sources(MapNode entry, Map<String, Source> kept) {
    kept.forEach((path, s) -> source(new KeyPath(List.of(path.split("\\.", -1))), s));
    return sources.lines(entry);
  }
}
