package org.swathbook.measure;

/** What a unit measures. Two quantities compare only inside one dimension. */
public enum Dimension {
  LENGTH,
  MASS,
  VOLUME,
  AREA,
  DURATION,
  TEMPERATURE,
  SPEED,
  SHARE,
  GRAIN
}
