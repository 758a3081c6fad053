package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.PassWeed;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.WeedOutcome;

/** The driver weeds of one field in one season of the journal. */
final class SeasonAudit {
  /** A pass on less than this share of the field says nothing of the field: default, ours. */
  private static final double HALF_THE_FIELD = 0.5;

  /**
   * @param sites by driver weed
   * @param findings of the rules; none where the season is not walked
   * @param unjudged why the season is not judged by rules; empty where it is
   */
  record Result(List<SeasonSites> sites, List<JournalFinding> findings, List<String> unjudged) {

    Result {
      sites = List.copyOf(sites);
      findings = List.copyOf(findings);
      unjudged = List.copyOf(unjudged);
    }
  }

  private record Tank(LocalDate date, String id) {}

  private final Book past;
  private final Field field;
  private final PastSeason row;
  private final Map<Tank, List<Application>> tanks = new LinkedHashMap<>();
  private final Map<Tank, List<Application>> all = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> unjudged = new ArrayList<>();
  private final List<String> notWalked = new ArrayList<>();

  private SeasonAudit(Book book, Field today, PastSeason row) {
    this.field = PastBook.field(book, today, row);
    this.past = PastBook.of(book, field, row);
    this.row = row;
    for (Application a : book.journal().of(field.id())) {
      if (a.season() == row.season()) {
        all.computeIfAbsent(new Tank(a.date(), a.pass()), t -> new ArrayList<>()).add(a);
      }
    }
    all.forEach(this::take);
  }

  /**
   * A season made ready to be walked, passes on less than half of the field left out; or why it
   * cannot be.
   */
  static SprayedSeason.Found sprayed(Book book, Field today, PastSeason row, SharedTraces shared) {
    SeasonAudit audit = new SeasonAudit(book, today, row);
    Optional<TraceSet> trace = audit.trace(shared);
    if (trace.isEmpty()) {
      return new SprayedSeason.Found(Optional.empty(), audit.notWalked);
    }
    List<JournalJudge.Made> made = new ArrayList<>();
    audit.tanks.forEach(
        (tank, rows) -> {
          if (audit.isOfTheYear(tank.date())) {
            made.add(
                new JournalJudge.Made(
                    tank.id(),
                    tank.date(),
                    Mix.of(rows.stream().map(Application::dose).toList()),
                    rows.get(0).record()));
          }
        });
    Book past = PastBook.without(audit.past, audit.field.id(), row.season());
    return new SprayedSeason.Found(
        Optional.of(
            new SprayedSeason(
                past,
                audit.field,
                row,
                trace.get(),
                shared.kernel(past, trace.get()),
                made,
                audit.drivers())),
        audit.notes);
  }

  private List<WeedPressure> drivers() {
    return past.weedsOf(field.id()).stream()
        .filter(w -> w.driver().isDriver())
        .filter(w -> row.weeds().isEmpty() || row.weeds().contains(w.weed().id()))
        .toList();
  }

  /** Weeds that the season's row names, or all where it names none; in the order of the file. */
  static Result of(Book book, Field today, PastSeason row, SharedTraces shared) {
    SeasonAudit audit = new SeasonAudit(book, today, row);
    Optional<TraceSet> trace = audit.trace(shared);
    Optional<SeasonOutcome> outcome = trace.map(t -> audit.walk(shared.kernel(audit.past, t)));
    List<SeasonSites> sites = audit.drivers().stream().map(w -> audit.sites(w, outcome)).toList();
    return new Result(
        sites,
        trace.map(t -> audit.judged(t, outcome.orElseThrow())).orElse(List.of()),
        audit.unjudged);
  }

  /** What the rules say of all passes, those on a part of the field too. */
  private List<JournalFinding> judged(TraceSet trace, SeasonOutcome outcome) {
    List<JournalJudge.Made> made = new ArrayList<>();
    all.forEach(
        (tank, rows) -> {
          if (isOfTheYear(tank.date())) {
            made.add(
                new JournalJudge.Made(
                    tank.id(),
                    tank.date(),
                    Mix.of(rows.stream().map(Application::dose).toList()),
                    rows.get(0).record()));
          }
        });
    return new JournalJudge(past, trace, outcome, made).judge();
  }

  private boolean isOfTheYear(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(LocalDate.of(row.season(), 10, 31));
  }

  private void take(Tank tank, List<Application> rows) {
    double acres = rows.stream().mapToDouble(a -> a.acres().orElse(field.acres())).max().orElse(0);
    if (acres < HALF_THE_FIELD * field.acres()) {
      notes.add(
          "The pass of "
              + Say.date(tank.date())
              + " went on "
              + Numbers.decimals(acres, 1)
              + " of "
              + Numbers.decimals(field.acres(), 1)
              + " acres and is left out.");
    } else {
      tanks.put(tank, rows);
    }
  }

  private Optional<TraceSet> trace(SharedTraces shared) {
    if (row.plantDate().isEmpty()) {
      notWalked("seasons.csv has no planting date");
      return Optional.empty();
    }
    Optional<TraceSet> trace = shared.of(past, field);
    if (trace.isEmpty()) {
      notWalked(
          "station "
              + field.station()
              + " has no full weather of that season, or it was planted outside it");
    }
    return trace;
  }

  private SeasonOutcome walk(Kernel kernel) {
    List<Pass> passes = new ArrayList<>();
    tanks.forEach(
        (tank, rows) -> {
          if (isWalked(tank.date())) {
            passes.add(
                new Pass(
                    new Anchor.OnDate(tank.date()),
                    Mix.of(rows.stream().map(Application::dose).toList())));
          }
        });
    Program program = new Program("As sprayed in " + row.season(), field.id(), passes);
    return SeasonWalk.walkMade(past, kernel, program);
  }

  private void notWalked(String why) {
    notWalked.add(why);
    notes.add(
        "Not walked, for "
            + why
            + ": sites go by the response table, and what emergence met is not known.");
    unjudged.add(row.season() + " is not judged by rules, for " + why + ".");
  }

  /** The walk ends at harvest, and begins with the weather year. */
  private boolean isWalked(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(field.harvestDate().orElse(LocalDate.of(row.season(), 10, 31)));
  }

  private SeasonSites sites(WeedPressure weed, Optional<SeasonOutcome> outcome) {
    SortedSet<Site> applied = new TreeSet<>();
    List<SprayedPass> passes = new ArrayList<>();
    List<String> said = new ArrayList<>(notes);
    TableSites table = new TableSites(past, weed);
    int walked = 0;
    for (Map.Entry<Tank, List<Application>> t : tanks.entrySet()) {
      Tank tank = t.getKey();
      t.getValue()
          .forEach(a -> a.dose().actives().forEach(d -> applied.add(d.ingredient().site())));
      if (outcome.isPresent() && isWalked(tank.date())) {
        passes.add(walked(tank, outcome.get().passes().get(walked++), weed));
      } else {
        passes.add(
            new SprayedPass(
                tank.date(),
                tank.id(),
                true,
                table.foliar(t.getValue()),
                table.soil(t.getValue()),
                true));
        if (outcome.isPresent()) {
          said.add(
              "The pass of "
                  + Say.date(tank.date())
                  + " lies after harvest: its sites go by the response table, and it meets none of"
                  + " the crop's emergence.");
        }
      }
    }
    Optional<WeedOutcome> of = outcome.map(o -> o.weed(weed.weed().id()));
    of.filter(w -> !w.unknownActives().isEmpty())
        .ifPresent(
            w ->
                said.add(
                    "Control of this weed is not known, and counted as nothing, of "
                        + Say.list(w.unknownActives())
                        + "."));
    return new SeasonSites(
        field,
        weed,
        row.season(),
        applied,
        passes,
        of.map(w -> new SeasonSites.Met(w.metNonePct(), w.metOnePct(), w.metTwoOrMorePct())),
        of.flatMap(
            w ->
                w.weakestSite()
                    .map(
                        s ->
                            new SeasonSites.Dependence(
                                s, w.controlPct(), w.controlPctWithoutWeakest()))),
        said);
  }

  private static SprayedPass walked(Tank tank, PassOutcome pass, WeedPressure weed) {
    PassWeed w =
        pass.weeds().stream()
            .filter(x -> x.weed().equals(weed.weed().id()))
            .findFirst()
            .orElseThrow();
    return new SprayedPass(
        tank.date(), tank.id(), w.stands(), w.stands() ? w.foliar() : List.of(), w.soil(), false);
  }
}
