package org.swathbook.demo;

import java.util.Random;

/**
 * Random draws that come out the same on every machine and Java release: only {@link
 * Random#nextDouble}, whose algorithm is specified, plain arithmetic and {@link StrictMath}.
 */
final class Draws {
  private final Random random;

  Draws(long seed) {
    this.random = new Random(seed);
  }

  double uniform() {
    return random.nextDouble();
  }

  /** Standard normal to a good approximation: twelve uniforms less six. */
  double normal() {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  /** Exponential with this mean. */
  double exponential(double mean) {
    return -mean * StrictMath.log(1 - random.nextDouble());
  }
}
