package org.swathbook.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Carrier;
import org.swathbook.program.Mix;

/** A quart of the spray in a jar, to see whether it stays mixed. */
public sealed interface JarTest {

  /** Labels that forbid it. */
  record Forbidden(List<String> by) implements JarTest {
    public Forbidden {
      by = List.copyOf(by);
    }
  }

  /** One thing by itself in water meets nothing; in liquid fertilizer it meets that. */
  record NothingToTry() implements JarTest {}

  /**
   * What goes into the jar.
   *
   * @param acres of which the jar is the spray
   * @param portions in the order of mixing
   * @param carrierMl water or fertilizer; what is dry takes no room here
   */
  record Recipe(double acres, List<Portion> portions, double carrierMl) implements JarTest {
    public Recipe {
      portions = List.copyOf(portions);
    }
  }

  /**
   * One thing in the jar.
   *
   * @param amount millilitres of a liquid, grams of what is dry; empty when not known
   */
  record Portion(String what, Optional<Quantity> amount) {}

  /** A quart, in gallons. */
  double JAR_GALLONS = 0.25;

  /** A teaspoon of the kitchen, in fluid ounces. */
  double TEASPOON_FLUID_OUNCES = 1 / 6.0;

  /** For a mix at its spray volume. */
  static JarTest of(
      Mix mix,
      Carrier.Liquid carrier,
      double gallonsPerAcre,
      MixingOrder order,
      List<Partner> partners) {
    TreeSet<String> forbidding = new TreeSet<>();
    for (Partner p : partners) {
      if (p.terms().tank().jarTestRefused().find().orElse(false)) {
        forbidding.add(p.ingredient().name());
      }
    }
    if (!forbidding.isEmpty()) {
      return new Forbidden(List.copyOf(forbidding));
    }
    if (carrier == Carrier.Liquid.WATER && mix.doses().size() + mix.adjuvants().size() < 2) {
      return new NothingToTry();
    }
    LoadSize jar = new LoadSize(JAR_GALLONS, JAR_GALLONS / gallonsPerAcre);
    TankLoad load = TankLoad.of(mix, jar, Map.of());
    List<Portion> portions = new ArrayList<>();
    for (MixingStep step : order.sequence()) {
      load.find(step)
          .ifPresent(amount -> portions.add(new Portion(step.what(), amount.map(JarTest::small))));
    }
    return new Recipe(
        jar.acres(),
        portions,
        new Quantity(load.carrierGallons(), Unit.GALLON).in(Unit.MILLILITRE));
  }

  private static Quantity small(Quantity q) {
    Unit unit = q.unit().dimension() == Dimension.VOLUME ? Unit.MILLILITRE : Unit.GRAM;
    return new Quantity(q.in(unit), unit);
  }
}
