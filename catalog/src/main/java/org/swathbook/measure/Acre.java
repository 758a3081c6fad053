package org.swathbook.measure;

/** What an acre is in other measures of land. */
public final class Acre {
  /** NIST Handbook 44, Appendix C. */
  public static final double SQUARE_FEET = 43_560;

  /** Of the international foot, as {@link Unit#ACRE} has it. */
  public static final double SQUARE_METERS = Unit.ACRE.toSi(1);

  private Acre() {}
}
