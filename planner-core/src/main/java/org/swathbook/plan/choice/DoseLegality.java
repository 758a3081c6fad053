package org.swathbook.plan.choice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.check.PairJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.UseFacts;

/** What the rules forbid of one dose, and of two doses in one tank, on a day. */
public final class DoseLegality {
  private final Book book;
  private final TraceSet traces;

  public DoseLegality(Book book, TraceSet traces) {
    this.book = book;
    this.traces = traces;
  }

  /** Whether the use rules let a dose pass. */
  public boolean allows(Dose dose, PassTiming timing) {
    return allows(dose, timing, PassPositions.of(traces, timing));
  }

  /** The same with the positions of the pass at hand. */
  public boolean allows(Dose dose, PassTiming timing, Set<Position> positions) {
    return UseJudge.facts(book, traces, timing, positions, Mix.of(List.of(dose))).stream()
        .allMatch(facts -> facts.candidates().stream().anyMatch(use -> allows(facts, use)));
  }

  /**
   * The use that speaks for the only active of a dose alone in its tank; empty when the label lists
   * none.
   */
  public Optional<Use> use(Dose dose, PassTiming timing, Set<Position> positions) {
    return UseJudge.choose(
        UseJudge.facts(book, traces, timing, positions, Mix.of(List.of(dose))).get(0));
  }

  /**
   * Whether two doses may be planned into one tank: the rules on pairs let them pass, and neither
   * refuses an adjuvant that the other cannot do without.
   */
  public boolean allows(Dose a, Dose b, PassTiming timing) {
    return allows(a, b, timing, PassPositions.of(traces, timing));
  }

  /** The same with the positions of the pass at hand. */
  public boolean allows(Dose a, Dose b, PassTiming timing, Set<Position> positions) {
    return !PairJudge.spoils(book, traces, timing, positions, a, b);
  }

  /**
   * A use that no rule blocks and whose range on the field's soils the rate does not fall short of.
   */
  private boolean allows(UseFacts facts, Use use) {
    return SoilRates.of(use, traces.field()) instanceof SoilRates.Allowed a
        && !Quantity.exceeds(a.range().low().lbPerAcre(), facts.active().lbPerAcre())
        && !UseJudge.blocks(facts.among(List.of(use)));
  }
}
