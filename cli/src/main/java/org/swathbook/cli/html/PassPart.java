package org.swathbook.cli.html;

import java.util.List;

/**
 * A pass of a program as the templates show it.
 *
 * @param number from 1
 * @param mix rows of product, rate, active and site
 * @param tank what else goes into the tank, and what it lacks
 */
public record PassPart(
    int number,
    Marked when,
    Marked timing,
    Marked money,
    List<List<Marked>> mix,
    List<String> tank,
    List<Met> met) {

  /** A weed that the pass meets. */
  public record Met(String weed, Marked standing, List<Marked> lines) {
    public Met {
      lines = List.copyOf(lines);
    }
  }

  public PassPart {
    mix = mix.stream().map(List::copyOf).toList();
    tank = List.copyOf(tank);
    met = List.copyOf(met);
  }
}
