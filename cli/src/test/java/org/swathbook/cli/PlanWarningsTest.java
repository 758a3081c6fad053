package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.PlanText;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.rules.About;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/** The line of warnings above a plan. */
class PlanWarningsTest {
  private static Finding warning(String rule, WeedId weed) {
    return new Finding(
        new RuleId(rule), Severity.WARN, "Words.", "", "", "", "", About.PROGRAM.withWeed(weed));
  }

  private static PlannedField warned(Finding... warnings) {
    PlannedField plan = SamplePlans.recommended();
    PlannedProgram first = plan.programs().get(0);
    Judgement j = first.judgement();
    List<PlannedProgram> programs = new ArrayList<>(plan.programs());
    programs.set(
        0,
        new PlannedProgram(
            first.name(),
            true,
            first.outcome(),
            new Judgement(
                j.verdict(), List.of(warnings), j.asks(), j.brokenHouseRules(), j.tanks()),
            ""));
    return new PlannedField(
        plan.field(),
        Optional.empty(),
        List.of(),
        programs,
        plan.without(),
        plan.front(),
        plan.search(),
        List.of(),
        plan.millis());
  }

  private static String text(PlannedField plan) {
    Book book = Samples.book();
    ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
    return PlanText.of(book, head, List.of(plan)).replaceAll("\\s+", " ");
  }

  /** Other warnings come after them in the alphabet, and are not taken for theirs. */
  @Test
  void howManyLiveStandsWithTheSurvivors() {
    String text =
        text(
            warned(
                warning("layer-gap", Samples.PALMER),
                warning("survivors", Samples.PALMER),
                warning("weed-not-covered", Samples.PALMER),
                warning("weed-not-covered", Samples.FOXTAIL)));

    assertThat(text)
        .containsPattern(
            "see its verdict: layer-gap \\(Palmer amaranth\\), survivors \\(Palmer amaranth:"
                + " [\\d,]+ plants an acre live to harvest, [\\d,]+ of them up in time to"
                + " matter\\), weed-not-covered \\(Palmer amaranth, giant foxtail\\) ");
  }

  @Test
  void eachOfTwoWeedsHasItsOwnNumbers() {
    assertThat(
            text(
                warned(
                    warning("survivors", Samples.PALMER), warning("survivors", Samples.FOXTAIL))))
        .containsPattern(
            "survivors \\(Palmer amaranth: [^;)]+ up in time to matter; giant foxtail: [^;)]+ up in"
                + " time to matter\\) ");
  }
}
