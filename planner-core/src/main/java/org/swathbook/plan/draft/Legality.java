package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.check.DatedMix;
import org.swathbook.check.SequenceJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseLegality;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;

/**
 * What the rules forbid on the dates of the grid: single doses, two in a tank, and passes in order.
 * Confined to one thread.
 */
public final class Legality {
  private final Book book;
  private final TraceSet traces;
  private final DoseLegality doses;
  private final PairsByUse pairs;
  private final SequenceJudge sequences;
  private final List<PassTiming> timings = new ArrayList<>();
  private final List<Set<Position>> positions = new ArrayList<>();

  public Legality(Book book, TraceSet traces, DateGrid grid) {
    this.book = book;
    this.traces = traces;
    this.doses = new DoseLegality(book, traces);
    this.pairs = new PairsByUse(new RulesOnPairs());
    this.sequences = SequenceJudge.of(book, traces.field());
    for (int date = 0; date < grid.size(); date++) {
      PassTiming timing = Timings.at(traces, grid.date(date));
      timings.add(timing);
      positions.add(PassPositions.of(traces, timing));
    }
  }

  PassTiming timing(int date) {
    return timings.get(date);
  }

  /** Whether the use rules let a dose pass on a date. */
  public boolean allows(DoseOption option, int date) {
    return doses.allows(option.dose(), timings.get(date), positions.get(date));
  }

  /** Whether the rules on two doses in one tank let them pass on a date. */
  public boolean allows(DoseOption a, DoseOption b, int date) {
    return pairs.allow(a, b, date);
  }

  private final class RulesOnPairs implements PairsByUse.Rules {
    @Override
    public Optional<Use> use(DoseOption dose, int date) {
      return doses.use(dose.dose(), timings.get(date), positions.get(date));
    }

    @Override
    public boolean allow(DoseOption a, DoseOption b, int date) {
      return doses.allows(a.dose(), b.dose(), timings.get(date), positions.get(date));
    }
  }

  /**
   * Whether caps, counts and intervals let the passes of a draft follow each other, after all in
   * the journal.
   */
  boolean allows(Draft draft, PlanSpace space) {
    List<DatedMix> dated = new ArrayList<>();
    for (Stop stop : draft.stops()) {
      dated.add(dated(dated.size(), stop.date(), space.mix(stop)));
    }
    return !sequences.blocks(dated);
  }

  /**
   * For a field where nothing is legal: the blocks of every option, one a rule and active, from the
   * first date met.
   */
  public List<Finding> blocks(List<DoseOption> options) {
    TreeMap<String, Finding> out = new TreeMap<>();
    for (PassTiming timing : timings) {
      for (DoseOption o : options) {
        for (Finding f : blocksOf(timing, o.dose())) {
          out.putIfAbsent(f.rule().value() + " " + o.ingredient().value(), f);
        }
      }
    }
    return List.copyOf(out.values());
  }

  /**
   * What the journal alone holds against each dose on each day on which it could go by itself, one
   * a rule and active; empty when one of them could follow it.
   */
  public List<Finding> blocksAfterJournal(List<DoseOption> options, PlanSpace space) {
    TreeMap<String, Finding> out = new TreeMap<>();
    for (int date = 0; date < timings.size(); date++) {
      for (DoseOption o : options) {
        if (!space.legalOn(date).contains(o.index())) {
          continue;
        }
        List<DatedMix> alone =
            List.of(dated(0, date, space.mix(new Stop(date, List.of(o.index())))));
        if (!sequences.blocks(alone)) {
          return List.of();
        }
        SequenceJudge.judge(book, traces.field(), alone).withoutPass().sorted().stream()
            .filter(f -> f.severity() == Severity.BLOCK)
            .forEach(f -> out.putIfAbsent(f.rule().value() + " " + o.ingredient().value(), f));
      }
    }
    return List.copyOf(out.values());
  }

  private DatedMix dated(int pass, int date, Mix mix) {
    PassTiming t = timings.get(date);
    return new DatedMix(pass, t.medianDate(), t.planned(), positions.get(date), mix);
  }

  private Set<Finding> blocksOf(PassTiming timing, Dose dose) {
    Set<Finding> out = new LinkedHashSet<>();
    for (UseFacts facts : UseJudge.facts(book, traces, 0, timing, Mix.of(List.of(dose)))) {
      UseJudge.judge(facts).withoutPass().sorted().stream()
          .filter(f -> f.severity() == Severity.BLOCK)
          .forEach(out::add);
    }
    return out;
  }
}
