package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a row was rated.
 *
 * @param days days after the base; several when the row was rated more than once
 * @param stated whether the row says it, or it is assumed
 */
record RatedText(Base base, List<Double> days, boolean stated) {

  /** What the days count from. */
  enum Base {
    PLANTING,
    FIRST_PASS,
    LAST_PASS,
    /** The day on which a post would have been made. */
    POST_DAY,
    /** The engine's own day: canopy, or 60 days after planting. */
    SEASON
  }

  private static final Pattern SPAN = Pattern.compile("(\\d+)\\s*(d|wk|w|WAA|DAA|DAT|WAT)\\b");
  private static final Pattern DAYS = Pattern.compile("\\d+");

  /** Days after the last pass where a row says none: the usual late rating. */
  private static final double AFTER_FOLIAR = 28;

  private static final double AFTER_SOIL = 56;

  RatedText {
    days = List.copyOf(days);
  }

  static RatedText of(TrialRow row, boolean onlySoil) {
    String text = row.evaluated();
    String low = text.toLowerCase(Locale.ROOT);
    if (low.startsWith("season") || low.contains("harvest")) {
      return new RatedText(Base.SEASON, List.of(0.0), true);
    }
    Base base =
        low.contains("planting") || low.contains("dap")
            ? Base.PLANTING
            : low.contains("post") ? Base.POST_DAY : Base.LAST_PASS;
    Matcher m = SPAN.matcher(text);
    if (m.find()) {
      boolean weeks = m.group(2).toLowerCase(Locale.ROOT).startsWith("w");
      List<Double> days = new ArrayList<>();
      if (row.days().contains(";") || row.days().contains("/")) {
        Matcher each = DAYS.matcher(row.days());
        while (each.find()) {
          days.add(Double.parseDouble(each.group()));
        }
      } else {
        days.add(Double.parseDouble(m.group(1)) * (weeks ? 7 : 1));
      }
      return new RatedText(base, days, true);
    }
    return new RatedText(Base.LAST_PASS, List.of(onlySoil ? AFTER_SOIL : AFTER_FOLIAR), false);
  }
}
