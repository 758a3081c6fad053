package org.swathbook.catalog;

/** Where in the season of a crop a use belongs. */
public enum Position {
  BURNDOWN("burndown"),
  PREPLANT("preplant"),
  PRE("pre"),
  POST("post"),
  LAY_BY("lay-by"),
  STUBBLE("stubble"),
  FALL("fall"),
  HARVEST_AID("harvest-aid");

  private final String spelling;

  Position(String spelling) {
    this.spelling = spelling;
  }

  public String spelling() {
    return spelling;
  }

  /** Before the crop is up, over the crop, or when no crop stands. */
  public Phase phase() {
    return switch (this) {
      case BURNDOWN, PREPLANT, PRE -> Phase.BEFORE_EMERGENCE;
      case POST, LAY_BY, HARVEST_AID -> Phase.IN_CROP;
      case STUBBLE, FALL -> Phase.AFTER_HARVEST;
    };
  }

  /** The three times in the life of a crop between which uses differ. */
  public enum Phase {
    BEFORE_EMERGENCE,
    IN_CROP,
    AFTER_HARVEST
  }
}
