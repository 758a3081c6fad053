package org.swathbook.catalog;

/** How an active moves in the plant, which decides how hard it sets back what lives through it. */
public enum Movement {
  CONTACT,
  XYLEM,
  SYSTEMIC,
  SHOOT
}
