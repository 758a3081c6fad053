package org.swathbook.cli;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Values that have broken programs before, and sound ones stretched until they make no sense. */
final class NastyValues {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  private static final List<String> VALUES =
      List.of(
          "",
          " ",
          "\t",
          "0",
          "-0",
          "-1",
          "0.0000000001",
          "1e308",
          "1e309",
          "-1e308",
          "1e-320",
          "9".repeat(400),
          "0." + "0".repeat(400) + "1",
          "1e999999999",
          "1e-999999999",
          "2147483648",
          "-9223372036854775808",
          "NaN",
          "Infinity",
          "-Infinity",
          "0x10",
          "1_000",
          "1,000",
          "1.2.3",
          "\u0661\u0662",
          "\u00bd",
          "none",
          "unknown",
          "null",
          "~",
          "yes",
          "no",
          "true",
          "T",
          "2027-02-30",
          "2027-13-01",
          "0000-01-01",
          "0001-01-01",
          "9999-12-31",
          "+999999999-12-31",
          "-0001-01-01",
          "2028-02-29",
          "2027-02-29",
          "02-29",
          "1600-01-01",
          "20270101",
          "25:00",
          "24:00",
          "23:59",
          "planting",
          "emergence",
          "1000000000 days after planting",
          "99999999999 days after planting",
          "0 days before planting",
          "400 days before planting",
          "stage V999",
          "V99999999999",
          "R1",
          "when AMAPA is 1e9 in",
          "when AMAPA is 0 in",
          "1e300 lb ai/acre",
          "0 lb ai/acre",
          "1e-300 lb ai/acre",
          "-5 days",
          "1000000000 days",
          "0 days",
          "1-0 days",
          "1e9 gal",
          "0 gal",
          "0 gal/acre",
          "1e12 gal/acre",
          "1e300 /m2",
          "0 /m2",
          "200 %",
          "0 %",
          "100 %",
          "-5 %",
          "1e9 $/acre",
          "99999999999999999999 $/gal",
          "0 $/gal",
          "0.001 $/gal",
          "../../../../../../nowhere",
          "..",
          ".",
          "../book.yaml",
          "/nowhere/at/all",
          "..\\..\\nowhere",
          "C:\\nowhere",
          "con",
          "nul.yaml",
          "a/b",
          "a\u0000b",
          "=1+1",
          "+1",
          "@SUM(A1)",
          "=cmd|' /C calc'!A0",
          "<script>alert(1)</script>",
          "\"",
          "'",
          "&amp;",
          "\u202eevil",
          "\ufeff",
          "\ud83d\ude9c",
          "\ud83d",
          "e\u0301",
          "\u0130\u0131",
          "%s%n%d",
          "$1\\1",
          "x".repeat(70_000),
          ";".repeat(5_000),
          "2:50 %; 2:60 %",
          "9:85 % confirmed; 2:95 % assumed; dicamba:30 % suspected",
          "tomatoes N 0 ft",
          "all",
          "any",
          "[]",
          "{}");

  private NastyValues() {}

  static String any(Random random) {
    return VALUES.get(random.nextInt(VALUES.size()));
  }

  /** The text with one of its numbers made another, units and all else kept; none when none. */
  static String stretched(String text, Random random) {
    Matcher m = NUMBER.matcher(text);
    int count = (int) m.results().count();
    if (count == 0) {
      return any(random);
    }
    m.reset();
    for (int i = random.nextInt(count); i >= 0; i--) {
      m.find();
    }
    return text.substring(0, m.start()) + number(m.group(), random) + text.substring(m.end());
  }

  private static String number(String old, Random random) {
    return switch (random.nextInt(12)) {
      case 0 -> "0";
      case 1 -> "-" + old;
      case 2 -> old + "000000";
      case 3 -> old + "0".repeat(18);
      case 4 -> "0.000001";
      case 5 -> old + ".5";
      case 6 -> old + "e300";
      case 7 -> Integer.toString(random.nextInt(100));
      case 8 -> Integer.toString(random.nextInt(100_000));
      case 9 -> old + "-" + random.nextInt(50);
      case 10 -> old.substring(1).isEmpty() ? "1" : old.substring(1);
      default -> "1" + old;
    };
  }
}
