package org.swathbook.catalog;

/** Kinds of weeds that labels tell apart. */
public enum WeedKind {
  BROADLEAF,
  GRASS,
  SEDGE
}
