package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Neighbor;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.check.DatedMix;
import org.swathbook.check.MixJudge;
import org.swathbook.check.PairJudge;
import org.swathbook.check.SequenceJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.mixture.AntagonismRule;
import org.swathbook.rules.timing.StageWindowRule;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * Passes of a season judged by the rules of a plan: each use, each pair in a tank, and all passes
 * in order. What a rule would have to know of the spraying itself (wind, water, nozzles) is not
 * judged, and neither is what the catalog does not say. Crop stages are the journal's where it has
 * them, and the model's in the weather of that season where not.
 */
final class JournalJudge {
  /**
   * A pass as it was made.
   *
   * @param written what the journal keeps of its spraying; nothing of a pass that is only thought
   *     of
   */
  record Made(String id, LocalDate date, Mix mix, SprayRecord written) {
    Made(String id, LocalDate date, Mix mix) {
      this(id, date, mix, SprayRecord.EMPTY);
    }
  }

  private final Book past;
  private final TraceSet traces;
  private final WalkedPasses walked;
  private final List<Made> passes;

  /**
   * @param walked those of the passes that could be walked, in the same order
   */
  JournalJudge(Book past, TraceSet traces, WalkedPasses walked, List<Made> passes) {
    this.past = past;
    this.traces = traces;
    this.walked = walked;
    this.passes = List.copyOf(passes);
  }

  /** Blocks and warnings, by pass, then severity. */
  List<JournalFinding> judge() {
    return judged(
            List.of(new AntagonismRule()), new TankOffers(past, traces), Findings.objections())
        .sorted()
        .stream()
        .filter(f -> f.severity() == Severity.BLOCK || f.severity() == Severity.WARN)
        .filter(f -> f.about().pass().isPresent())
        // "Look before spraying" comes too late for a pass that was made.
        .filter(f -> f.severity() == Severity.BLOCK || !isForTheDay(f))
        .sorted(Comparator.comparingInt(f -> f.about().pass().orElseThrow()))
        .map(this::of)
        .toList();
  }

  /**
   * What blocks the same passes as a plan, by the rules of a tank too, and what they ask.
   *
   * @param offers of the season; they do not hang on its passes
   */
  Findings judgeAsPlanned(TankOffers offers) {
    return judged(RuleBook.ofScope(PassRule.class), offers, Findings.refusals());
  }

  private Findings judged(List<PassRule> ofTanks, TankOffers offers, Findings out) {
    List<List<ActiveUse>> tanks = new ArrayList<>();
    List<DatedMix> dated = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      Made made = passes.get(p);
      PassTiming timing = Timings.on(traces, made.date());
      Set<Position> positions = PassPositions.of(traces, timing);
      dated.add(new DatedMix(p, made.date(), positions, made.mix()));
      List<ActiveUse> tank = new ArrayList<>();
      for (UseFacts facts : UseJudge.facts(past, traces, p, timing, made.mix())) {
        Optional<Use> use = UseJudge.choose(facts);
        UseJudge.judge(facts, use, out);
        tank.add(new ActiveUse(facts.dose(), facts.active(), use));
      }
      PairJudge.judge(tank, About.PROGRAM.withPass(p), out);
      tanks.add(List.copyOf(tank));
    }
    SequenceJudge.judge(past, traces.field(), dated, out);
    ofTanks(ofTanks, tanks, offers, out);
    return out;
  }

  private static boolean isForTheDay(Finding f) {
    return f.rule().equals(StageWindowRule.CARD.id());
  }

  /** Rules that need the walked pass; what is not walked they cannot judge. */
  private void ofTanks(
      List<PassRule> rules, List<List<ActiveUse>> tanks, TankOffers offers, Findings out) {
    int next = 0;
    for (PassOutcome pass : walked.passes()) {
      while (!isSame(passes.get(next), pass)) {
        next++;
      }
      Findings found = out.fresh();
      PassFacts facts =
          new PassFacts(
              past,
              traces,
              walked,
              pass,
              PassPositions.of(traces, pass.timing()),
              tanks.get(next),
              Optional.empty(),
              offers);
      rules.forEach(r -> r.judge(facts, found));
      MixJudge.dayFindings(facts, job(passes.get(next)), Optional.empty(), found);
      out.addAll(found.ofPass(next));
      next++;
    }
  }

  /** The spraying as far as its row tells: wind, air and where the wind came from. */
  private SprayJob job(Made made) {
    SprayWeather none = SprayWeather.UNKNOWN;
    SprayRecord r = made.written();
    return SprayJob.of(traces.field().id(), made.date(), made.mix())
        .with(
            new SprayWeather(
                r.windMph(),
                none.gustMph(),
                Neighbor.degrees(r.windFrom()),
                r.tempF(),
                none.highF(),
                none.coldestNightF(),
                none.humidityPct(),
                none.inversion(),
                none.hoursToRain(),
                none.dryHours(),
                none.rainNext24hIn(),
                none.rainNext48hIn(),
                none.rainNext10dIn(),
                none.meanPast3dF(),
                none.meanNext3dF(),
                false));
  }

  private static boolean isSame(Made made, PassOutcome pass) {
    return made.date().equals(pass.planned()) && made.mix().equals(pass.mix());
  }

  private JournalFinding of(Finding f) {
    Made made = passes.get(f.about().pass().orElseThrow());
    return new JournalFinding(traces.field(), past.season(), made.id(), made.date(), f);
  }
}
