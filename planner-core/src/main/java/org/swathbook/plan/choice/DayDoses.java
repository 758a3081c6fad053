package org.swathbook.plan.choice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.check.DatedMix;
import org.swathbook.check.SequenceJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;

/**
 * The planner's own doses for one more pass on a certain day, after all that the journal has: crop
 * stage, caps, counts and intervals, harvest and next crop.
 */
public final class DayDoses {
  private final Book book;
  private final TraceSet traces;
  private final DoseLegality legality;
  private final Map<IngredientId, List<DoseOption>> byActive = new TreeMap<>();

  private DayDoses(Book book, TraceSet traces) {
    this.book = book;
    this.traces = traces;
    this.legality = new DoseLegality(book, traces);
    for (DoseOption o : OptionMaker.make(book, traces.field()).options()) {
      byActive.computeIfAbsent(o.ingredient(), i -> new ArrayList<>()).add(o);
    }
    byActive
        .values()
        .forEach(
            all ->
                all.sort(
                    Comparator.comparingDouble((DoseOption o) -> -kgPerHa(o.dose()))
                        .thenComparing(DoseOption::cost)
                        .thenComparing(DoseOption::index)));
  }

  public static DayDoses of(Book book, TraceSet traces) {
    return new DayDoses(book, traces);
  }

  private static double kgPerHa(Dose dose) {
    return dose.actives().get(0).kgPerHa();
  }

  /** Doses of one active by active, the full rate first and of equal rates the cheapest. */
  public List<List<Dose>> byActive() {
    return byActive.values().stream()
        .map(all -> all.stream().map(DoseOption::dose).toList())
        .toList();
  }

  /** Whether label and journal let a dose go on that very day. */
  public boolean allows(Dose dose, LocalDate day) {
    PassTiming timing = Timings.on(traces, day);
    return legality.allows(dose, timing)
        && !SequenceJudge.blocks(book, traces.field(), List.of(dated(List.of(dose), day, timing)));
  }

  /** Whether label and journal let several doses go on in one tank on that very day. */
  public boolean allows(List<Dose> tank, LocalDate day) {
    if (tank.size() == 1) {
      return allows(tank.get(0), day);
    }
    PassTiming timing = Timings.on(traces, day);
    for (int i = 0; i < tank.size(); i++) {
      if (!legality.allows(tank.get(i), timing)) {
        return false;
      }
      for (int j = i + 1; j < tank.size(); j++) {
        if (!legality.allows(tank.get(i), tank.get(j), timing)) {
          return false;
        }
      }
    }
    return !SequenceJudge.blocks(book, traces.field(), List.of(dated(tank, day, timing)));
  }

  /** A tank of them with the adjuvants and the volume that the partners ask for. */
  public Mix filled(List<Dose> tank, LocalDate day) {
    return FilledMix.of(book, traces, Timings.on(traces, day), Mix.of(tank));
  }

  /** What stands against a dose on a day; empty when only its rate does not fit the field. */
  public List<Finding> blocks(Dose dose, LocalDate day) {
    PassTiming timing = Timings.on(traces, day);
    Findings out = Findings.all();
    for (UseFacts facts : UseJudge.facts(book, traces, 0, timing, Mix.of(List.of(dose)))) {
      out.addAll(UseJudge.judge(facts));
    }
    out.addAll(
        SequenceJudge.judge(book, traces.field(), List.of(dated(List.of(dose), day, timing))));
    return out.sorted().stream().filter(f -> f.severity() == Severity.BLOCK).toList();
  }

  private DatedMix dated(List<Dose> tank, LocalDate day, PassTiming timing) {
    return new DatedMix(0, day, PassPositions.of(traces, timing), Mix.of(tank));
  }
}
