package org.swathbook.program;

/** An adjuvant by kind with its rate as written, {@code 8.5 lb/100 gal}. */
public record Adjuvant(String kind, String rate) {
  /** What is written for the rate when the catalog names none. */
  public static final String RATE_OF_THE_LABEL = "as the label says";
}
