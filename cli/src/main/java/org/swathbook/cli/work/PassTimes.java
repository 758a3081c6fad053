package org.swathbook.cli.work;

import org.swathbook.book.file.WrittenProgram;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
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
    Problems problems = new Problems();
    for (int i = 0; i < written.times().size(); i++) {
      Pass pass = written.program().passes().get(i);
      Mark mark = written.times().get(i);
      if (pass.at() instanceof Anchor.WhenWeedIs when && !isOfField(when, traces)) {
        problems.add(
            mark,
            when.weed() + " is no weed of field " + traces.field().id(),
            "add it to weeds.csv, or give a date or days after planting");
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
    problems.throwIfAny();
  }

  private static boolean isOfField(Anchor.WhenWeedIs when, TraceSet traces) {
    return traces.weeds().stream().anyMatch(w -> w.weed().id().equals(when.weed()));
  }
}
