package org.swathbook.measure;

/** A lowest and a highest rate in one unit; equal when only one is written. */
public record RateRange(Rate low, Rate high) {

  /** Reads {@code 0.25-0.50 lb ai/acre} or a single rate. */
  public static RateRange parse(String text) {
    Numbers.SplitRange s = Numbers.splitRange(text);
    return new RateRange(Rate.of(s.low(), s.rest(), text), Rate.of(s.high(), s.rest(), text));
  }

  @Override
  public String toString() {
    return low.amount() == high.amount()
        ? high.toString()
        : Numbers.decimals(low.amount(), 4) + "-" + high;
  }
}
