package org.swathbook.catalog;

import java.util.Arrays;
import java.util.Optional;

/**
 * USDA texture classes with the three groups that labels use where they name no grouping of their
 * own, and the water contents of the FAO-56 evaporation layer.
 *
 * <p>Field capacity and wilting point (m³/m³) and readily evaporable water (mm): FAO-56 Table 19,
 * mid values, from memory; classes that the table lacks take the nearest one that it has.
 */
public enum SoilTexture {
  SAND("sand", Group.COARSE, 0.12, 0.045, 5),
  LOAMY_SAND("loamy sand", Group.COARSE, 0.15, 0.07, 6),
  SANDY_LOAM("sandy loam", Group.COARSE, 0.23, 0.11, 7),
  LOAM("loam", Group.MEDIUM, 0.25, 0.12, 9),
  SILT_LOAM("silt loam", Group.MEDIUM, 0.29, 0.15, 9),
  SILT("silt", Group.MEDIUM, 0.32, 0.17, 9),
  SANDY_CLAY_LOAM("sandy clay loam", Group.MEDIUM, 0.25, 0.12, 9),
  CLAY_LOAM("clay loam", Group.FINE, 0.33, 0.20, 10),
  SILTY_CLAY_LOAM("silty clay loam", Group.FINE, 0.33, 0.20, 10),
  SANDY_CLAY("sandy clay", Group.FINE, 0.33, 0.20, 10),
  SILTY_CLAY("silty clay", Group.FINE, 0.36, 0.22, 10),
  CLAY("clay", Group.FINE, 0.36, 0.22, 10);

  /** Coarse, medium or fine. */
  public enum Group {
    COARSE,
    MEDIUM,
    FINE
  }

  private final String spelling;
  private final Group group;
  private final double fieldCapacity;
  private final double wiltingPoint;
  private final double readilyEvaporableMm;

  SoilTexture(
      String spelling,
      Group group,
      double fieldCapacity,
      double wiltingPoint,
      double readilyEvaporableMm) {
    this.spelling = spelling;
    this.group = group;
    this.fieldCapacity = fieldCapacity;
    this.wiltingPoint = wiltingPoint;
    this.readilyEvaporableMm = readilyEvaporableMm;
  }

  public String spelling() {
    return spelling;
  }

  public Group group() {
    return group;
  }

  public double fieldCapacity() {
    return fieldCapacity;
  }

  public double wiltingPoint() {
    return wiltingPoint;
  }

  public double readilyEvaporableMm() {
    return readilyEvaporableMm;
  }

  public static Optional<SoilTexture> find(String text) {
    String wanted = Slug.of(text).replace('-', ' ');
    return Arrays.stream(values()).filter(t -> t.spelling.equals(wanted)).findFirst();
  }

  @Override
  public String toString() {
    return spelling;
  }
}
