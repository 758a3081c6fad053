package org.swathbook.growth;

/** A field's weeds by day, as {@link OutdoorModel} wrote them down. */
final class OutdoorYear {
  /** By weed: share of the season's plants that comes up on each day. */
  final double[][] emerging;

  /** By weed: °C-days of growth to the end of each day. */
  final double[][] thermal;

  OutdoorYear(int weeds, int days) {
    this.emerging = new double[weeds][];
    this.thermal = new double[weeds][];
    for (int w = 0; w < weeds; w++) {
      emerging[w] = new double[days];
      thermal[w] = new double[days];
    }
  }
}
