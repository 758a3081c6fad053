package org.swathbook.catalog.file;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Window;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapReader;
import org.swathbook.source.Nearest;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads points of a season and windows between them. */
final class TimePoints {
  private static final String EXAMPLE = "30 days before planting";
  private static final Pattern DAYS =
      Pattern.compile("(\\d{1,4}) days? (before|after) (planting|harvest)");
  private static final Pattern MONTH_DAY = Pattern.compile("\\d{2}-\\d{2}");

  private TimePoints() {}

  /**
   * The window of {@code {from: 30 days before planting, before: emergence}}.
   *
   * @param crop whose stages may be named; empty for a use before any crop, which has none
   * @param stagesUnknown the crop's own file could not be read, so its stages cannot be judged
   */
  static Optional<Window> window(MapReader map, Optional<Crop> crop, boolean stagesUnknown) {
    int before = map.problems().count();
    TextParser<TimePoint> point = text -> point(text, crop, stagesUnknown);
    Window window =
        new Window(
            map.find("from", point, EXAMPLE),
            map.find("to", point, EXAMPLE),
            map.find("before", point, EXAMPLE));
    if (map.problems().count() > before) {
      return Optional.empty();
    }
    if (window.equals(new Window(Optional.empty(), Optional.empty(), Optional.empty()))) {
      map.problems()
          .add(map.mark(), "the window has no end", "write from, to or before, or 'none'");
      return Optional.empty();
    }
    if (runsBackwards(window.from(), window.to(), crop, false)
        || runsBackwards(window.from(), window.before(), crop, true)) {
      map.problems()
          .add(map.mark(), "the window '" + window + "' is empty", "let it start before it ends");
      return Optional.empty();
    }
    return Optional.of(window);
  }

  private static boolean runsBackwards(
      Optional<TimePoint> from, Optional<TimePoint> to, Optional<Crop> crop, boolean endOut) {
    if (from.isEmpty() || to.isEmpty()) {
      return false;
    }
    OptionalInt start = order(from.get(), crop);
    OptionalInt end = order(to.get(), crop);
    return from.get().getClass() == to.get().getClass()
        && start.isPresent()
        && end.isPresent()
        && (start.getAsInt() > end.getAsInt() || endOut && start.getAsInt() == end.getAsInt());
  }

  private static OptionalInt order(TimePoint point, Optional<Crop> crop) {
    if (point instanceof TimePoint.FromPlanting p) {
      return OptionalInt.of(p.days());
    }
    if (point instanceof TimePoint.BeforeHarvest h) {
      return OptionalInt.of(-h.days());
    }
    if (point instanceof TimePoint.AtStage s && crop.isPresent()) {
      return crop.get().findStage(s.stage());
    }
    return OptionalInt.empty();
  }

  private static TimePoint point(String text, Optional<Crop> crop, boolean stagesUnknown) {
    String t = text.strip();
    if (t.equals("planting")) {
      return new TimePoint.FromPlanting(0);
    }
    Matcher days = DAYS.matcher(t);
    if (days.matches()) {
      int n = Integer.parseInt(days.group(1));
      boolean before = days.group(2).equals("before");
      if (days.group(3).equals("planting")) {
        return new TimePoint.FromPlanting(before ? -n : n);
      }
      if (before) {
        return new TimePoint.BeforeHarvest(n);
      }
    }
    if (MONTH_DAY.matcher(t).matches()) {
      return new TimePoint.OnMonthDay(Texts.monthDay(t));
    }
    boolean known =
        t.equals(TimePoint.EMERGENCE)
            || stagesUnknown
            || crop.isPresent() && crop.get().findStage(t).isPresent();
    if (known) {
      return new TimePoint.AtStage(t);
    }
    throw new MeasureException(
        crop.isEmpty()
            ? "'"
                + text
                + "' is no point in time for any crop; write planting, emergence, 'N days before"
                + " planting' or a day as 06-30"
            : "'"
                + text
                + "' is neither a stage of "
                + crop.get().name()
                + " nor another point in time; "
                + Nearest.hint(t, crop.get().stages().stream().map(CropStage::name).toList()));
  }
}
