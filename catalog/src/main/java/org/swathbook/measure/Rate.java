package org.swathbook.measure;

import java.util.Locale;
import java.util.Optional;

/**
 * An amount on an area, kept as written: {@code 1.27 lb ai/acre}, {@code 32 fl oz/acre}. The amount
 * is a mass or a volume; only a mass has a basis other than {@link Basis#PRODUCT}.
 */
public record Rate(double amount, Unit unit, Unit area, Basis basis) {

  public Rate {
    if (!(amount >= 0) || Double.isInfinite(amount)) {
      throw new MeasureException("a rate must be a number of zero or more, not " + amount);
    }
    if (area.dimension() != Dimension.AREA) {
      throw new MeasureException("a rate is an amount per area, not per " + area.symbol());
    }
    if (unit.dimension() != Dimension.MASS && unit.dimension() != Dimension.VOLUME) {
      throw new MeasureException("a rate is a weight or a volume, not " + unit.symbol());
    }
  }

  /** A weight of active, in lb per acre. */
  public static Rate lbPerAcre(double lb, Basis basis) {
    return new Rate(lb, Unit.POUND, Unit.ACRE, basis);
  }

  public boolean isVolume() {
    return unit.dimension() == Dimension.VOLUME;
  }

  /** Kilograms per hectare; an error for a volume. */
  public double kgPerHa() {
    if (isVolume()) {
      throw new MeasureException("'" + this + "' is a volume and has no weight by itself");
    }
    return unit.toSi(amount) / area.toSi(1) * 10000;
  }

  /** Pounds per acre; an error for a volume. */
  public double lbPerAcre() {
    if (isVolume()) {
      throw new MeasureException("'" + this + "' is a volume and has no weight by itself");
    }
    if (unit == Unit.POUND && area == Unit.ACRE) {
      return amount;
    }
    return Unit.POUND.fromSi(unit.toSi(amount)) / area.toSi(1) * Unit.ACRE.toSi(1);
  }

  /** Litres per hectare; an error for a weight. */
  public double litresPerHa() {
    if (!isVolume()) {
      throw new MeasureException("'" + this + "' is a weight, not a volume");
    }
    return unit.toSi(amount) / area.toSi(1) * 10000;
  }

  /** The same rate in another unit of amount, per the same area. */
  public Rate in(Unit other) {
    return new Rate(new Quantity(unit.toSi(amount), si(unit)).in(other), other, area, basis);
  }

  /** The same rate in other units of amount and of area. */
  public Rate in(Unit otherAmount, Unit otherArea) {
    Rate out = in(otherAmount);
    return otherArea == area
        ? out
        : new Rate(
            out.amount / area.toSi(1) * otherArea.toSi(1), otherAmount, otherArea, out.basis);
  }

  /** The same rate in the units of another. */
  public Rate like(Rate other) {
    return in(other.unit, other.area);
  }

  private static Unit si(Unit unit) {
    return unit.dimension() == Dimension.MASS ? Unit.KILOGRAM : Unit.LITRE;
  }

  @Override
  public String toString() {
    return Numbers.decimals(amount, 4) + " " + unitText();
  }

  /** {@code lb ai/acre}, {@code fl oz/acre}. */
  public String unitText() {
    return unit.symbol()
        + (basis == Basis.PRODUCT ? "" : " " + basis.symbol())
        + "/"
        + area.symbol();
  }

  /** Reads {@code 0.95 lb ae/acre} or {@code 2 pt/acre}. */
  public static Rate parse(String text) {
    RateRange r = RateRange.parse(text);
    if (r.low().amount() != r.high().amount()) {
      throw new MeasureException("'" + text.strip() + "' is a range; one rate is wanted here");
    }
    return r.high();
  }

  /** A rate unit as in {@code fl oz/acre}, without a number: amount 1. */
  public static Rate parseUnit(String text) {
    return of(1, text.strip(), text);
  }

  static Rate of(double amount, String unitText, String whole) {
    int slash = unitText.indexOf('/');
    if (slash < 0) {
      throw new MeasureException(
          "'" + whole.strip() + "' is no rate; write an amount per area, as '1.27 lb ai/acre'");
    }
    String amountText = unitText.substring(0, slash).strip();
    String areaText = unitText.substring(slash + 1).strip();
    Basis basis = Basis.PRODUCT;
    for (Basis b : new Basis[] {Basis.AI, Basis.AE, Basis.CATION}) {
      if (amountText.toLowerCase(Locale.ROOT).endsWith(" " + b.symbol())) {
        basis = b;
        amountText = amountText.substring(0, amountText.length() - b.symbol().length() - 1).strip();
        break;
      }
    }
    Unit unit = Numbers.unit(amountText, whole);
    Optional<Unit> area = Unit.find(areaText).filter(u -> u.dimension() == Dimension.AREA);
    if (area.isEmpty()) {
      throw new MeasureException(
          "'" + areaText + "' in '" + whole.strip() + "' is no area; write for example '/acre'");
    }
    if (basis != Basis.PRODUCT && unit.dimension() == Dimension.VOLUME) {
      throw new MeasureException(
          "'" + whole.strip() + "' gives a volume of " + basis.symbol() + "; write a weight");
    }
    return new Rate(amount, unit, area.get(), basis);
  }
}
