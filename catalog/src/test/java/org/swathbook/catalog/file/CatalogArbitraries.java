package org.swathbook.catalog.file;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.swathbook.catalog.Catalog;

/**
 * Random catalogs that a reader could have made: crops with stages, ingredients with uses, rows by
 * soil, bands, caps, terms and rotation, liquid and dry products and premixes, weeds, responses and
 * interactions.
 */
final class CatalogArbitraries {
  private CatalogArbitraries() {}

  static Arbitrary<Catalog> catalogs() {
    return Arbitraries.randomValue(RandomCatalog::of);
  }
}
