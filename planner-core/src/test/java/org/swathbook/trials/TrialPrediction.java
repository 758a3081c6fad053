package org.swathbook.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.swathbook.catalog.Catalog;

/**
 * What the engine says of a row.
 *
 * @param treatments control in percent of each treatment that the row stands for; empty when none
 *     could be walked
 * @param passDays days from planting of the first treatment's passes
 * @param notes what was assumed or not understood
 */
record TrialPrediction(
    TrialRow row, List<Double> treatments, List<Long> passDays, List<String> notes) {

  OptionalDouble controlPct() {
    return TrialWalk.mean(treatments);
  }

  OptionalDouble error() {
    return row.isScored() && controlPct().isPresent()
        ? OptionalDouble.of(row.error(controlPct().getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Walks every row of a table, each by itself but for words like "same as above". */
  static List<TrialPrediction> of(
      List<TrialRow> rows, Catalog catalog, List<RegionalClimate> climates) {
    TreatmentText text = new TreatmentText(catalog);
    Map<String, List<TreatmentText.Read>> byTrial = new LinkedHashMap<>();
    List<TrialPrediction> out = new ArrayList<>();
    for (TrialRow row : rows) {
      List<TreatmentText.Read> before =
          byTrial.computeIfAbsent(row.trial(), t -> new ArrayList<>());
      TreatmentText.Read read = text.read(row, before);
      before.add(read);
      out.add(of(row, read, catalog, climates));
    }
    return out;
  }

  private static TrialPrediction of(
      TrialRow row, TreatmentText.Read read, Catalog catalog, List<RegionalClimate> climates) {
    List<String> notes = new ArrayList<>();
    if (!read.notUnderstood().isEmpty()) {
      notes.add("not understood: " + String.join(", ", new TreeSet<>(read.notUnderstood())));
    }
    List<Double> controls = new ArrayList<>();
    List<Long> days = List.of();
    if (read.treatments().isEmpty()) {
      notes.add("no treatment with a known active");
      return new TrialPrediction(row, controls, days, notes);
    }
    var field = TrialField.of(row, catalog, climates, notes);
    if (field.isPresent()) {
      for (List<Spray> treatment : read.treatments()) {
        try {
          TrialWalk walk = new TrialWalk(catalog, field.get(), treatment);
          RatedText rated = RatedText.of(row, walk.onlySoil());
          if (controls.isEmpty() && !rated.stated()) {
            notes.add("day of rating assumed: " + Math.round(rated.days().get(0)));
          }
          controls.add(walk.controlPct(rated));
          days = days.isEmpty() ? walk.daysFromPlanting() : days;
        } catch (IllegalArgumentException e) {
          notes.add(String.valueOf(e.getMessage()));
        }
      }
    }
    return new TrialPrediction(row, controls, days, List.copyOf(new TreeSet<>(notes)));
  }
}
