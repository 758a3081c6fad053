package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.check.QueuedPass.State;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * How the passes of a program stand on a day. Each pass that is planned by then or soon after is
 * put on that day and on each of the next ones, walked through all weather years and judged by
 * every rule: the day before a new objection is its last, whether a label's window shuts, the weeds
 * outgrow a label's height or an interval runs out.
 */
public final class PassQueue {
  /** How far it looks ahead: a week. */
  public static final int DAYS_AHEAD = 7;

  private final Book book;
  private final Kernel kernel;
  private final LocalDate today;
  private final String name;
  private final List<Pass> passes = new ArrayList<>();
  private final List<Integer> origins = new ArrayList<>();

  private PassQueue(Book book, TraceSet traces, SeasonSoFar.Standing standing, LocalDate today) {
    this.book = book;
    this.kernel = Kernel.of(book, traces);
    this.today = today;
    this.name = standing.program().name();
    for (int i = 0; i < standing.program().passes().size(); i++) {
      Pass p = standing.program().passes().get(i);
      LocalDate date = p.at() instanceof Anchor.Made made ? made.date() : planned(p);
      if (p.at() instanceof Anchor.Made || !date.isBefore(today)) {
        add(p, standing.origins().get(i));
      } else if (!date.plusDays(SeasonSoFar.LATE_DAYS).isBefore(today)) {
        // What the journal lacks is not sprayed yet, whatever the program says of its day.
        add(new Pass(new Anchor.OnDate(today), p.mix()), standing.origins().get(i));
      }
    }
  }

  /**
   * Passes made, then to come, then missed.
   *
   * @throws IllegalArgumentException in words, when an anchor does not come in the field's years
   */
  public static List<QueuedPass> of(Book book, TraceSet traces, Program written, LocalDate today) {
    SeasonSoFar.Standing standing =
        SeasonSoFar.of(book, traces.field(), today).standing(book, traces, written, today);
    PassQueue queue = new PassQueue(book, traces, standing, today);
    return queue.all(written);
  }

  private List<QueuedPass> all(Program written) {
    List<QueuedPass> out = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      out.add(pass(i, written));
    }
    for (int i = 0; i < written.passes().size(); i++) {
      if (!origins.contains(i)) {
        Pass p = written.passes().get(i);
        out.add(resting(i + 1, State.MISSED, planned(p), p.mix()));
      }
    }
    return out;
  }

  private void add(Pass p, int origin) {
    passes.add(p);
    origins.add(origin);
  }

  private LocalDate planned(Pass p) {
    return Anchors.resolve(p.at(), kernel.traces(), book.house().sizePercentile());
  }

  private static QueuedPass resting(int number, State state, LocalDate date, Mix mix) {
    return new QueuedPass(
        number,
        state,
        date,
        mix,
        "",
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        0);
  }

  private QueuedPass pass(int place, Program written) {
    Pass p = passes.get(place);
    int number = origins.get(place) + 1;
    if (p.at() instanceof Anchor.Made made) {
      return resting(number, State.MADE, made.date(), p.mix());
    }
    LocalDate planned = planned(written.passes().get(number - 1));
    if (planned.isAfter(today.plusDays(DAYS_AHEAD))) {
      return resting(number, State.LATER, planned, p.mix());
    }
    return looked(place, number, planned, p);
  }

  private QueuedPass looked(int place, int number, LocalDate planned, Pass p) {
    SeasonOutcome now = walked(place, today);
    List<Finding> against = against(now, today, p.mix());
    boolean blocked = isBlocked(against);
    Set<String> known = keys(against);
    Optional<LocalDate> last = Optional.empty();
    Optional<LocalDate> opens = Optional.empty();
    List<Finding> why =
        blocked ? against.stream().filter(f -> f.severity() == Severity.BLOCK).toList() : List.of();
    for (int d = 1; d <= DAYS_AHEAD; d++) {
      LocalDate day = today.plusDays(d);
      List<Finding> then = against(walked(place, day), day, p.mix());
      if (blocked && !isBlocked(then)) {
        opens = Optional.of(day);
        break;
      }
      List<Finding> more = then.stream().filter(f -> !known.contains(key(f))).toList();
      if (!blocked && !more.isEmpty()) {
        last = Optional.of(day.minusDays(1));
        why = more;
        break;
      }
    }
    PassOutcome pass = at(now, today, p.mix());
    State state =
        blocked
            ? State.BLOCKED
            : last.isPresent() ? State.CLOSES : planned.isAfter(today) ? State.OPEN : State.DUE;
    return new QueuedPass(
        number,
        state,
        planned,
        p.mix(),
        pass.cropStage(),
        pass.weeds(),
        last,
        opens,
        why,
        against.stream().filter(f -> f.severity() == Severity.WARN).toList(),
        sprayDays(last.orElse(today.plusDays(DAYS_AHEAD))));
  }

  /** The program with one pass on a day. */
  private SeasonOutcome walked(int place, LocalDate day) {
    List<Pass> all = new ArrayList<>(passes);
    all.set(place, new Pass(new Anchor.OnDate(day), all.get(place).mix()));
    Program moved = new Program(name, kernel.traces().field().id(), all);
    return SeasonWalk.walk(book, kernel, moved);
  }

  private static PassOutcome at(SeasonOutcome outcome, LocalDate day, Mix mix) {
    return outcome.passes().stream()
        .filter(p -> !p.made() && p.planned().equals(day) && p.mix().equals(mix))
        .findFirst()
        .orElseThrow();
  }

  private List<Finding> against(SeasonOutcome outcome, LocalDate day, Mix mix) {
    int index = at(outcome, day, mix).index();
    return ProgramJudge.judge(book, kernel.traces(), outcome, today).findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK || f.severity() == Severity.WARN)
        .filter(f -> f.about().pass().isPresent() && f.about().pass().getAsInt() == index)
        .toList();
  }

  private static boolean isBlocked(List<Finding> findings) {
    return findings.stream().anyMatch(f -> f.severity() == Severity.BLOCK);
  }

  private static Set<String> keys(List<Finding> findings) {
    return findings.stream().map(PassQueue::key).collect(Collectors.toSet());
  }

  /**
   * What tells an objection from others, whatever its figures; a block is not the warning before.
   */
  private static String key(Finding f) {
    return f.rule()
        + " "
        + f.severity()
        + " "
        + f.about().ingredient()
        + " "
        + f.about().weed()
        + " "
        + f.about().neighbor();
  }

  private double sprayDays(LocalDate last) {
    double sum = 0;
    for (SeasonTrace t : kernel.traces().years()) {
      for (LocalDate d = today; !d.isAfter(last); d = d.plusDays(1)) {
        int day = t.dayOf(d);
        sum += day >= 0 && day < t.days() && t.sprayable(day) ? 1 : 0;
      }
    }
    return sum / kernel.traces().years().size();
  }
}
