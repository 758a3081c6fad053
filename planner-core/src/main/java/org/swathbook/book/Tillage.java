package org.swathbook.book;

/** Whether the soil is worked at planting. */
public enum Tillage {
  NO_TILL,
  TILLED
}
