package org.swathbook.catalog.file;

import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of entries that have a file each. */
public enum EntryKind {
  CROP("crop", "crops", CatalogPaths.CROPS),
  WEED("weed", "weeds", CatalogPaths.WEEDS),
  INGREDIENT("ingredient", "ingredients", CatalogPaths.INGREDIENTS),
  PRODUCT("product", "products", CatalogPaths.PRODUCTS);

  private final String word;
  private final String plural;
  private final String folder;

  EntryKind(String word, String plural, String folder) {
    this.word = word;
    this.plural = plural;
    this.folder = folder;
  }

  public String word() {
    return word;
  }

  public String plural() {
    return plural;
  }

  /** Place of an entry's file in a catalog, {@code weeds/amapa.yaml}. */
  public String path(String id) {
    return folder + "/" + id + ".yaml";
  }

  /** The kind whose entries lie in a folder of this name. */
  static Optional<EntryKind> ofFolder(String folder) {
    return Stream.of(values()).filter(k -> k.folder.equals(folder)).findFirst();
  }
}
