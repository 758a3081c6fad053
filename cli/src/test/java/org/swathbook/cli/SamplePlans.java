package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.measure.Money;
import org.swathbook.plan.Effort;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.LiftedLimit;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.Relaxation;
import org.swathbook.plan.SearchNote;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.WithoutPart;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.compare.AgainstFirst;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.plan.keep.Kept;
import org.swathbook.plan.keep.KeptProgram;
import org.swathbook.plan.keep.KeptWithout;
import org.swathbook.program.Dose;
import org.swathbook.rules.About;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/** Plans by hand around {@link Samples}. */
final class SamplePlans {
  private SamplePlans() {}

  static PlannedField recommended() {
    return plan(
        Optional.empty(),
        new PlannedProgram(
            "Best net return",
            true,
            Samples.outcome("Best net return", 2),
            SampleJudgement.of(),
            ""),
        new PlannedProgram(
            "Least cost",
            false,
            Samples.outcome("Least cost", 1),
            SampleJudgement.of(SampleJudgement.broken()),
            "5.1 points of control of Palmer amaranth in the worst year"));
  }

  static PlannedField notRecommended() {
    Map<WeedId, Double> control = new LinkedHashMap<>();
    control.put(Samples.PALMER, 96.04);
    control.put(Samples.FOXTAIL, 99.0);
    return plan(
        Optional.of(
            new Refusal(
                false,
                List.of(),
                List.of(SampleJudgement.broken()),
                List.of(
                    new Relaxation(
                        "maxExposedEmergence", "5 %", "9.2 %", Money.ofDollars(561.2), control)),
                List.of("oneSiteGone", "seasonControl"))),
        new PlannedProgram(
            "Fewest house rules broken",
            false,
            Samples.outcome("Fewest house rules broken", 3),
            SampleJudgement.of(SampleJudgement.broken()),
            ""));
  }

  static PlannedField refused() {
    return plan(
        Optional.of(
            new Refusal(
                false,
                List.of(
                    new Finding(
                        new RuleId("next-crop-interval"),
                        Severity.BLOCK,
                        "Fomesafen of 14 Jul 2026 keeps corn off this field until 14 May 2027;"
                            + " planting is 28 Apr 2027.",
                        "10 months",
                        "9 months 14 days",
                        "label, from memory",
                        "plant on or after 14 May 2027, or another crop",
                        About.PROGRAM.withIngredient(IngredientId.of("fomesafen")))),
                List.of(),
                List.of(),
                List.of())));
  }

  private static PlannedField plan(Optional<Refusal> refusal, PlannedProgram... programs) {
    return new PlannedField(
        Samples.field(),
        refusal,
        refusal.isPresent() && programs.length > 0
            ? List.of(
                new LiftedLimit(
                    "maxPasses",
                    "at most 2 asked",
                    "3 passes",
                    true,
                    recommended().programs().get(0)))
            : List.of(),
        List.of(programs),
        programs.length == 0 ? List.of() : without(programs[0]),
        front(programs),
        new SearchNote(
            Effort.USUAL,
            214,
            38,
            41233,
            60,
            false,
            programs.length == 0 ? Optional.empty() : Optional.of(Money.ofDollars(12.34)),
            programs.length == 0 ? Optional.empty() : Optional.of(Money.ofDollars(45.67)),
            programs.length == 0 ? List.of() : List.of("Least cost"),
            programs.length == 0 ? 0 : 24,
            List.of("glyphosate-4.5sl: every driver weed resists site 9")),
        List.of(),
        OptionalLong.empty());
  }

  private static List<WithoutPart> without(PlannedProgram first) {
    Dose dose = first.outcome().program().passes().get(0).mix().doses().get(0);
    return List.of(
        new WithoutPart(
            0,
            Optional.empty(),
            Optional.of(Money.ofDollars(-40.25)),
            Optional.of(Samples.PALMER),
            96.04,
            71.2,
            List.of("seasonControl", "oneSiteGone")),
        new WithoutPart(
            0,
            Optional.of(dose),
            Optional.of(Money.ofDollars(2.5)),
            Optional.empty(),
            Double.NaN,
            Double.NaN,
            List.of()));
  }

  private static List<FrontProgram> front(PlannedProgram... programs) {
    return Arrays.stream(programs)
        .map(
            p ->
                new FrontProgram(
                    p.outcome().passes().stream()
                        .map(
                            x ->
                                new FrontProgram.Trip(
                                    x.planned(),
                                    x.mix().doses().stream().map(d -> d.product().id()).toList()))
                        .toList(),
                    p.outcome().cost().orElse(Money.ZERO),
                    p.outcome().loss(),
                    p.outcome().net(),
                    p.recommended() ? 91.5 : 62.9,
                    p.judgement().brokenNames()))
        .toList();
  }

  /** Programs of which each dearer one nets more, two of them so near that discs would overlap. */
  static PlannedField withFront() {
    PlannedField plan = recommended();
    List<FrontProgram> front = new ArrayList<>();
    for (double[] p : new double[][] {{30.5, 400}, {52.25, 480.75}, {52.75, 486}, {91, 520.1}}) {
      FrontProgram first = plan.front().get(0);
      front.add(
          new FrontProgram(
              first.passes(),
              Money.ofDollars(p[0]),
              Money.ofDollars(700 - p[0] - p[1]),
              Optional.of(Money.ofDollars(p[1])),
              80 + p[0] / 10,
              p[0] > 90 ? List.of() : List.of("minFoliarSites")));
    }
    return new PlannedField(
        plan.field(),
        plan.refusal(),
        plan.limits(),
        plan.programs(),
        plan.without(),
        front,
        plan.search(),
        List.of(),
        OptionalLong.empty());
  }

  /** The refused field, asked about an active that a rule refuses and about one that it has. */
  static PlannedField asked() {
    PlannedField plan = refused();
    return new PlannedField(
        plan.field(),
        plan.refusal(),
        plan.limits(),
        plan.programs(),
        plan.without(),
        plan.front(),
        plan.search(),
        List.of(
            new WhyNot(
                Samples.CATALOG.findIngredient("fomesafen").orElseThrow(),
                false,
                Optional.empty(),
                "",
                false,
                List.of(),
                plan.refusal().orElseThrow().because(),
                List.of("fomesafen-2sl: no price in prices.csv")),
            new WhyNot(
                Samples.CATALOG.findIngredient("acetochlor").orElseThrow(),
                false,
                Optional.of(recommended().programs().get(0)),
                "costs $3.00 more",
                false,
                List.of(
                    new LiftedLimit(
                        "--budget",
                        "at most $60.00 asked",
                        "$84.20 an acre when every pass is made",
                        true,
                        recommended().programs().get(0))),
                List.of(),
                List.of())),
        OptionalLong.empty());
  }

  /** Two programs side by side, and one that could not be had. */
  static ComparedField compared() {
    return new ComparedField(
        Samples.field(),
        List.of(
            compared("two-layers", true, 2, new AgainstFirst(List.of(), List.of())),
            compared(
                "one-layer",
                false,
                1,
                new AgainstFirst(
                    List.of("net return $12.50 lower", "breaks minFoliarSites of the house"),
                    List.of("costs $31.20 less")))),
        List.of("best is left out: the planner found no legal program."));
  }

  private static ComparedProgram compared(
      String name, boolean recommended, int passes, AgainstFirst against) {
    return new ComparedProgram(
        name,
        recommended,
        new ComparedProgram.Judged(
            Samples.outcome(name, passes),
            recommended ? SampleJudgement.of() : SampleJudgement.of(SampleJudgement.broken()),
            Optional.of(Money.ofDollars(-12.5))),
        against,
        List.of("It is a sample."));
  }

  static KeptField kept() {
    LocalDate day = LocalDate.of(2027, 6, 6);
    Dose dose = Samples.outcome("Kept", 1).program().passes().get(0).mix().doses().get(0);
    SingleChange change =
        new SingleChange(
            SingleChange.Kind.EXCHANGE_PRODUCT,
            day,
            Optional.of(day.plusDays(3)),
            List.of(dose),
            Optional.of(dose),
            Samples.outcome("Kept", 2).program());
    return new KeptField(
        Samples.field(),
        "two-layers",
        new Kept(
            kept("As written", List.of()),
            List.of("It is a sample."),
            List.of("A product is to be left out."),
            List.of(kept("With one change", List.of(change))),
            Optional.of(recommended().programs().get(0)),
            Optional.empty(),
            1234),
        List.of(
            new KeptWithout(
                "--budget", "at most $40.00 asked", kept("With one change", List.of(change)))),
        Effort.USUAL);
  }

  private static KeptProgram kept(String name, List<SingleChange> changes) {
    return new KeptProgram(
        name,
        changes,
        new ComparedProgram.Judged(
            Samples.outcome(name, 2),
            SampleJudgement.of(SampleJudgement.broken()),
            Optional.of(Money.ofDollars(12.5))),
        List.of("minFoliarSites"),
        new AgainstFirst(List.of("costs $2.80 more"), List.of()));
  }
}
