package org.swathbook.model;

/** Where in the reference a model stands. */
public enum ModelSection {
  WEATHER,
  CROP,
  WEEDS,
  SOIL_AGE,
  SOIL,
  LEAVES,
  MIXES,
  COST
}
