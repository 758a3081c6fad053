package org.swathbook.catalog.file;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a catalog is made of: whether of the starter, which never changes, and the names and bytes
 * of the files over it. Two are equal when every byte is.
 */
final class CatalogContent {
  private final boolean withStarter;
  private final List<CatalogFile> own;
  private final int hash;

  CatalogContent(boolean withStarter, List<CatalogFile> own) {
    this.withStarter = withStarter;
    this.own = List.copyOf(own);
    int h = Boolean.hashCode(withStarter);
    for (CatalogFile f : own) {
      h = 31 * (31 * h + f.shown().hashCode()) + Arrays.hashCode(f.content());
    }
    this.hash = h;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof CatalogContent that)
        || hash != that.hash
        || withStarter != that.withStarter
        || own.size() != that.own.size()) {
      return false;
    }
    for (int i = 0; i < own.size(); i++) {
      CatalogFile a = own.get(i);
      CatalogFile b = that.own.get(i);
      if (!a.shown().equals(b.shown()) || !Arrays.equals(a.content(), b.content())) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
