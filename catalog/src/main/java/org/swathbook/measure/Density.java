package org.swathbook.measure;

/** Plants on an area: {@code 80 /m2}, {@code 200 /acre}. */
public record Density(double count, Unit area) {

  public Density {
    if (!(count >= 0) || Double.isInfinite(count)) {
      throw new MeasureException("a density must be zero or more, not " + count);
    }
    if (area.dimension() != Dimension.AREA) {
      throw new MeasureException("a density is a count per area, not per " + area.symbol());
    }
  }

  public double perM2() {
    return count / area.toSi(1);
  }

  public double perAcre() {
    return perM2() * Unit.ACRE.toSi(1);
  }

  public static Density parse(String text) {
    Numbers.Split s = Numbers.split(text);
    if (!s.rest().startsWith("/")) {
      throw new MeasureException(
          "'" + text.strip() + "' is no density; write for example '80 /m2'");
    }
    return new Density(s.number(), Numbers.unit(s.rest().substring(1).strip(), text));
  }

  @Override
  public String toString() {
    return Numbers.plain(count) + " /" + area.symbol();
  }
}
