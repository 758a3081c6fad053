package org.swathbook.catalog;

/** What a field is harvested or used for. Intervals differ between them. */
public enum Commodity {
  GRAIN,
  FORAGE,
  SILAGE,
  HAY,
  GRAZING
}
