package org.swathbook.cli.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;

/** Numbers, dates and lists as the reports write them: US units, the same in every locale. */
final class Figures {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private Figures() {}

  /** {@code 11 May}. */
  static String day(LocalDate d) {
    return d.getDayOfMonth() + " " + MONTHS.get(d.getMonthValue() - 1);
  }

  /** {@code 11 May 2027}. */
  static String date(LocalDate d) {
    return day(d) + " " + d.getYear();
  }

  /** {@code 98.4}, always with its decimal, so that columns line up. */
  static String percent(double percent) {
    return Numbers.fixed(percent, 1);
  }

  /** {@code 2.5}, in inches. */
  static String inches(double cm) {
    return Numbers.fixed(Inches.ofCm(cm), 1);
  }

  /** {@code 4,499.20}. */
  static String money(Money m) {
    return Numbers.grouped(m.toString());
  }

  /** {@code 16,187}; whole units. */
  static String count(double n) {
    return Numbers.grouped(Numbers.fixed(n, 0));
  }

  /** Plants per m²: two significant decimals where there are few. */
  static String density(double perM2) {
    return Numbers.decimals(perM2, perM2 < 1 ? 2 : perM2 < 10 ? 1 : 0);
  }

  /** An order of magnitude, {@code 3,000} or {@code 1.5}: so many digits that count. */
  static String rough(double n, int digits) {
    if (n <= 0) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(n).round(new MathContext(digits, RoundingMode.HALF_UP));
    if (rounded.compareTo(new BigDecimal("0.01")) < 0) {
      return "under 0.01";
    }
    return rounded.compareTo(BigDecimal.TEN) < 0
        ? rounded.stripTrailingZeros().toPlainString()
        : Numbers.grouped(rounded.setScale(0, RoundingMode.HALF_UP).toPlainString());
  }

  /** {@code 32.27 fl oz/acre}. */
  static String rate(Rate rate) {
    return Numbers.decimals(rate.amount(), 2) + " " + rate.unitText();
  }

  /** {@code 1 pass}, {@code 3 passes}. */
  static String counted(int n, String one, String more) {
    return n + " " + (n == 1 ? one : more);
  }

  /** {@code a, b and c}. */
  static String list(List<String> words) {
    int n = words.size();
    return n < 2
        ? String.join("", words)
        : String.join(", ", words.subList(0, n - 1)) + " and " + words.get(n - 1);
  }

  /** {@code 2015-2017, 2019, 2020}: three or more in a row are one span. */
  static String years(List<Integer> years) {
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < years.size()) {
      int j = i;
      while (j + 1 < years.size() && years.get(j + 1) == years.get(j) + 1) {
        j++;
      }
      out.append(out.isEmpty() ? "" : ", ").append(years.get(i));
      if (j > i + 1) {
        out.append('-').append(years.get(j));
        i = j;
      }
      i++;
    }
    return out.toString();
  }
}
