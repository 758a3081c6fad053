package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.growth.ScoutedField;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;

/** What was scouted in a field, and what of it the reports of a day do not use yet. */
final class ScoutingNotes {
  private ScoutingNotes() {}

  static List<String> of(Book book, Field field, LocalDate today) {
    Map<LocalDate, List<String>> byDate = new TreeMap<>();
    ScoutedField seen = ScoutedField.of(book, field, today);
    String crop = book.catalog().crop(field.crop()).name();
    seen.stages().forEach((date, stage) -> add(byDate, date, crop + " at " + stage));
    for (ScoutedField.WeedSeen w : seen.weeds()) {
      add(byDate, w.date(), book.catalog().weed(w.weed()).name() + " " + weed(w));
    }
    seen.irrigationMm()
        .forEach((date, mm) -> add(byDate, date, "irrigation " + number(Inches.ofMm(mm)) + " in"));
    List<String> out = new ArrayList<>();
    byDate.forEach(
        (date, what) ->
            out.add(
                "Scouted in "
                    + field.id()
                    + " on "
                    + date
                    + ": "
                    + String.join("; ", what)
                    + ". "
                    + (what.size() == 1 && seen.irrigationMm().containsKey(date)
                        ? "It counts as rain of that day in every year."
                        : "This stands in the place of the model from that day on.")));
    long later =
        book.scoutings().stream()
            .filter(s -> s.field().equals(field.id()) && s.date().isAfter(today))
            .count();
    if (later > 0) {
      out.add(
          "scouting.csv: "
              + (later == 1 ? "1 row of " : later + " rows of ")
              + field.id()
              + (later == 1 ? " is" : " are")
              + " later than today, "
              + today
              + ", and not used.");
    }
    return out;
  }

  private static void add(Map<LocalDate, List<String>> to, LocalDate date, String what) {
    to.computeIfAbsent(date, d -> new ArrayList<>()).add(what);
  }

  private static String weed(ScoutedField.WeedSeen w) {
    List<String> out = new ArrayList<>();
    w.height().ifPresent(h -> out.add(height(h)));
    w.perM2()
        .ifPresent(
            n ->
                out.add(
                    n == 0
                        ? "none standing"
                        : number(n)
                            + " plants/m² ("
                            + number(Unit.SQUARE_FOOT.toSi(n))
                            + " /ft²)"));
    return String.join(", ", out);
  }

  private static String height(ScoutedHeight h) {
    return h.isRange()
        ? number(Inches.ofCm(h.lowCm()))
            + " to "
            + number(Inches.ofCm(h.highCm()))
            + " in tall (median "
            + number(Inches.ofCm(h.medianCm()))
            + ")"
        : number(Inches.ofCm(h.medianCm())) + " in tall";
  }

  private static String number(double value) {
    return Numbers.decimals(value, 2);
  }
}
