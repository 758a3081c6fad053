package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.rules.Verdict;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressedWalk;

/** All cases of a stress test side by side. */
final class StressTable {
  /** Rules that say of a broken house rule what it says itself, beside the name of that. */
  private static final Map<String, String> SAID_BY_HOUSE_RULE =
      Map.of(
          "single-site", HouseRuleCheck.MIN_FOLIAR_SITES,
          "layer-gap", HouseRuleCheck.MAX_EXPOSED_EMERGENCE,
          "layer-overlap", HouseRuleCheck.MIN_LAYER_OVERLAP,
          "weed-not-covered", HouseRuleCheck.SEASON_CONTROL,
          "depends-on-one-site", HouseRuleCheck.ONE_SITE_GONE,
          "window-confidence", HouseRuleCheck.WINDOW_CONFIDENCE);

  private final SeasonOutcome plain;
  private final Judgement judgement;
  private final List<WeedOutcome> drivers;

  StressTable(SeasonOutcome plain, Judgement judgement, List<WeedOutcome> drivers) {
    this.plain = plain;
    this.judgement = judgement;
    this.drivers = List.copyOf(drivers);
  }

  void on(Page page, List<StressResult> results) {
    Table table = new Table(2, "l" + "r".repeat(drivers.size()) + "rrl");
    List<String> names = new ArrayList<>(List.of(""));
    List<String> units = new ArrayList<>(List.of("case"));
    for (WeedOutcome w : drivers) {
      names.add(w.pressure().weed().id().value() + " control %");
      units.add("mean (worst)");
    }
    names.addAll(List.of("net", "change", ""));
    units.addAll(List.of("$/acre", "$/acre", "breaks"));
    table.row(names).row(units);
    table.row(row("as planned", plain, asPlanned()));
    for (StressResult r : results) {
      if (r.whyNot().isEmpty()) {
        String title = r.title() + (r.walks().size() > 1 ? " †" : "");
        table.row(row(title, r.worstWalk().outcome(), breaks(r.worstWalk())));
      }
    }
    table.on(page);
  }

  private String asPlanned() {
    List<String> broken = judgement.brokenNames();
    return broken.isEmpty() ? "" : "(already: " + String.join(", ", broken) + ")";
  }

  private static String breaks(StressedWalk walk) {
    List<String> parts = new ArrayList<>();
    if (walk.judgement().verdict() == Verdict.BLOCKED) {
      parts.add("BLOCKED");
    }
    List<String> names = walk.breaks().names();
    names.stream()
        .filter(n -> !names.contains(SAID_BY_HOUSE_RULE.getOrDefault(n, "")))
        .forEach(parts::add);
    return parts.isEmpty() ? "nothing new" : String.join(", ", parts);
  }

  private List<String> row(String title, SeasonOutcome o, String breaks) {
    List<String> cells = new ArrayList<>(List.of(title));
    for (WeedOutcome d : drivers) {
      WeedOutcome w = o.weed(d.pressure().weed().id());
      cells.add(
          Figures.percent(w.controlPct()) + " (" + Figures.percent(w.worstYearControlPct()) + ")");
    }
    cells.add(o.net().map(Figures::money).orElse("unknown"));
    cells.add(
        o.equals(plain)
            ? ""
            : o.net()
                .flatMap(n -> plain.net().map(n::minus))
                .map(StressText::signed)
                .orElse("unknown"));
    cells.add(breaks);
    return cells;
  }
}
