package org.swathbook.catalog;

import java.util.Arrays;
import java.util.Optional;

/** Droplet classes of ANSI/ASABE S572 from the finest to the coarsest. */
public enum DropletClass {
  EXTREMELY_FINE("extremely fine"),
  VERY_FINE("very fine"),
  FINE("fine"),
  MEDIUM("medium"),
  COARSE("coarse"),
  VERY_COARSE("very coarse"),
  EXTREMELY_COARSE("extremely coarse"),
  ULTRA_COARSE("ultra coarse");

  private final String spelling;

  DropletClass(String spelling) {
    this.spelling = spelling;
  }

  public String spelling() {
    return spelling;
  }

  public static Optional<DropletClass> find(String text) {
    String wanted = Slug.of(text).replace('-', ' ');
    return Arrays.stream(values()).filter(c -> c.spelling.equals(wanted)).findFirst();
  }

  @Override
  public String toString() {
    return spelling;
  }
}
