package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.check.Judgement;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.plan.change.NearPass;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.stress.Breaks;
import org.swathbook.stress.FallenPass;
import org.swathbook.stress.Remedy;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressedWalk;

/**
 * Results of a stress test by hand: a case with all that it can have, one without help, one not
 * put.
 */
final class SampleStress {
  private static final SeasonOutcome OUTCOME = Samples.outcome("Sample", 3);
  private static final Judgement JUDGED = SampleJudgement.of(SampleJudgement.broken());

  private SampleStress() {}

  static List<StressResult> results() {
    return List.of(
        new StressResult(
            "no-rain-after-first-layer",
            "no rain for 14 days after pass 1",
            Optional.empty(),
            List.of("Irrigation stays out with the rain."),
            List.of(walk("", Optional.of(OUTCOME), Optional.empty())),
            0,
            Optional.of(LocalDate.of(2027, 5, 27)),
            List.of(moved(), exchanged(), nearer())),
        new StressResult(
            "one-more-resistance",
            "one more resistance",
            Optional.empty(),
            List.of(),
            List.of(
                walk("Palmer amaranth, site 4", Optional.empty(), Optional.of(OUTCOME)),
                walk("Palmer amaranth, site 14", Optional.empty(), Optional.of(OUTCOME))),
            1,
            Optional.of(Samples.TODAY),
            List.of()),
        new StressResult(
            "late-post-6-days",
            "sprayer 6 days late at the first post",
            Optional.of("no pass over the crop"),
            List.of(),
            List.of(),
            -1,
            Optional.empty(),
            List.of()));
  }

  private static StressedWalk walk(
      String of, Optional<SeasonOutcome> watered, Optional<SeasonOutcome> milder) {
    return new StressedWalk(
        of,
        OUTCOME,
        JUDGED,
        new Breaks(
            JUDGED.brokenHouseRules(),
            JUDGED.findings().stream().filter(f -> f.severity().word().equals("warn")).toList()),
        List.of(new FallenPass(1, LocalDate.of(2027, 6, 12), 2, 1)),
        watered,
        milder);
  }

  private static Remedy moved() {
    return new Remedy(
        change(
            SingleChange.Kind.MOVE_PASS,
            Optional.of(LocalDate.of(2027, 6, 3)),
            List.of(),
            Optional.empty()),
        Optional.of(Money.ofDollars(-1.5)));
  }

  /** Three days after the pass of 6 June. */
  private static Remedy nearer() {
    JudgedChange c =
        change(
            SingleChange.Kind.ADD_PASS,
            Optional.empty(),
            OUTCOME.passes().get(1).mix().doses(),
            Optional.empty());
    return new Remedy(
        new JudgedChange(
            c.change(),
            c.outcome(),
            c.judgement(),
            c.mends(),
            List.of(NearPass.RULE),
            Optional.of(new NearPass(LocalDate.of(2027, 6, 3), 3, 7)),
            c.cost(),
            c.net()),
        Optional.empty());
  }

  private static Remedy exchanged() {
    return new Remedy(exchange(), Optional.empty());
  }

  static JudgedChange exchange() {
    List<Dose> doses = OUTCOME.passes().get(1).mix().doses();
    return change(
        SingleChange.Kind.EXCHANGE_PRODUCT,
        Optional.empty(),
        List.of(doses.get(0)),
        Optional.of(doses.get(1)));
  }

  private static JudgedChange change(
      SingleChange.Kind kind, Optional<LocalDate> to, List<Dose> in, Optional<Dose> out) {
    return new JudgedChange(
        new SingleChange(kind, LocalDate.of(2027, 6, 6), to, in, out, OUTCOME.program()),
        OUTCOME,
        JUDGED,
        List.of("seasonControl"),
        List.of("minLayerOverlap"),
        Optional.empty(),
        Optional.of(Money.ofDollars(4.25)),
        Optional.of(Money.ofDollars(12.5)));
  }
}
