package org.swathbook.book.file;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Slug;
import org.swathbook.measure.Density;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Period;
import org.swathbook.measure.Price;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.Nearest;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Readings of single values that only a book has. Each throws {@link MeasureException}. */
final class Parsers {

  /** The sixteen points from which wind blows and in which neighbors lie. */
  static final List<String> COMPASS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");

  private static final Set<String> STATES =
      Set.of(
          "AL", "AK", "AZ", "AR", "CA", "CO", "CT", "DE", "DC", "FL", "GA", "HI", "ID", "IL", "IN",
          "IA", "KS", "KY", "LA", "ME", "MD", "MA", "MI", "MN", "MS", "MO", "MT", "NE", "NV", "NH",
          "NJ", "NM", "NY", "NC", "ND", "OH", "OK", "OR", "PA", "PR", "RI", "SC", "SD", "TN", "TX",
          "UT", "VT", "VA", "WA", "WV", "WI", "WY");

  /** More than any field; what is more is a slip, such as square feet. */
  private static final double MOST_ACRES = 100_000;

  private Parsers() {}

  /** {@code 62 bu/acre}. */
  static double bushelsPerAcre(String text) {
    Numbers.Split s = Numbers.split(text);
    int slash = s.rest().indexOf('/');
    boolean right =
        slash > 0
            && Unit.find(s.rest().substring(0, slash)).filter(Unit.BUSHEL::equals).isPresent()
            && Unit.find(s.rest().substring(slash + 1)).filter(Unit.ACRE::equals).isPresent();
    if (!right || !(s.number() > 0)) {
      throw new MeasureException("'" + text + "' is no yield; write for example '62 bu/acre'");
    }
    return s.number();
  }

  /** {@code 4.35 $/bu}. */
  static double dollarsPerBushel(String text) {
    return dollarsPer(Unit.BUSHEL, text, "is no price of grain; write for example '4.35 $/bu'");
  }

  /** {@code 9.00 $/acre}. */
  static Money dollarsPerAcre(String text) {
    return Money.ofDollars(
        dollarsPer(Unit.ACRE, text, "is no cost of an acre; write for example '9.00 $/acre'"));
  }

  private static double dollarsPer(Unit unit, String text, String wrong) {
    try {
      Price p = Price.parse(text);
      if (p.per() == unit) {
        return p.dollars();
      }
    } catch (MeasureException e) {
      throw new MeasureException("'" + text + "' " + wrong);
    }
    throw new MeasureException("'" + text + "' " + wrong);
  }

  /** {@code 200 /acre}. */
  static double perAcre(String text) {
    return Density.parse(text).perAcre();
  }

  /** Rain that must stay below an amount: {@code < 0.1 in}; the sign may be left out. */
  static double belowRainMm(String text) {
    String t = text.strip();
    double mm = Texts.in(Unit.MILLIMETRE, "< 0.1 in").parse(t.startsWith("<") ? t.substring(1) : t);
    if (mm == 0) {
      throw new MeasureException("no day has rain below zero; write for example '< 0.1 in'");
    }
    return mm;
  }

  /** {@code 18 months}. */
  static int months(String text) {
    Period p = Period.parse(text);
    if (p.days() != 0 || p.months() < 1 || p.months() > 1200) {
      throw new MeasureException(
          "'" + text + "' is no number of whole months; write for example '18 months'");
    }
    return p.months();
  }

  /** {@code 3-10 mph}, as the least and the most in mph. */
  static double[] windMph(String text) {
    Numbers.SplitRange r = Numbers.splitRange(text);
    Unit unit = Unit.find(r.rest()).filter(u -> u.dimension() == Dimension.SPEED).orElse(null);
    if (unit == null || r.low() == r.high()) {
      throw new MeasureException(
          "'" + text + "' is no range of wind; write for example '3-10 mph'");
    }
    return new double[] {
      new Quantity(r.low(), unit).in(Unit.MILE_PER_HOUR),
      new Quantity(r.high(), unit).in(Unit.MILE_PER_HOUR)
    };
  }

  /** A plain number within limits. */
  static TextParser<Double> number(double least, double most) {
    return text -> {
      double value = Texts.number(text);
      if (value < least || value > most) {
        throw new MeasureException(
            "'"
                + text
                + "' is out of range; write a number from "
                + Numbers.plain(least)
                + " to "
                + Numbers.plain(most));
      }
      return value;
    };
  }

  /** Acres of a field: a plain number above zero. */
  static double acres(String text) {
    double value = aboveZero(text);
    if (value > MOST_ACRES) {
      throw new MeasureException(
          "'" + text + "' acres are no field; write at most " + Numbers.plain(MOST_ACRES));
    }
    return value;
  }

  private static double aboveZero(String text) {
    double value = Texts.number(text);
    if (!(value > 0)) {
      throw new MeasureException("'" + text + "' is not above zero; write a number as 76.0");
    }
    return value;
  }

  /** A whole number within limits. */
  static TextParser<Integer> whole(int least, int most) {
    return text -> {
      int value = Texts.whole(text);
      if (value < least || value > most) {
        throw new MeasureException(
            "'" + text + "' is out of range; write a whole number from " + least + " to " + most);
      }
      return value;
    };
  }

  static String state(String text) {
    String t = text.strip().toUpperCase(Locale.ROOT);
    if (!STATES.contains(t)) {
      throw new MeasureException(
          "'" + text + "' is no state; write its two letters, as NE for Nebraska");
    }
    return t;
  }

  static String compass(String text) {
    String t = text.strip().toUpperCase(Locale.ROOT);
    if (!COMPASS.contains(t)) {
      throw new MeasureException(
          "'" + text + "' is no compass point; write one of the sixteen, as NW or SSE");
    }
    return t;
  }

  static Commodity commodity(String text) {
    return switch (Slug.of(text)) {
      case "grain" -> Commodity.GRAIN;
      case "silage" -> Commodity.SILAGE;
      case "graze", "grazing" -> Commodity.GRAZING;
      case "forage" -> Commodity.FORAGE;
      case "hay" -> Commodity.HAY;
      default ->
          throw new MeasureException(
              "'"
                  + text
                  + "' is no use of a field; "
                  + Nearest.hint(text, List.of("grain", "silage", "graze", "forage", "hay")));
    };
  }

  /** Whether ground is watered: {@code none}, {@code pivot} or {@code furrow}. */
  static boolean irrigation(String text) {
    return !Texts.oneOf(List.of("none", "pivot", "furrow")).parse(text).equals("none");
  }

  /** {@code vineyard NE 1500 ft}, kept as written. */
  static String neighbor(String text) {
    String[] words = text.strip().split("\\s+");
    MeasureException wrong =
        new MeasureException(
            "'"
                + text
                + "' is no neighbor; write what, direction and distance, as 'vineyard NE 1500 ft'");
    // Read from the right: the distance may be '1500 ft' or '1500ft'.
    for (int distanceWords = 1; distanceWords <= 2; distanceWords++) {
      int direction = words.length - distanceWords - 1;
      if (direction >= 1 && COMPASS.contains(words[direction].toUpperCase(Locale.ROOT))) {
        String distance = String.join(" ", List.of(words).subList(direction + 1, words.length));
        Texts.in(Unit.METRE, "1500 ft").parse(distance);
        return String.join(" ", words);
      }
    }
    throw wrong;
  }
}
