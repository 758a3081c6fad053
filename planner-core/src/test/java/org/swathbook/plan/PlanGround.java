package org.swathbook.plan;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.climb.Mending;
import org.swathbook.plan.climb.Moves;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.climb.Starts;
import org.swathbook.plan.climb.Steps;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Legality;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.season.Kernel;

/** All that a search of one field stands on, with nothing asked for and nothing made yet. */
public final class PlanGround {
  public final Book book;
  public final TraceSet traces;
  public final PlanSpace space;
  public final FieldEvaluator evaluator;
  final Moves moves;
  public final Mending mending;
  public final Starts starts;

  public PlanGround(Book book, String fieldId) {
    Field field = book.findField(fieldId).orElseThrow();
    this.book = book;
    this.traces = TraceBuilder.build(book, field);
    DateGrid grid = new DateGrid(field, book.house().dateStepDays());
    Legality legality = new Legality(book, traces, grid);
    List<DoseOption> options = OptionMaker.make(book, field).options();
    this.space =
        new PlanSpace(field, book.house(), grid, options, legality::allows, legality::allows);
    this.evaluator = new FieldEvaluator(book, Kernel.of(book, traces), space, legality);
    Strengths strengths = new Strengths(book, traces, options);
    this.moves = new Moves(space, evaluator);
    this.mending = new Mending(space, strengths, book.house(), evaluator.offers(), moves);
    this.starts = new Starts(space, strengths, book.house(), evaluator);
  }

  /** A search that has met no program yet. */
  public Search search() {
    return search(new Steps(12, 0.1, true));
  }

  public Search search(Steps steps) {
    return new Search(moves, mending, starts, evaluator, steps);
  }
}
