package org.swathbook.plan;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;

/** All that a search of one field stands on, with nothing asked for and nothing made yet. */
final class PlanGround {
  final Book book;
  final TraceSet traces;
  final PlanSpace space;
  final FieldEvaluator evaluator;
  final Moves moves;
  final Mending mending;
  final Starts starts;

  PlanGround(Book book, String fieldId) {
    Field field = book.findField(fieldId).orElseThrow();
    this.book = book;
    this.traces = TraceBuilder.build(book, field);
    DateGrid grid = new DateGrid(field, book.house().dateStepDays());
    Legality legality = new Legality(book, traces, grid);
    List<DoseOption> options = OptionMaker.make(book, field).options();
    this.space =
        new PlanSpace(field, book.house(), grid, options, legality::allows, legality::allows);
    this.evaluator = new FieldEvaluator(book, traces, space, legality);
    Strengths strengths = new Strengths(book, traces, options);
    this.moves = new Moves(space, evaluator);
    this.mending = new Mending(space, strengths, book.house(), moves);
    this.starts = new Starts(space, strengths, book.house(), evaluator);
  }

  /** A search that has met no program yet. */
  Search search() {
    return new Search(moves, mending, starts, evaluator);
  }
}
