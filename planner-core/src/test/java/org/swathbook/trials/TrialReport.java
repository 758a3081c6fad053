package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Predictions beside what was published, as a page. */
final class TrialReport {
  /** Mean points outside the published range that the engine aims at. */
  static final double TARGET = 8;

  private static final String NOT_EXPLAINED = "not explained yet";

  private final List<TrialPrediction> predictions;
  private final List<TrialOrdering> orderings;
  private final Map<Integer, String> why;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param orderings between rows of this very table
   * @param why what is known of a miss, by row
   */
  TrialReport(
      List<TrialPrediction> predictions, List<TrialOrdering> orderings, Map<Integer, String> why) {
    this.predictions = List.copyOf(predictions);
    this.orderings = List.copyOf(orderings);
    this.why = new TreeMap<>(why);
  }

  /** The part of the page that changes with the engine. */
  String page() {
    summary();
    table("Rows that shared parameters may be fitted to", p -> !p.row().isHeldOut());
    table("Rows set aside before any fitting (number divisible by 3)", p -> p.row().isHeldOut());
    orderings();
    misses();
    assumed();
    return out.toString();
  }

  private void summary() {
    out.append("## Mean error\n\n");
    out.append("Points outside the published range; 0 inside it. Target ")
        .append(Math.round(TARGET))
        .append(".\n\n| part | rows | mean error | inside | within the target | ")
        .append("mean error where both ends are published |\n|---|---|---|---|---|---|\n");
    row("fitted", p -> !p.row().isHeldOut());
    row("set aside", p -> p.row().isHeldOut());
    row("all", p -> true);
    out.append("\n");
  }

  private void row(String part, Predicate<TrialPrediction> which) {
    List<TrialPrediction> scored =
        predictions.stream().filter(which).filter(p -> p.error().isPresent()).toList();
    OptionalDouble mean = mean(scored);
    OptionalDouble twoSided =
        mean(
            scored.stream()
                .filter(p -> p.row().low().isPresent() && p.row().high().isPresent())
                .toList());
    out.append("| ").append(part).append(" | ").append(scored.size()).append(" | ");
    out.append(figure(mean)).append(" | ").append(count(scored, 0)).append(" | ");
    out.append(count(scored, TARGET)).append(" | ").append(figure(twoSided)).append(" |\n");
  }

  private static OptionalDouble mean(List<TrialPrediction> scored) {
    return scored.stream().mapToDouble(p -> p.error().orElseThrow()).average();
  }

  private static long count(List<TrialPrediction> scored, double most) {
    return scored.stream().filter(p -> p.error().orElseThrow() <= most).count();
  }

  private static String figure(OptionalDouble value) {
    return value.isPresent() ? String.format(Locale.ROOT, "%.1f", value.getAsDouble()) : "–";
  }

  private void table(String title, Predicate<TrialPrediction> which) {
    out.append("## ").append(title).append("\n\n");
    out.append(
        "| row | trial | treatment | days of the passes | published | predicted | error |\n");
    out.append("|---|---|---|---|---|---|---|\n");
    for (TrialPrediction p : predictions) {
      if (which.test(p)) {
        out.append("| ").append(p.row().row()).append(" | ").append(cell(p.row().trial()));
        out.append(" | ").append(cell(p.row().treatment())).append(" | ").append(days(p));
        out.append(" | ").append(p.row().published()).append(" | ").append(predicted(p));
        out.append(" | ").append(whole(p.error())).append(" |\n");
      }
    }
    out.append("\n");
  }

  private static String days(TrialPrediction p) {
    return p.passDays().isEmpty()
        ? "–"
        : String.join(", ", p.passDays().stream().map(String::valueOf).toList());
  }

  /** The mean, and the spread where a row stands for several treatments. */
  private static String predicted(TrialPrediction p) {
    if (p.controlPct().isEmpty()) {
      return "not walked";
    }
    String mean = whole(p.controlPct());
    double low = p.treatments().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double high = p.treatments().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    return p.treatments().size() == 1
        ? mean
        : mean + " (" + Math.round(low) + "–" + Math.round(high) + ")";
  }

  private static String whole(OptionalDouble value) {
    return value.isPresent() ? String.valueOf(Math.round(value.getAsDouble())) : "–";
  }

  private static String cell(String text) {
    return text.replace("|", "/").replace("\n", " ");
  }

  private void orderings() {
    List<String> lines = new ArrayList<>();
    int kept = 0;
    for (TrialOrdering o : orderings) {
      OptionalDouble first = predicted(o.better());
      OptionalDouble second = predicted(o.worse());
      if (first.isPresent() && second.isPresent()) {
        boolean isKept = o.isKept(first.getAsDouble(), second.getAsDouble());
        kept += isKept ? 1 : 0;
        lines.add(
            String.format(
                Locale.ROOT,
                "| %s | %s | %.1f, %.1f | %s |\n",
                o.relationWords(),
                cell(o.words()),
                first.getAsDouble(),
                second.getAsDouble(),
                isKept ? "kept" : "**missed**: " + cell(whyMissed(o))));
      }
    }
    if (lines.isEmpty()) {
      return;
    }
    out.append("## Orders that the trials found\n\n").append(kept).append(" of ");
    out.append(lines.size()).append(" kept.\n\n| rows | what | predicted | |\n|---|---|---|---|\n");
    lines.forEach(out::append);
    out.append("\n");
  }

  private static String whyMissed(TrialOrdering o) {
    return o.whyMissed().isEmpty() ? NOT_EXPLAINED : o.whyMissed();
  }

  private OptionalDouble predicted(int row) {
    return predictions.stream()
        .filter(p -> p.row().row() == row)
        .flatMapToDouble(p -> p.controlPct().stream())
        .findFirst();
  }

  private void misses() {
    out.append("## Rows missed by more than ").append(Math.round(TARGET)).append(" points\n\n");
    for (TrialPrediction p : predictions) {
      if (p.error().orElse(0) > TARGET) {
        out.append("- Row ").append(p.row().row()).append(" (").append(p.row().trial());
        out.append("), ").append(whole(p.controlPct())).append(" against ");
        out.append(p.row().published()).append(": ");
        out.append(why.getOrDefault(p.row().row(), NOT_EXPLAINED)).append(".\n");
      }
    }
    out.append("\n");
  }

  private void assumed() {
    List<String> lines = new ArrayList<>();
    for (TrialPrediction p : predictions) {
      if (!p.notes().isEmpty()) {
        lines.add("- Row " + p.row().row() + ": " + String.join("; ", p.notes()) + ".\n");
      }
    }
    out.append("## What had to be assumed, or was not understood\n\n");
    lines.forEach(out::append);
    out.append(lines.isEmpty() ? "Nothing.\n" : "");
  }
}
