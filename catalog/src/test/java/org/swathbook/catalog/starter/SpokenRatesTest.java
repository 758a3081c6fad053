package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.measure.Unit;

/**
 * Labels speak in amounts of a product and round them to pounds of active: two thirds of an ounce
 * of a 75 % product is 0.031 lb, and 0.67 oz is more than that. A rate as it is spoken that rounds
 * to an end of a range must not lie outside of it. Common practice, no source: whole ounces up to
 * two pounds, and below four of a unit quarters, halves and thirds with two digits. Larger ounces
 * lie so near to one another that any limit is near one of them, which says nothing of the label.
 */
class SpokenRatesTest {
  private static final double ROUNDING = 0.015;

  /** Parts of a unit as they are said, and what they are. */
  private static final double[][] PARTS = {
    {0, 0}, {0.25, 0.25}, {0.33, 1 / 3.0}, {0.5, 0.5}, {0.67, 2 / 3.0}, {0.75, 0.75}, {1, 1}
  };

  @Test
  void aRateAsItIsSpokenMissesNoEndByRoundingAlone() {
    Catalog starter = new CatalogLoader().starter();
    List<String> missed = new ArrayList<>();
    int compared = 0;
    for (Product p : starter.products()) {
      if (p.isSingle()) {
        Ingredient i =
            starter.findIngredient(p.contents().get(0).ingredient().value()).orElseThrow();
        for (RateRange range : ranges(i)) {
          for (double spoken : spoken(p, range.low())) {
            compared++;
            if (Quantity.exceeds(range.low().lbPerAcre(), pounds(p, spoken))) {
              missed.add(words(p, spoken) + " is below " + range.low());
            }
          }
          for (double spoken : spoken(p, range.high())) {
            compared++;
            if (Quantity.exceeds(pounds(p, spoken), range.high().lbPerAcre())) {
              missed.add(words(p, spoken) + " is above " + range.high());
            }
          }
        }
        for (Rate cap : caps(i)) {
          for (double spoken : spoken(p, cap)) {
            compared++;
            if (Quantity.exceeds(pounds(p, spoken), cap.lbPerAcre())) {
              missed.add(words(p, spoken) + " is above the cap of " + cap);
            }
          }
        }
      }
    }
    assertThat(missed.stream().distinct()).isEmpty();
    assertThat(compared).isGreaterThan(50);
  }

  private static List<RateRange> ranges(Ingredient i) {
    return i.uses().stream()
        .flatMap((Use u) -> u.rates().find().stream())
        .flatMap(List::stream)
        .flatMap(row -> row.rates().stream())
        .toList();
  }

  private static List<Rate> caps(Ingredient i) {
    return i.uses().stream()
        .flatMap((Use u) -> u.caps().find().stream())
        .flatMap(List::stream)
        .map(Cap::amount)
        .toList();
  }

  private static String words(Product p, double spoken) {
    return p.id() + ": " + spoken + " " + p.spoken().unitText() + ", " + pounds(p, spoken) + " lb,";
  }

  private static double pounds(Product p, double spoken) {
    Rate rate = new Rate(spoken, p.spoken().unit(), p.spoken().area(), Basis.PRODUCT);
    double kgPerHa = p.contents().get(0).concentration().activeKgPerHa(rate);
    return new Rate(kgPerHa, Unit.KILOGRAM, Unit.HECTARE, Basis.AI).lbPerAcre();
  }

  /** Rates as they are spoken that an end of a range may be the rounded pounds of. */
  private static List<Double> spoken(Product p, Rate end) {
    double amount = end.lbPerAcre() / pounds(p, 1);
    List<Double> out = new ArrayList<>();
    if (amount > 32.5) {
      return out;
    }
    for (double[] part : PARTS) {
      double spoken = Math.floor(amount) + part[0];
      double exact = Math.floor(amount) + part[1];
      boolean isSaid = part[0] == 0 || part[0] == 1 || amount < 4;
      boolean isNear = Math.abs(spoken - amount) <= ROUNDING * amount;
      if (isSaid && isNear && (rounds(p, spoken, end) || rounds(p, exact, end))) {
        out.add(spoken);
      }
    }
    return out;
  }

  /**
   * Whether a limit is what these pounds round to, in as many digits as it has. Whole quarters of a
   * pound are figures of labels themselves, and what is above them is too much.
   */
  private static boolean rounds(Product p, double spoken, Rate end) {
    BigDecimal limit =
        BigDecimal.valueOf(end.lbPerAcre()).round(new MathContext(6)).stripTrailingZeros();
    boolean quarters = limit.multiply(BigDecimal.valueOf(4)).stripTrailingZeros().scale() <= 0;
    BigDecimal pounds =
        BigDecimal.valueOf(pounds(p, spoken))
            .round(new MathContext(9))
            .setScale(limit.scale(), RoundingMode.HALF_UP);
    return !quarters && pounds.compareTo(limit) == 0;
  }
}
