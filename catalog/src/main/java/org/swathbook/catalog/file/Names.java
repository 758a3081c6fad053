package org.swathbook.catalog.file;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Slug;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapReader;
import org.swathbook.source.Nearest;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;

/**
 * Every spelling under which the entries of one kind are known. Ids of files that could not be read
 * are among them, so that one broken file does not make a stranger of everything that names it.
 *
 * @param <I> the kind of id
 */
final class Names<I extends Comparable<I>> {
  private final String kind;
  private final SortedMap<String, I> bySlug = new TreeMap<>();
  private final SortedMap<String, String> spellings = new TreeMap<>();

  /**
   * No names yet.
   *
   * @param kind in words, {@code ingredient}
   */
  Names(String kind) {
    this.kind = kind;
  }

  void add(String spelling, I id) {
    String slug = Slug.of(spelling);
    bySlug.put(slug, id);
    spellings.put(slug, slug.equals(Slug.of(id.toString())) ? id.toString() : spelling);
  }

  /** Further names, one or a list; a problem when another entry has one of them already. */
  void addAliases(Node names, I id, Problems problems) {
    List<Node> items = MapReader.oneOrMore(names);
    for (Node item : items) {
      if (item instanceof ScalarNode name && !Slug.of(name.text()).isEmpty()) {
        I holder = bySlug.putIfAbsent(Slug.of(name.text()), id);
        spellings.putIfAbsent(Slug.of(name.text()), name.text());
        if (holder != null && !holder.equals(id)) {
          problems.add(
              name.mark(),
              "the name '" + name.text() + "' already belongs to the " + kind + " " + holder,
              "keep it in one of the two");
        }
      }
    }
  }

  /** How many entries there are. */
  long count() {
    return bySlug.values().stream().distinct().count();
  }

  Optional<I> find(String spelling) {
    return Optional.ofNullable(bySlug.get(Slug.of(spelling)));
  }

  /** Reads a name that must be known. */
  TextParser<I> known() {
    return text ->
        find(text)
            .orElseThrow(
                () ->
                    new MeasureException(
                        "the catalog has no "
                            + kind
                            + " '"
                            + text
                            + "'; "
                            + Nearest.hint(text, spellings.values())));
  }
}
