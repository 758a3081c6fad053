package org.swathbook.book.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.measure.MeasureException;

/**
 * How a table writes its dates: {@code M/D/YYYY}, {@code DD.MM.YY}. Two digits of a year are of
 * this century.
 */
record DateForm(String written, Pattern pattern) {
  static final DateForm ISO = of("YYYY-MM-DD");

  static DateForm of(String text) {
    String t = text.strip().toUpperCase(Locale.ROOT);
    Matcher m =
        Pattern.compile("(YYYY|YY|MM?|DD?)([-/. ])(YYYY|YY|MM?|DD?)\\2(YYYY|YY|MM?|DD?)")
            .matcher(t);
    String letters = t.replaceAll("[^YMD]", "").replaceAll("(.)\\1+", "$1");
    if (!m.matches() || !letters.matches("YMD|MDY|DMY|YDM")) {
      throw new MeasureException(
          "'" + text + "' is no form of a date; write YYYY, MM and DD as they stand, M/D/YYYY");
    }
    StringBuilder regex = new StringBuilder();
    for (int i = 1; i <= 4; i++) {
      String part = m.group(i);
      regex.append(
          i == 2
              ? ""
              : (i == 1 ? "" : Pattern.quote(m.group(2)))
                  + "(?<"
                  + part.charAt(0)
                  + ">"
                  + (part.equals("YYYY") ? "\\d{4}" : part.length() == 2 ? "\\d{2}" : "\\d{1,2}")
                  + ")");
    }
    return new DateForm(text.strip(), Pattern.compile(regex.toString()));
  }

  LocalDate parse(String text) {
    Matcher m = pattern.matcher(text.strip());
    if (m.matches()) {
      int year = Integer.parseInt(m.group("Y"));
      try {
        return LocalDate.of(
            year < 100 ? 2000 + year : year,
            Integer.parseInt(m.group("M")),
            Integer.parseInt(m.group("D")));
      } catch (DateTimeException e) {
        throw new MeasureException("there is no day '" + text + "'; write a day of the calendar");
      }
    }
    throw new MeasureException(
        "'" + text + "' is no date as " + written + "; say in the map how dates are written");
  }
}
