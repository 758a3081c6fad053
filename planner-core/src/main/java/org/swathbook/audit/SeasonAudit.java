package org.swathbook.audit;

import java.util.ArrayList;
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
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.Say;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.SitesMet;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WeedOutcome;

/** The sites of action that the driver weeds of one field met in one season of the journal. */
final class SeasonAudit {
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

  private final JournalSeason season;

  private SeasonAudit(JournalSeason season) {
    this.season = season;
  }

  /** The driver weeds of a season, in the order of the file. */
  static Result of(Book book, Field today, PastSeason row, SharedTraces shared) {
    return of(book, today, row, shared, true);
  }

  /** The same without asking the rules. */
  static Result notJudged(Book book, Field today, PastSeason row, SharedTraces shared) {
    return of(book, today, row, shared, false);
  }

  private static Result of(
      Book book, Field today, PastSeason row, SharedTraces shared, boolean judged) {
    JournalSeason season = JournalSeason.of(book, today, row);
    SeasonAudit audit = new SeasonAudit(season);
    Optional<TraceSet> trace = season.trace(shared);
    Optional<SeasonSums> walked =
        trace.map(
            t ->
                SeasonWalk.sumsMade(
                    season.past(), shared.kernel(season.past(), t), season.walkedPasses()));
    List<SeasonSites> sites = new ArrayList<>();
    for (WeedPressure w : season.drivers()) {
      Optional<WeedOutcome> of = walked.map(o -> o.weed(w.weed().id()));
      sites.add(audit.sites(w, walked.map(o -> SitesMet.of(o, w.weed().id())), of));
    }
    return new Result(
        sites,
        trace.filter(t -> judged).map(t -> audit.judged(t, walked.orElseThrow())).orElse(List.of()),
        season.unjudged());
  }

  /**
   * The same without what fields are not ranked by: no rules are asked, the season is walked on its
   * driver weeds alone, and what hangs on a single site is left open.
   */
  static Result figures(Book book, Field today, PastSeason row, SharedTraces shared) {
    JournalSeason season = JournalSeason.lean(book, today, row);
    SeasonAudit audit = new SeasonAudit(season);
    List<WeedPressure> drivers = season.drivers();
    Optional<TraceSet> trace = season.trace(shared);
    List<SitesMet> met =
        trace.isPresent()
            ? SitesMet.of(shared.kernel(season.past(), trace.get()), season.walkedPasses())
            : List.of();
    List<SeasonSites> sites = new ArrayList<>();
    for (int w = 0; w < drivers.size(); w++) {
      Optional<SitesMet> its = met.isEmpty() ? Optional.empty() : Optional.of(met.get(w));
      sites.add(audit.sites(drivers.get(w), its, Optional.empty()));
    }
    return new Result(sites, List.of(), season.unjudged());
  }

  /** What the rules say of all passes, those on a part of the field too. */
  private List<JournalFinding> judged(TraceSet trace, SeasonSums walked) {
    return new JournalJudge(season.past(), trace, walked.walkedPasses(), season.made()).judge();
  }

  /**
   * @param of what else a walk tells of the weed; empty where it is not asked
   */
  private SeasonSites sites(WeedPressure weed, Optional<SitesMet> met, Optional<WeedOutcome> of) {
    SortedSet<Site> applied = new TreeSet<>();
    List<SprayedPass> passes = new ArrayList<>();
    List<String> said = new ArrayList<>(season.notes());
    TableSites table = new TableSites(season.past(), weed);
    int walked = 0;
    for (Map.Entry<JournalSeason.Tank, List<Application>> t : season.tanks().entrySet()) {
      JournalSeason.Tank tank = t.getKey();
      for (Application a : t.getValue()) {
        for (ActiveDose d : a.dose().actives()) {
          applied.add(d.ingredient().site());
        }
      }
      if (met.isPresent() && season.isWalked(tank.date())) {
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
        season.field(),
        weed,
        season.season(),
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

  private static SprayedPass walked(JournalSeason.Tank tank, SitesMet.OfPass pass) {
    return new SprayedPass(
        tank.date(),
        tank.id(),
        pass.stands(),
        pass.stands() ? pass.foliar() : List.of(),
        pass.soil(),
        false);
  }
}
