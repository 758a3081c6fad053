package org.swathbook.measure;

import java.util.Locale;

/**
 * How much active a product holds: a mass per volume for liquids ({@code 4.5 lb ae/gal}), a share
 * by weight for dry products ({@code 75 %}).
 *
 * @param kgPerLitre mass per volume; NaN for a dry product
 * @param massShare share by weight, 0 to 1; NaN for a liquid
 */
public record Concentration(String written, double kgPerLitre, double massShare, Basis basis) {

  public boolean isLiquid() {
    return !Double.isNaN(kgPerLitre);
  }

  /**
   * Active in kg per hectare of a product rate; the rate must be a volume for a liquid, a weight
   * for a dry product.
   */
  public double activeKgPerHa(Rate product) {
    return isLiquid() ? product.litresPerHa() * kgPerLitre : product.kgPerHa() * massShare;
  }

  /**
   * Product needed per hectare for an active rate: litres of a liquid, kilograms of a dry product.
   */
  public double productPerHa(double activeKgPerHa) {
    return activeKgPerHa / (isLiquid() ? kgPerLitre : massShare);
  }

  /**
   * Reads {@code 4.5 lb ae/gal}, {@code 480 g/L} or {@code 51 %}; without a basis it is the
   * active's own.
   */
  public static Concentration parse(String text, Basis ownBasis) {
    Numbers.Split s = Numbers.split(text);
    if (!(s.number() > 0) || Double.isInfinite(s.number())) {
      throw new MeasureException(
          "'"
              + text.strip()
              + "' is no concentration; write one above zero, as '4.5 lb ae/gal' or"
              + " '75 %'");
    }
    if (s.rest().equals("%")) {
      if (s.number() > 100) {
        throw new MeasureException(
            "'" + text.strip() + "' is more than the whole product; write at most 100 %");
      }
      return new Concentration(text.strip(), Double.NaN, s.number() / 100, ownBasis);
    }
    int slash = s.rest().indexOf('/');
    if (slash < 0) {
      throw new MeasureException(
          "'"
              + text.strip()
              + "' is no concentration; write for example '4.5 lb ae/gal' or '75 %'");
    }
    String mass = s.rest().substring(0, slash).strip();
    Basis basis = ownBasis;
    for (Basis b : new Basis[] {Basis.AI, Basis.AE, Basis.CATION}) {
      if (mass.toLowerCase(Locale.ROOT).endsWith(" " + b.symbol())) {
        basis = b;
        mass = mass.substring(0, mass.length() - b.symbol().length() - 1).strip();
        break;
      }
    }
    Unit massUnit = Numbers.unit(mass, text);
    Unit volumeUnit = Numbers.unit(s.rest().substring(slash + 1).strip(), text);
    if (massUnit.dimension() != Dimension.MASS || volumeUnit.dimension() != Dimension.VOLUME) {
      throw new MeasureException(
          "'" + text.strip() + "' is no weight per volume; write for example '4.5 lb ae/gal'");
    }
    return new Concentration(
        text.strip(), massUnit.toSi(s.number()) / volumeUnit.toSi(1), Double.NaN, basis);
  }
}
