package org.swathbook.program;

/**
 * Plants of one weed counted some days after a pass, by what they look like.
 *
 * @param areaM2 ground on which they were counted
 * @param collapsed down, stem soft at the soil line, brown inside, no new roots
 * @param stalled bent or swollen, firm, neither dying nor growing again
 * @param regrowing new upright growth, new white roots
 * @param untouched without a sign of injury
 */
public record PlantCounts(
    double areaM2, int dead, int collapsed, int stalled, int regrowing, int untouched) {

  public PlantCounts {
    if (!(areaM2 > 0)) {
      throw new IllegalArgumentException("plants are counted on some ground");
    }
    if (dead < 0 || collapsed < 0 || stalled < 0 || regrowing < 0 || untouched < 0) {
      throw new IllegalArgumentException("a count is not below zero");
    }
  }

  public int all() {
    return dead + collapsed + stalled + regrowing + untouched;
  }
}
