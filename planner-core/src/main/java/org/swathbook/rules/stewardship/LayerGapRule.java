package org.swathbook.rules.stewardship;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** Emergence between planting and needed-until that no layer meets. */
public final class LayerGapRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("layer-gap"),
          Severity.WARN,
          "Does too much of the weed come up while no layer holds?",
          "Exposed emergence, the share that comes between planting and needed-until while all soil"
              + " actives together control less than the house threshold, weighted by what escapes,"
              + " is above the house limit in the median year, or above twice that in one year of"
              + " five. A note for weeds that are no drivers.",
          List.of(Say.COMMON_PRACTICE),
          "Palmer amaranth, 28 % of it exposed, with a layer at planting alone",
          "kochia that is up before a late planting, 1 % of it exposed");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    for (WeedOutcome weed : facts.season().weeds()) {
      if (HouseTests.isExposed(facts.book().house(), weed)) {
        WeedPressure pressure = weed.pressure();
        out.add(
            this,
            pressure.driver().isDriver() ? Severity.WARN : Severity.NOTE,
            About.PROGRAM.withWeed(pressure.weed().id()),
            () -> text(facts, weed));
      }
    }
  }

  private static Text text(ProgramFacts facts, WeedOutcome weed) {
    HouseTests.Exposure e = HouseTests.exposure(facts.book().house(), weed);
    Optional<Gap> gap = typicalGap(facts, weed, e.inMedianYear());
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + ": "
                + (e.inMedianYear() ? "" : "in one year of five ")
                + Say.pct(e.actualPct())
                + " of its emergence comes while no layer holds"
                + gap.map(g -> ", most from " + g.from() + " to " + g.to()).orElse("")
                + "; the house allows "
                + Say.pct(e.limitPct())
                + (e.inMedianYear() ? "." : " in such a year."),
            "house rule maxExposedEmergence")
        .compared(Say.pct(e.actualPct()), Say.pct(e.limitPct()))
        .cleared(
            gap.map(g -> "a layer that holds by " + g.from() + ", or rows that close earlier")
                .orElse("another layer, or rows that close earlier"));
  }

  private record Gap(String from, String to) {}

  /**
   * The gap with most emergence in the median year, or in the one that one in five is worse than.
   */
  private static Optional<Gap> typicalGap(
      ProgramFacts facts, WeedOutcome weed, boolean inMedianYear) {
    List<YearOutcome> years =
        facts.season().years().stream()
            .sorted(
                Comparator.comparingDouble(
                        (YearOutcome y) ->
                            y.exposedShare().getOrDefault(weed.pressure().weed().id(), 0.0))
                    .thenComparing(YearOutcome::year))
            .toList();
    if (years.isEmpty()) {
      return Optional.empty();
    }
    int place = inMedianYear ? years.size() / 2 : (int) Math.ceil(0.8 * years.size()) - 1;
    YearOutcome typical = years.get(Math.max(0, place));
    SeasonTrace trace =
        facts.traces().years().stream()
            .filter(t -> t.year() == typical.year())
            .findFirst()
            .orElseThrow();
    return typical.gaps().stream()
        .filter(g -> g.weed().equals(weed.pressure().weed().id()))
        .max(Comparator.comparingDouble(GapSpan::emergenceShare))
        .map(
            g ->
                new Gap(
                    Say.date(trace.bookDateOf(g.fromDay())),
                    Say.date(trace.bookDateOf(g.toDay()))));
  }
}
