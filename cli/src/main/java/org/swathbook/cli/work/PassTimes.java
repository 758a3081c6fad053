package org.swathbook.cli.work;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.FieldId;
import org.swathbook.program.Pass;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/** Whether the times of a written program come at all; only the walked years can tell. */
public final class PassTimes {
  private PassTimes() {}

  /**
   * @param percentile share of the standing plants whose height counts, as the house has it
   * @throws ProblemsException with every pass whose stage or weed height half of the years or more
   *     never bring, or whose weed is none of the field
   */
  public static void check(WrittenProgram written, TraceSet traces, double percentile) {
    check(List.of(written), traces, percentile);
  }

  /** The same for several programs of one field, the problems of all of them in one report. */
  public static void check(List<WrittenProgram> written, TraceSet traces, double percentile) {
    Problems problems = new Problems();
    written.forEach(w -> check(w, traces, percentile, problems));
    problems.throwIfAny();
  }

  private static void check(
      WrittenProgram written, TraceSet traces, double percentile, Problems problems) {
    for (int i = 0; i < written.times().size(); i++) {
      Pass pass = written.program().passes().get(i);
      Mark mark = written.times().get(i);
      if (isOfAnotherWeed(pass, traces.weeds())) {
        addWeed(problems, mark, pass, written.program().field());
      } else if (Anchors.find(pass.at(), traces, percentile).isEmpty()) {
        problems.add(
            mark,
            "'"
                + pass.at()
                + "' does not come in field "
                + traces.field().id()
                + " in most weather years",
            "give a date or days after planting");
      }
    }
  }

  /**
   * What can be told without walked years.
   *
   * @throws ProblemsException with every pass that waits for a weed which the field does not have
   */
  public static void checkWeeds(WrittenProgram written, Book book) {
    Problems problems = new Problems();
    List<WeedPressure> weeds = book.weedsOf(written.program().field());
    for (int i = 0; i < written.times().size(); i++) {
      Pass pass = written.program().passes().get(i);
      if (isOfAnotherWeed(pass, weeds)) {
        addWeed(problems, written.times().get(i), pass, written.program().field());
      }
    }
    problems.throwIfAny();
  }

  private static void addWeed(Problems problems, Mark mark, Pass pass, FieldId field) {
    problems.add(
        mark,
        ((Anchor.WhenWeedIs) pass.at()).weed() + " is no weed of field " + field,
        "add it to weeds.csv, or give a date or days after planting");
  }

  private static boolean isOfAnotherWeed(Pass pass, List<WeedPressure> weeds) {
    return pass.at() instanceof Anchor.WhenWeedIs when
        && weeds.stream().noneMatch(w -> w.weed().id().equals(when.weed()));
  }
}
