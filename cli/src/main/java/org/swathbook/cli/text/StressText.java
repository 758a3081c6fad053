package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.ChangeWords;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.stress.FallenPass;
import org.swathbook.stress.Remedy;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressedWalk;

/** What breaks when the season goes wrong, and what then helps. */
final class StressText {
  private final SeasonOutcome plain;
  private final Judgement judgement;
  private final List<WeedOutcome> drivers;

  StressText(SeasonOutcome plain, Judgement judgement) {
    this.plain = plain;
    this.judgement = judgement;
    this.drivers = plain.weeds().stream().filter(w -> w.pressure().driver().isDriver()).toList();
  }

  void on(Page page, List<StressResult> results) {
    page.rule('-');
    page.line("What if the season goes wrong");
    page.wrapped(
        0,
        "Each case is walked through every weather year again. Breaks: house rules and rules that"
            + " are broken now and were not as planned.");
    page.blank();
    new StressTable(plain, judgement, drivers).on(page, results);
    if (results.stream().anyMatch(r -> r.walks().size() > 1)) {
      page.line("  † the worst of several; the others are named below");
    }
    page.blank();
    results.forEach(r -> result(page, r));
  }

  private Optional<Money> change(SeasonOutcome o) {
    return o.net().flatMap(n -> plain.net().map(n::minus));
  }

  static String signed(Money m) {
    return (m.cents() > 0 ? "+" : "") + Figures.money(m);
  }

  private void result(Page page, StressResult r) {
    if (r.whyNot().isPresent()) {
      page.wrapped(0, 2, capital(r.title()) + ": not asked, " + r.whyNot().get() + ".");
      page.blank();
      return;
    }
    StressedWalk w = r.worstWalk();
    page.line(capital(r.title()) + (w.of().isEmpty() ? "" : "; the worst is " + w.of()));
    page.wrapped(2, 4, what(w));
    for (Finding f : w.breaks().findings()) {
      if (f.severity() == Severity.BLOCK) {
        page.wrapped(2, 4, "BLOCKED by " + f.rule() + ": " + f.message());
      }
    }
    for (FallenPass f : w.fallen()) {
      page.wrapped(
          2,
          4,
          "Pass "
              + (f.pass() + 1)
              + ", "
              + Figures.day(f.planned())
              + ", falls out of its windows in "
              + f.missed()
              + " of "
              + Figures.counted(w.outcome().years().size(), "year", "years")
              + " instead of "
              + f.before()
              + ".");
    }
    w.milder()
        .ifPresent(
            m -> page.wrapped(2, 4, "With half of the plants resistant: " + effect(m) + "."));
    w.watered()
        .ifPresent(
            m ->
                page.wrapped(
                    2,
                    4,
                    "Watered in with 0.5 in on the third day: "
                        + effect(m)
                        + "; what the water costs is not counted."));
    others(page, r);
    r.notes().forEach(n -> page.wrapped(2, 4, n));
    remedies(page, r, w);
    page.blank();
  }

  /**
   * {@code Control of Palmer amaranth 80.1 instead of 91.8 %, 5 % of its emergence exposed ...}.
   */
  private String what(StressedWalk w) {
    List<String> parts = new ArrayList<>();
    for (WeedOutcome d : drivers) {
      WeedOutcome now = w.outcome().weed(d.pressure().weed().id());
      parts.add(
          d.pressure().weed().name()
              + ": control "
              + instead(now.controlPct(), d.controlPct())
              + " (worst year "
              + instead(now.worstYearControlPct(), d.worstYearControlPct())
              + "), exposed "
              + instead(now.exposedPct(), d.exposedPct()));
    }
    parts.add(
        "yield loss "
            + Figures.money(w.outcome().loss())
            + " instead of "
            + Figures.money(plain.loss())
            + " $/acre");
    return String.join("; ", parts) + ".";
  }

  private static String instead(double now, double before) {
    String a = Figures.percent(now);
    String b = Figures.percent(before);
    return a.equals(b) ? a + " % as planned" : a + " instead of " + b + " %";
  }

  private String effect(SeasonOutcome o) {
    List<String> parts = new ArrayList<>();
    for (WeedOutcome d : drivers) {
      parts.add(
          d.pressure().weed().name()
              + " "
              + Figures.percent(o.weed(d.pressure().weed().id()).controlPct())
              + " %");
    }
    return String.join(", ", parts)
        + ", net "
        + o.net().map(n -> Figures.money(n) + " $/acre").orElse("unknown");
  }

  private void others(Page page, StressResult r) {
    List<String> parts = new ArrayList<>();
    for (StressedWalk w : r.walks()) {
      if (!w.of().equals(r.worstWalk().of())) {
        parts.add(w.of() + " " + change(w.outcome()).map(StressText::signed).orElse("unknown"));
      }
    }
    if (!parts.isEmpty()) {
      page.wrapped(2, 4, "The others change the net return by: " + String.join(", ", parts) + ".");
    }
  }

  private void remedies(Page page, StressResult r, StressedWalk stressed) {
    String from = r.knownFrom().map(Figures::day).orElse("now on");
    if (r.remedies().isEmpty()) {
      page.wrapped(
          2,
          4,
          "Nothing legal helps from "
              + from
              + " on: no single change of product, rate or date mends a house rule or brings a"
              + " dollar an acre.");
      return;
    }
    page.line("  What then helps, from " + from + " on:");
    for (Remedy remedy : r.remedies()) {
      remedy(page, remedy, stressed);
    }
  }

  private void remedy(Page page, Remedy remedy, StressedWalk stressed) {
    JudgedChange c = remedy.change();
    List<String> parts = new ArrayList<>();
    for (WeedOutcome d : drivers) {
      WeedOutcome before = stressed.outcome().weed(d.pressure().weed().id());
      WeedOutcome after = c.outcome().weed(d.pressure().weed().id());
      parts.add(
          d.pressure().weed().name()
              + " "
              + Figures.percent(before.controlPct())
              + " to "
              + Figures.percent(after.controlPct())
              + " %");
    }
    parts.add("net " + c.net().map(m -> signed(m) + " $/acre").orElse("unknown"));
    parts.add("cost " + c.cost().map(m -> signed(m) + " $/acre").orElse("unknown"));
    int missed = missed(c.outcome());
    if (missed != missed(stressed.outcome())) {
      parts.add(
          "passes missed over all years " + missed + " instead of " + missed(stressed.outcome()));
    }
    if (!c.mends().isEmpty()) {
      parts.add("mends " + Figures.list(c.mends()));
    }
    if (!c.breaks().isEmpty()) {
      parts.add("breaks " + Figures.list(c.breaks()));
    }
    c.near()
        .ifPresent(
            n ->
                parts.add(
                    Figures.counted((int) n.days(), "day", "days")
                        + " from the pass of "
                        + Figures.day(n.other())
                        + ", nearer than the house's "
                        + n.asked()));
    parts.add("verdict " + c.judgement().verdict().word());
    page.wrapped(
        4,
        6,
        ChangeWords.of(c.change(), Figures::day)
            + ": "
            + String.join("; ", parts)
            + remedy
                .netWithoutTrouble()
                .map(
                    m ->
                        ". Without the trouble the same change would bring "
                            + signed(m)
                            + " $/acre")
                .orElse("")
            + ".");
  }

  private static int missed(SeasonOutcome o) {
    return o.passes().stream().mapToInt(p -> p.missedYears().size()).sum();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
