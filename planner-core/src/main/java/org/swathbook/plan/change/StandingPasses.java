package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.check.DatedMix;
import org.swathbook.check.SequenceJudge;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.QuickScore;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.PassPositions;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;

/**
 * Programs of one field that share most of their passes, made ready once for each pass. Passes are
 * told apart by being the same object: a pass is deep, and most programs differ in one.
 */
public final class StandingPasses {
  private final Book book;
  private final Kernel kernel;
  private final IdentityHashMap<Pass, StandingPass> known = new IdentityHashMap<>();

  public StandingPasses(Book book, Kernel kernel) {
    this.book = book;
    this.kernel = kernel;
  }

  /** In the order of their dates, those of one date as written. */
  public List<StandingPass> of(Program program) {
    List<StandingPass> out = new ArrayList<>();
    for (Pass p : program.passes()) {
      out.add(known.computeIfAbsent(p, this::make));
    }
    out.sort(Comparator.comparing(StandingPass::planned));
    return out;
  }

  private StandingPass make(Pass p) {
    LocalDate date = Anchors.resolve(p.at(), kernel.traces(), book.house().sizePercentile());
    return new StandingPass(
        p,
        p.at() instanceof Anchor.Made ? kernel.made(p.mix(), date) : kernel.prepare(p.mix(), date));
  }

  /** A product without a price counts as free here: what lacks it is the same in all programs. */
  public double quick(Program program) {
    List<StandingPass> standing = of(program);
    List<PreparedPass> passes = standing.stream().map(StandingPass::prepared).toList();
    long[] cents =
        standing.stream()
            .mapToLong(s -> book.prices().perAcre(s.pass().mix()).orElse(Money.ZERO).cents())
            .toArray();
    return QuickScore.of(book, kernel, passes, cents).net();
  }

  /**
   * Whether caps, counts and intervals let the passes follow each other; those made count by the
   * journal.
   */
  public boolean isLegalInOrder(Program program) {
    TraceSet traces = kernel.traces();
    List<DatedMix> dated = new ArrayList<>();
    for (StandingPass s : of(program)) {
      if (s.made()) {
        continue;
      }
      dated.add(
          new DatedMix(
              dated.size(),
              s.prepared().timing().medianDate(),
              s.planned(),
              PassPositions.of(traces, s.prepared().timing()),
              s.pass().mix()));
    }
    return !SequenceJudge.blocks(book, traces.field(), dated);
  }
}
