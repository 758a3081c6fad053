package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.Problems;

/** Reads what was written without a folder, and compares catalogs record by record. */
final class WrittenFiles {
  private WrittenFiles() {}

  static Catalog read(Map<String, String> files, boolean asStarter) {
    List<CatalogFile> read = new ArrayList<>();
    files.forEach(
        (path, text) ->
            read.add(CatalogFile.of(path, path, asStarter, text.getBytes(StandardCharsets.UTF_8))));
    return CatalogAssembler.assemble(read, new Problems());
  }

  /** Fails on the first record that differs, so that it is the one that is shown. */
  static void assertSame(Catalog actual, Catalog expected) {
    same(actual.crops(), expected.crops());
    same(actual.weeds(), expected.weeds());
    same(actual.ingredients(), expected.ingredients());
    same(actual.products(), expected.products());
    same(actual.responses(), expected.responses());
    same(actual.interactions(), expected.interactions());
  }

  private static <T> void same(Collection<T> actual, Collection<T> expected) {
    Iterator<T> wanted = expected.iterator();
    for (T record : actual) {
      assertThat(wanted.hasNext()).isTrue();
      assertThat(record).isEqualTo(wanted.next());
    }
    assertThat(wanted.hasNext()).isFalse();
  }
}
