package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.stewardship.SurvivorsRule;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** What may spoil a program: days missed, layers that do not hold, a site lost, what rules say. */
final class HandoutSpoils {
  /** Times what the house allows, above which nobody pulls by hand what is left: default, ours. */
  private static final double TOO_MANY = 10;

  private final Book book;
  private final Field field;
  private final PlannedProgram program;
  private final SeasonOutcome outcome;
  private final String at;

  /**
   * @param at where the program stands in the JSON of the plan
   */
  HandoutSpoils(Book book, Field field, PlannedProgram program, String at) {
    this.book = book;
    this.field = field;
    this.program = program;
    this.outcome = program.outcome();
    this.at = at;
  }

  private String pass(PassOutcome p, String key) {
    return at + "/passes/" + p.index() + "/" + key;
  }

  List<Marked> lines() {
    Set<Marked> out = new LinkedHashSet<>();
    int years = outcome.years().size();
    for (PassOutcome p : outcome.passes()) {
      if (!p.missedYears().isEmpty()) {
        out.add(
            Marked.of(
                "Pass "
                    + (p.index() + 1)
                    + " would have found no day inside its windows in "
                    + p.missedYears().size()
                    + " of "
                    + years
                    + " past years.",
                pass(p, "pass"),
                pass(p, "missedYears"),
                "-"));
      }
    }
    for (WeedOutcome w : outcome.weeds()) {
      if (w.pressure().driver().isDriver()) {
        weed(w, years, out);
      }
    }
    YearOutcome worst = LossByYear.worst(outcome);
    out.add(
        Marked.of(
            "The worst of the years, "
                + worst.year()
                + ", would have cost $"
                + ProgramWords.money(LossByYear.of(book, field).in(worst))
                + " an acre in yield; the mean is $"
                + ProgramWords.money(outcome.loss())
                + ".",
            at + "/worstYear",
            at + "/worstYearLossPerAcre",
            at + "/lossPerAcre"));
    List<Finding> findings = program.judgement().findings();
    for (int i = 0; i < findings.size(); i++) {
      Finding f = findings.get(i);
      // How many survive is said above, in the grower's words.
      if ((f.severity() == Severity.WARN || f.severity() == Severity.BLOCK) && !isOfSurvivors(f)) {
        String finding = at + "/findings/" + i;
        out.add(
            f.about().pass().isEmpty()
                ? Marked.of(f.message(), finding + "/message")
                : Marked.of(
                    "Pass " + (f.about().pass().getAsInt() + 1) + ": " + f.message(),
                    finding + "/message",
                    finding + "/about/pass"));
      }
    }
    int asks = program.judgement().asks().size();
    if (asks > 0) {
      out.add(
          Marked.of(
              asks
                  + (asks == 1 ? " thing is" : " things are")
                  + " not known and to be looked up before spraying; your adviser has the list.",
              at + "/asks"));
    }
    return new ArrayList<>(out);
  }

  private void weed(WeedOutcome w, int years, Set<Marked> out) {
    String name = w.pressure().weed().name();
    String code = w.pressure().weed().id().value();
    for (PassOutcome p : outcome.passes()) {
      String layer = pass(p, "layers/" + code);
      LayerSummary.of(outcome, book.season(), p.index(), w.pressure().weed().id())
          .filter(l -> l.withLayer() < years)
          .ifPresent(
              l ->
                  out.add(
                      Marked.of(
                          "The soil layer of pass "
                              + (p.index() + 1)
                              + " on "
                              + name
                              + " would not have held in "
                              + (years - l.withLayer())
                              + " of "
                              + years
                              + " past years.",
                          pass(p, "pass"),
                          layer + "/years-" + layer + "/yearsWithLayer",
                          layer + "/years")));
    }
    w.weakestSite()
        .ifPresent(
            s ->
                out.add(
                    Marked.of(
                        "If site "
                            + s.number()
                            + " no longer worked on "
                            + name
                            + " here, control would be "
                            + ProgramWords.percent(w.controlPctWithoutWeakest())
                            + " % in place of "
                            + ProgramWords.percent(w.controlPct())
                            + " %.",
                        at + "/weakestSite/" + code + "/site",
                        at + "/weakestSite/" + code + "/controlPctWithoutIt",
                        at + "/controlPct/" + code)));
    double allowed = book.house().maxSurvivorsPerAcre();
    out.add(
        Marked.of(
            "About "
                + ProgramWords.count(w.survivorsPerAcre())
                + " plants of "
                + name
                + " an acre that came up in time to matter live to harvest, mean of the years; "
                + (w.pressure().driver() == DriverKind.ZERO
                    ? "none may"
                    : "the house allows " + ProgramWords.count(allowed))
                + (w.survivorsPerAcre() > TOO_MANY * allowed
                    ? ". They are too many to pull: talk over what else keeps them from seeding."
                    : ". Look for them, and pull or chop what sets seed."),
            at + "/survivorsPerAcre/" + code + "/beforeNeededUntil",
            "-"));
  }

  private static boolean isOfSurvivors(Finding f) {
    return f.rule().equals(SurvivorsRule.CARD.id());
  }
}
