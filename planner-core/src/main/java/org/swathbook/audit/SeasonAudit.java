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
import org.swathbook.rules.Say;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.SitesMet;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WeedOutcome;

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
  private final List<WeedPressure> drivers;
  private final boolean lean;
  private final Field field;
  private final PastSeason row;
  private final Map<Tank, List<Application>> tanks = new LinkedHashMap<>();
  private final Map<Tank, List<Application>> all = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> unjudged = new ArrayList<>();
  private final List<String> notWalked = new ArrayList<>();

  private SeasonAudit(Book book, Field today, PastSeason row) {
    this(book, today, row, false);
  }

  /**
   * @param lean with the driver weeds alone, and without the journal before the season
   */
  private SeasonAudit(Book book, Field today, PastSeason row, boolean lean) {
    this.field = PastBook.field(book, today, row);
    this.drivers = drivers(book, field, row);
    this.past =
        lean ? PastBook.unsprayed(book, field, row, drivers) : PastBook.of(book, field, row);
    this.lean = lean;
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
                audit.drivers)),
        audit.notes);
  }

  /** Driver weeds that the season's row names, or all where it names none. */
  static List<WeedPressure> drivers(Book book, Field field, PastSeason row) {
    return book.weedsOf(field.id()).stream()
        .filter(w -> w.driver().isDriver())
        .filter(w -> row.weeds().isEmpty() || row.weeds().contains(w.weed().id()))
        .toList();
  }

  /** Weeds that the season's row names, or all where it names none; in the order of the file. */
  static Result of(Book book, Field today, PastSeason row, SharedTraces shared) {
    return of(book, today, row, shared, true);
  }

  /** The same without asking the rules. */
  static Result notJudged(Book book, Field today, PastSeason row, SharedTraces shared) {
    return of(book, today, row, shared, false);
  }

  private static Result of(
      Book book, Field today, PastSeason row, SharedTraces shared, boolean judged) {
    SeasonAudit audit = new SeasonAudit(book, today, row);
    Optional<TraceSet> trace = audit.trace(shared);
    Optional<SeasonSums> walked =
        trace.map(
            t ->
                SeasonWalk.sumsMade(
                    audit.past, shared.kernel(audit.past, t), audit.walkedPasses()));
    List<SeasonSites> sites = new ArrayList<>();
    for (WeedPressure w : audit.drivers) {
      Optional<WeedOutcome> of = walked.map(o -> o.weed(w.weed().id()));
      sites.add(audit.sites(w, walked.map(o -> SitesMet.of(o, w.weed().id())), of));
    }
    return new Result(
        sites,
        trace.filter(t -> judged).map(t -> audit.judged(t, walked.orElseThrow())).orElse(List.of()),
        audit.unjudged);
  }

  /**
   * The same without what fields are not ranked by: no rules are asked, the season is walked on its
   * driver weeds alone, and what hangs on a single site is left open.
   */
  static Result figures(Book book, Field today, PastSeason row, SharedTraces shared) {
    SeasonAudit audit = new SeasonAudit(book, today, row, true);
    List<WeedPressure> drivers = audit.drivers;
    Optional<List<SitesMet>> met =
        audit
            .trace(shared)
            .map(t -> SitesMet.of(shared.kernel(audit.past, t), audit.walkedPasses()));
    List<SeasonSites> sites = new ArrayList<>();
    for (int w = 0; w < drivers.size(); w++) {
      int at = w;
      sites.add(audit.sites(drivers.get(w), met.map(m -> m.get(at)), Optional.empty()));
    }
    return new Result(sites, List.of(), audit.unjudged);
  }

  /** What the rules say of all passes, those on a part of the field too. */
  private List<JournalFinding> judged(TraceSet trace, SeasonSums walked) {
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
    return new JournalJudge(past, trace, walked.walkedPasses(), made).judge();
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
    Optional<String> why = notWalkable(past, field, row, shared);
    why.ifPresent(this::notWalked);
    if (why.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(lean ? shared.once(past, field) : shared.of(past, field));
  }

  /** Why a season cannot be walked; empty when it can. */
  private static Optional<String> notWalkable(
      Book book, Field field, PastSeason row, SharedTraces shared) {
    if (row.plantDate().isEmpty()) {
      return Optional.of("seasons.csv has no planting date");
    }
    return shared.has(book, field, row.plantDate().get(), row.season())
        ? Optional.empty()
        : Optional.of(
            "station "
                + field.station()
                + " has no full weather of that season, or it was planted outside it");
  }

  /** Why a season is not judged by rules; empty where it is. */
  static List<String> unjudged(Book book, Field field, PastSeason row, SharedTraces shared) {
    return notWalkable(book, field, row, shared).map(why -> unjudged(row, why)).stream().toList();
  }

  private static String unjudged(PastSeason row, String why) {
    return row.season() + " is not judged by rules, for " + why + ".";
  }

  private List<Pass> walkedPasses() {
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
    return passes;
  }

  private void notWalked(String why) {
    notWalked.add(why);
    notes.add(
        "Not walked, for "
            + why
            + ": sites go by the response table, and what emergence met is not known.");
    unjudged.add(unjudged(row, why));
  }

  /** The walk ends at harvest, and begins with the weather year. */
  private boolean isWalked(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(field.harvestDate().orElse(LocalDate.of(row.season(), 10, 31)));
  }

  /**
   * @param of what else a walk tells of the weed; empty where it is not asked
   */
  private SeasonSites sites(WeedPressure weed, Optional<SitesMet> met, Optional<WeedOutcome> of) {
    SortedSet<Site> applied = new TreeSet<>();
    List<SprayedPass> passes = new ArrayList<>();
    List<String> said = new ArrayList<>(notes);
    TableSites table = new TableSites(past, weed);
    int walked = 0;
    for (Map.Entry<Tank, List<Application>> t : tanks.entrySet()) {
      Tank tank = t.getKey();
      t.getValue()
          .forEach(a -> a.dose().actives().forEach(d -> applied.add(d.ingredient().site())));
      if (met.isPresent() && isWalked(tank.date())) {
        passes.add(walked(tank, met.get().passes().get(walked++)));
      } else {
        passes.add(
            new SprayedPass(
                tank.date(),
                tank.id(),
                true,
                table.foliar(t.getValue()),
                table.soil(t.getValue()),
                true));
        if (met.isPresent()) {
          said.add(
              "The pass of "
                  + Say.date(tank.date())
                  + " lies after harvest: its sites go by the response table, and it meets none of"
                  + " the crop's emergence.");
        }
      }
    }
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
        met.map(w -> new SeasonSites.Met(w.metNonePct(), w.metOnePct(), w.metTwoOrMorePct())),
        of.flatMap(
            w ->
                w.weakestSite()
                    .map(
                        s ->
                            new SeasonSites.Dependence(
                                s, w.controlPct(), w.controlPctWithoutWeakest()))),
        said);
  }

  private static SprayedPass walked(Tank tank, SitesMet.OfPass pass) {
    return new SprayedPass(
        tank.date(),
        tank.id(),
        pass.stands(),
        pass.stands() ? pass.foliar() : List.of(),
        pass.soil(),
        false);
  }
}
