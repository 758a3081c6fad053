package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Numbers;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
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

  private record Tank(LocalDate date, String id) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Tank o && id.equals(o.id) && date.equals(o.date);
    }

    @Override
    public int hashCode() {
      return 31 * date.hashCode() + id.hashCode();
    }
  }

  private final Book past;
  private final List<WeedPressure> drivers;
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
    this.drivers = drivers(book.weedsOf(field.id()), row);
    this.past =
        lean ? PastBook.unsprayed(book, field, row, drivers) : PastBook.of(book, field, row);
    this.row = row;
    for (Application a : book.journal().of(field.id())) {
      if (a.season() == row.season()) {
        all.computeIfAbsent(new Tank(a.date(), a.pass()), t -> new ArrayList<>()).add(a);
      }
    }
    for (Map.Entry<Tank, List<Application>> tank : all.entrySet()) {
      take(tank.getKey(), tank.getValue());
    }
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
    List<JournalJudge.Made> made = audit.made(audit.tanks);
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

  /**
   * Driver weeds that the season's row names, or all where it names none.
   *
   * @param ofField weeds of the field
   */
  static List<WeedPressure> drivers(List<WeedPressure> ofField, PastSeason row) {
    List<WeedPressure> out = new ArrayList<>();
    for (WeedPressure w : ofField) {
      if (w.driver().isDriver() && (row.weeds().isEmpty() || row.weeds().contains(w.weed().id()))) {
        out.add(w);
      }
    }
    return List.copyOf(out);
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
    Optional<TraceSet> trace = audit.trace(shared);
    List<SitesMet> met =
        trace.isPresent()
            ? SitesMet.of(shared.kernel(audit.past, trace.get()), audit.walkedPasses())
            : List.of();
    List<SeasonSites> sites = new ArrayList<>();
    for (int w = 0; w < drivers.size(); w++) {
      Optional<SitesMet> its = met.isEmpty() ? Optional.empty() : Optional.of(met.get(w));
      sites.add(audit.sites(drivers.get(w), its, Optional.empty()));
    }
    return new Result(sites, List.of(), audit.unjudged);
  }

  /** What the rules say of all passes, those on a part of the field too. */
  private List<JournalFinding> judged(TraceSet trace, SeasonSums walked) {
    return new JournalJudge(past, trace, walked.walkedPasses(), made(all)).judge();
  }

  private List<JournalJudge.Made> made(Map<Tank, List<Application>> of) {
    List<JournalJudge.Made> made = new ArrayList<>();
    for (Map.Entry<Tank, List<Application>> e : of.entrySet()) {
      Tank tank = e.getKey();
      List<Application> rows = e.getValue();
      if (isOfTheYear(tank.date())) {
        made.add(new JournalJudge.Made(tank.id(), tank.date(), mix(rows), rows.get(0).record()));
      }
    }
    return made;
  }

  private static Mix mix(List<Application> rows) {
    List<Dose> doses = new ArrayList<>(rows.size());
    for (Application a : rows) {
      doses.add(a.dose());
    }
    return Mix.of(doses);
  }

  private boolean isOfTheYear(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(LocalDate.of(row.season(), 10, 31));
  }

  private void take(Tank tank, List<Application> rows) {
    double acres = 0;
    for (Application a : rows) {
      acres = Math.max(acres, a.acres().orElse(field.acres()));
    }
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
    return Optional.of(shared.of(past, field));
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
  static Optional<String> unjudged(Book book, Field field, PastSeason row, SharedTraces shared) {
    Optional<String> why = notWalkable(book, field, row, shared);
    return why.isPresent() ? Optional.of(unjudged(row, why.get())) : why;
  }

  private static String unjudged(PastSeason row, String why) {
    return row.season() + " is not judged by rules, for " + why + ".";
  }

  private List<Pass> walkedPasses() {
    List<Pass> passes = new ArrayList<>();
    for (Map.Entry<Tank, List<Application>> e : tanks.entrySet()) {
      LocalDate date = e.getKey().date();
      if (isWalked(date)) {
        passes.add(new Pass(new Anchor.OnDate(date), mix(e.getValue())));
      }
    }
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
      for (Application a : t.getValue()) {
        for (ActiveDose d : a.dose().actives()) {
          applied.add(d.ingredient().site());
        }
      }
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
