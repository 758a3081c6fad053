package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.cli.report.SeasonCalendar;

/** What the chart of a season is drawn from; all dates are of the book's season. */
final class CalendarJson {
  private CalendarJson() {}

  static void into(ObjectNode node, SeasonCalendar calendar) {
    node.put("from", calendar.from().toString());
    node.put("to", calendar.to().toString());
    ArrayNode stages = node.putArray("stages");
    for (SeasonCalendar.Stage s : calendar.stages()) {
      ObjectNode stage = stages.addObject();
      stage.put("stage", s.name());
      dates(stage, s.reached());
    }
    ArrayNode weeds = node.putArray("emergence");
    for (SeasonCalendar.Emergence e : calendar.weeds()) {
      ObjectNode weed = weeds.addObject();
      weed.put("weed", e.weed().value());
      dates(weed.putObject("neededUntil"), e.neededUntil());
      ArrayNode weeks = weed.putArray("weeks");
      for (SeasonCalendar.Week w : e.weeks()) {
        ObjectNode week = weeks.addObject();
        week.put("from", w.from().toString());
        week.set("meanPct", Json.percent(w.meanPct()));
        week.set("lowPct", Json.percent(w.lowPct()));
        week.set("highPct", Json.percent(w.highPct()));
      }
    }
    ArrayNode windows = node.putArray("windows");
    for (SeasonCalendar.Window w : calendar.windows()) {
      ObjectNode window = windows.addObject();
      window.put("pass", w.pass() + 1);
      ArrayNode open = window.putArray("open");
      for (SeasonCalendar.Stretch s : w.open()) {
        ObjectNode stretch = open.addObject();
        stretch.put("from", s.from().toString());
        stretch.put("to", s.to().toString());
        stretch.put("years", s.years());
      }
    }
  }

  private static void dates(ObjectNode node, SeasonCalendar.Dates dates) {
    node.put("earliest", dates.earliest().toString());
    node.put("median", dates.median().toString());
    node.put("latest", dates.latest().toString());
  }
}
