package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.swathbook.catalog.Catalog;

/** A catalog that is written and read again is the one that it was, and is written the same. */
class CatalogRoundTripProperties {

  @Property
  void aCatalogReadsBackTheSame(@ForAll("catalogs") Catalog catalog) {
    Map<String, String> files = CatalogWriter.write(catalog);
    Catalog read = WrittenFiles.read(files, false);
    WrittenFiles.assertSame(read, catalog);
    Map<String, String> again = CatalogWriter.write(read);
    assertThat(again.keySet()).isEqualTo(files.keySet());
    again.forEach((path, text) -> assertThat(text).as(path).isEqualTo(files.get(path)));
  }

  @Tag("slow")
  @Property(tries = 3000)
  void manyCatalogsReadBackTheSame(@ForAll("catalogs") Catalog catalog) {
    aCatalogReadsBackTheSame(catalog);
  }

  @Provide
  Arbitrary<Catalog> catalogs() {
    return CatalogArbitraries.catalogs();
  }
}
