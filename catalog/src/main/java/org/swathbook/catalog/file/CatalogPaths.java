package org.swathbook.catalog.file;

import java.util.List;

/** Names of the folders and files of a catalog. */
final class CatalogPaths {
  static final String INGREDIENTS = "ingredients";
  static final String PRODUCTS = "products";
  static final String WEEDS = "weeds";
  static final String CROPS = "crops";
  static final String RESPONSES = "responses.csv";
  static final String INTERACTIONS = "interactions.yaml";
  static final List<String> FOLDERS = List.of(CROPS, INGREDIENTS, PRODUCTS, WEEDS);

  private CatalogPaths() {}
}
