package org.swathbook.plan.keep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.Effort;
import org.swathbook.plan.PlanLimit;
import org.swathbook.plan.PlanLimits;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Program;

/**
 * Something asked without which a written program can be kept, though not with it.
 *
 * @param key the option as it is typed
 * @param limit what it asks, in words
 * @param program the written program, with the fewest changes that then are needed
 */
public record KeptWithout(String key, String limit, KeptProgram program) {

  /** Of all that is asked, each by itself. */
  public static List<KeptWithout> of(
      Book book, TraceSet traces, Program written, PlanWishes wishes, LocalDate today) {
    List<KeptWithout> out = new ArrayList<>();
    for (PlanLimit limit : PlanLimits.of(book, wishes)) {
      if (limit.isAsked()) {
        Keeping.of(book, traces, written, limit.lifted().wishes(), today, Effort.QUICK)
            .programs()
            .stream()
            .findFirst()
            .ifPresent(p -> out.add(new KeptWithout(limit.key(), limit.limit(), p)));
      }
    }
    return out;
  }
}
