package org.swathbook.rules;

/**
 * In how many of the weather years something is met.
 *
 * @param met years in which it is
 */
public record YearShare(int met, int years) {

  /** Share of years outside a limit above which a pass that is legal on most days is risky. */
  private static final double RISKY = 0.20;

  public boolean isMetInMost() {
    return 2 * met >= years;
  }

  /** Outside in more than one year of five. */
  public boolean isRisky() {
    return years - met > RISKY * years;
  }

  /** {@code in 3 of 10 weather years}: the years in which it is not met. */
  public String missedWords() {
    return "in " + (years - met) + " of " + years + " weather years";
  }
}
