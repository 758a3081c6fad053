package org.swathbook.plan.exact;

/**
 * The linear core of a field's plan, in primitive arrays: the cheapest program whose passes take
 * enough of every driver weed, inside caps, counts, intervals and masks. Kills of doses multiply,
 * so the logs of what they leave add up; they are whole numbers here, as money is, and every solver
 * means the same to the last unit. What makes a field's real plan harder is left out: plants that
 * emerge over weeks, escapes that cost yield, and house rules about sites and layers.
 *
 * @param day days from planting, by date, rising
 * @param costCents of a dose on an acre, by option
 * @param passCents of a trip
 * @param legal by date and option: whether the dose may be sprayed on the date
 * @param partners by option: bit of each option that may stand beside it in a tank
 * @param kill by date, option and driver weed: -ln(share that survives) in millionths
 * @param need by driver weed: least sum over all doses
 * @param active by option: the active whose season it counts in
 * @param milliLb by option: its rate, thousandths of lb/acre
 * @param capMilliLb by active: most in a season
 * @param mostUses by active
 * @param leastDays by active: between two uses
 */
@SuppressWarnings("ArrayRecordComponent")
record LinearPlan(
    int[] day,
    int[] costCents,
    int passCents,
    boolean[][] legal,
    long[] partners,
    int[][][] kill,
    int[] need,
    int[] active,
    int[] milliLb,
    int[] capMilliLb,
    int[] mostUses,
    int[] leastDays,
    int maxPasses,
    int maxProducts) {

  int dates() {
    return day.length;
  }

  int options() {
    return costCents.length;
  }

  int weeds() {
    return need.length;
  }

  int actives() {
    return capMilliLb.length;
  }

  boolean mix(int a, int b) {
    return (partners[a] >> b & 1) != 0;
  }

  /** The same options under other needs, with another number of passes. */
  LinearPlan asking(int[] otherNeed, int passes) {
    return new LinearPlan(
        day,
        costCents,
        passCents,
        legal,
        partners,
        kill,
        otherNeed,
        active,
        milliLb,
        capMilliLb,
        mostUses,
        leastDays,
        passes,
        maxProducts);
  }
}
