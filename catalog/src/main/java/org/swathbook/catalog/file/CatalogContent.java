package org.swathbook.catalog.file;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Names and bytes of the files of a catalog, equal when every byte is. */
final class CatalogContent {
  private final List<CatalogFile> files;
  private final int hash;

  CatalogContent(List<CatalogFile> files) {
    this.files = List.copyOf(files);
    int h = 0;
    for (CatalogFile f : files) {
      h = 31 * (31 * h + f.shown().hashCode()) + Arrays.hashCode(f.content());
    }
    this.hash = h;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof CatalogContent that)
        || hash != that.hash
        || files.size() != that.files.size()) {
      return false;
    }
    for (int i = 0; i < files.size(); i++) {
      CatalogFile a = files.get(i);
      CatalogFile b = that.files.get(i);
      if (!a.shown().equals(b.shown())
          || a.starter() != b.starter()
          || !Arrays.equals(a.content(), b.content())) {
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
