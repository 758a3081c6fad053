package org.swathbook.cli.text;

import java.util.List;

/**
 * One pass in words, whatever it is printed on.
 *
 * @param number from 1
 * @param when its date and how far that lies from planting
 * @param money what its products cost
 * @param timing when it is sprayed over the years, and at which crop stage
 * @param mix a row an active; product and rate stand in the first row of a product
 * @param tank what else goes into the tank, and what it lacks
 * @param met driver weeds that it meets
 */
public record PassWords(
    int number,
    String when,
    String money,
    String timing,
    List<Part> mix,
    List<String> tank,
    List<Met> met) {

  /** An active of the mix with the product that brings it. */
  public record Part(String product, String rate, String active, String site) {}

  /**
   * A weed that the pass meets.
   *
   * @param standing how many, how tall
   * @param lines sites that work on it, and the layer
   */
  public record Met(String weed, String standing, List<String> lines) {
    public Met {
      lines = List.copyOf(lines);
    }
  }

  public PassWords {
    mix = List.copyOf(mix);
    tank = List.copyOf(tank);
    met = List.copyOf(met);
  }
}
