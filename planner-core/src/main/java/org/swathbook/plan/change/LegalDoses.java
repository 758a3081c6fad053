package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.DoseLegality;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.program.Dose;

/** The doses that may go into a changed tank on a day, each day asked for once. */
public final class LegalDoses {
  private final TraceSet traces;
  private final ChangeTerms terms;
  private final SeasonSoFar soFar;
  private final List<DoseOption> options;
  private final DoseLegality legality;
  private final Map<LocalDate, List<DoseOption>> known = new HashMap<>();

  public LegalDoses(
      Book book, TraceSet traces, ChangeTerms terms, SeasonSoFar soFar, List<DoseOption> options) {
    this.traces = traces;
    this.terms = terms;
    this.soFar = soFar;
    this.options = List.copyOf(options);
    this.legality = new DoseLegality(book, traces);
  }

  /** Doses that can be had, that the use rules let pass, and that are not just made. */
  List<DoseOption> on(LocalDate date) {
    return known.computeIfAbsent(
        date,
        d -> {
          PassTiming timing = Timings.at(traces, d);
          return options.stream()
              .filter(o -> terms.allows(o.dose()))
              .filter(o -> !soFar.isSameApplication(o.dose(), d))
              .filter(o -> legality.allows(o.dose(), timing))
              .toList();
        });
  }

  /** Whether the rules on two doses in one tank let them pass. */
  boolean together(Dose a, Dose b, PassTiming timing) {
    return legality.allows(a, b, timing);
  }

  /** Whether the use rules let a dose pass. */
  boolean allows(Dose dose, PassTiming timing) {
    return legality.allows(dose, timing);
  }
}
