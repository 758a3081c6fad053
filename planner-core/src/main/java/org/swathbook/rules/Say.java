package org.swathbook.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;

/** Numbers and names as the messages of the rules say them: US units, English words. */
public final class Say {
  /** Of a site that nothing but the watch list strikes. */
  public static final String SUSPECTED = "suspected (watch list)";

  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  /** What stands for a source where the trade agrees and nobody published it. */
  public static final String COMMON_PRACTICE = "common practice, no source";

  private Say() {}

  /** Whose a stated value is. */
  public static String source(Stated<?> stated) {
    return stated.findSource().map(Source::text).orElse(COMMON_PRACTICE);
  }

  /** {@code 2.54 lb ai/acre}. */
  public static String lb(double lbPerAcre, Basis basis) {
    return Numbers.decimals(lbPerAcre, 3) + " lb " + basis.symbol() + "/acre";
  }

  /**
   * {@code 0.0314 lb ai/acre} beside {@code 0.031}: as many decimals, three or more, as tell it
   * from the amount it is compared with, so that a limit and what passes it do not read the same.
   */
  public static String lbBeside(double lbPerAcre, double other, Basis basis) {
    int decimals = 3;
    while (decimals < 6
        && Numbers.decimals(lbPerAcre, decimals).equals(Numbers.decimals(other, decimals))) {
      decimals++;
    }
    return Numbers.decimals(lbPerAcre, decimals) + " lb " + basis.symbol() + "/acre";
  }

  public static String rate(Rate weight) {
    return lb(weight.lbPerAcre(), weight.basis());
  }

  /** {@code 4.2 in}. */
  public static String inches(double cm) {
    return Numbers.decimals(Inches.ofCm(cm), 1) + " in";
  }

  /** {@code 14 Jul 2027}. */
  public static String date(LocalDate d) {
    return d.getDayOfMonth() + " " + MONTHS.get(d.getMonthValue() - 1) + " " + d.getYear();
  }

  public static String days(long n) {
    return n == 1 ? "1 day" : n + " days";
  }

  /** {@code 27.5 %} of a percentage. */
  public static String pct(double percent) {
    return Numbers.decimals(percent, 1) + " %";
  }

  /** {@code 27.5 %} of a share of 0 to 1. */
  public static String share(double share) {
    return pct(100 * share);
  }

  /** Plants on an acre, to three significant figures: {@code 16,200}. */
  public static String perAcre(double count) {
    double step = count < 1000 ? 1 : Math.pow(10, Math.floor(Math.log10(count)) - 2);
    long n = Math.round(Math.round(count / step) * step);
    String digits = Long.toString(n);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      if (i > 0 && (digits.length() - i) % 3 == 0) {
        out.append(',');
      }
      out.append(digits.charAt(i));
    }
    return out.toString();
  }

  /** {@code a, b and c}. */
  public static String list(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " and "
        + words.get(words.size() - 1);
  }

  /** A name as it stands at the start of a sentence. */
  public static String start(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** An active at the start of a sentence; {@code S-} and {@code 2,4-} stay as they are. */
  public static String start(Ingredient i) {
    return start(i.name());
  }

  /**
   * The largest practical rate of a product that is not above this one, in the units in which the
   * product is spoken; zero when none is.
   */
  public static Rate practical(Product product, Rate productRate) {
    Rate step = product.step();
    double inStep = productRate.like(step).amount() / step.amount();
    double whole = Math.floor(inStep);
    // A rate that misses the next step by rounding alone is that step.
    if (!Quantity.exceeds(whole + 1, inStep)) {
      whole += 1;
    }
    Rate floored = new Rate(whole * step.amount(), step.unit(), step.area(), Basis.PRODUCT);
    return floored.like(product.spoken());
  }

  /** The smallest practical rate of a product that is not below this one. */
  public static Rate practicalAtLeast(Product product, Rate productRate) {
    Rate below = practical(product, productRate);
    double step = product.step().like(product.spoken()).amount();
    boolean enough = !Quantity.exceeds(productRate.like(product.spoken()).amount(), below.amount());
    return enough
        ? below
        : new Rate(below.amount() + step, below.unit(), below.area(), below.basis());
  }

  /** {@code 32 fl oz/acre}. */
  public static String productRate(Rate rate) {
    return Numbers.decimals(rate.amount(), 2) + " " + rate.unitText();
  }
}
