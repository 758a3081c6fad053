package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.catalog.Catalog;

/**
 * A catalog together with its entries as they are written.
 *
 * @param entries by kind and id; of two files of the same entry the one that counts
 */
public record WrittenCatalog(Catalog catalog, List<WrittenEntry> entries) {

  public WrittenCatalog {
    entries = List.copyOf(entries);
  }

  static WrittenCatalog of(Catalog catalog, List<CatalogFile> files) {
    TreeMap<String, CatalogFile> byPath = new TreeMap<>();
    files.forEach(f -> byPath.put(f.path(), f));
    List<WrittenEntry> entries = new ArrayList<>();
    for (CatalogFile f : byPath.values()) {
      EntryKind.ofFolder(f.folder()).ifPresent(kind -> entries.add(EntryWalk.entry(kind, f)));
    }
    return new WrittenCatalog(catalog, entries);
  }

  public List<WrittenEntry> of(EntryKind kind) {
    return entries.stream().filter(e -> e.kind() == kind).toList();
  }

  public Optional<WrittenEntry> find(EntryKind kind, String id) {
    return entries.stream().filter(e -> e.kind() == kind && e.id().equals(id)).findFirst();
  }
}
