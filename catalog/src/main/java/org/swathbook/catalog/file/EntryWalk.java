package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problems;

/** Takes a file apart into values, each with its source. */
final class EntryWalk {
  /** Keys that say how the file is kept, not what the entry is. */
  private static final Set<String> KEEPING = Set.of("format", "sources", "reviewed");

  /** Keys that only hold values together; each key below them is a value of its own. */
  private static final Set<String> HOLDERS =
      Set.of(
          "soil",
          "tank",
          "day",
          "carrier",
          "setback",
          "intervals",
          "rotation",
          "emergence",
          "height",
          "competition",
          "seed",
          "stages",
          "heights",
          "bbch");

  private final Sources sources;

  private EntryWalk(MapNode keys) {
    this.sources = new Sources(new MapReader(keys, new Problems()), false);
  }

  static WrittenEntry entry(EntryKind kind, CatalogFile file) {
    MapNode keys = file.keys();
    return new WrittenEntry(
        kind, file.stem(), file.starter(), keys.mark(), keys, new EntryWalk(keys).groups(keys));
  }

  private List<WrittenGroup> groups(MapNode keys) {
    List<WrittenGroup> groups = new ArrayList<>();
    List<WrittenValue> whole = new ArrayList<>();
    for (MapNode.Entry e : keys.entries()) {
      if (e.key().equals("uses") && e.value() instanceof ListNode uses) {
        for (int i = 0; i < uses.items().size(); i++) {
          if (uses.items().get(i) instanceof MapNode m) {
            groups.add(use(i + 1, m));
          }
        }
      } else if (!KEEPING.contains(e.key())) {
        values(e, "", Place.ROOT, whole);
      }
    }
    groups.add(0, new WrittenGroup("", keys.mark(), whole));
    return groups;
  }

  private WrittenGroup use(int number, MapNode use) {
    List<String> positions = Sources.texts(use, "position");
    String crop = String.join(" ", Sources.texts(use, "crop"));
    Place place = Place.ofUse(number, Slug.of(crop), positions);
    List<WrittenValue> values = new ArrayList<>();
    for (MapNode.Entry e : use.entries()) {
      if (!Set.of("crop", "position").contains(e.key())) {
        values(e, "", place, values);
      }
    }
    String name = crop + ", " + String.join(" or ", positions);
    return new WrittenGroup(name, use.mark(), values);
  }

  private void values(MapNode.Entry e, String before, Place holder, List<WrittenValue> into) {
    Place place = holder.then(e.key());
    if (HOLDERS.contains(e.key()) && e.value() instanceof MapNode inner) {
      for (MapNode.Entry below : inner.entries()) {
        values(below, before + e.key() + ".", place, into);
      }
    } else {
      Source source = sources.of(place, e.value().mark());
      into.add(new WrittenValue(before + e.key(), e.value(), source));
    }
  }
}
