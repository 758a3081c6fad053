package org.swathbook.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LateCost;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** What a walked season told, written down by hand: passes, and weeds with their outcome. */
final class SeasonCase {
  private final CaseBook book;
  private final TraceSet traces;
  private final List<PassOutcome> passes = new ArrayList<>();
  private final List<LayerSpan> layers = new ArrayList<>();
  private final List<GapSpan> gaps = new ArrayList<>();
  private final List<WeedOutcome> weeds = new ArrayList<>();
  private double windowConfidencePct = 100;

  private SeasonCase(CaseBook book) {
    this.book = book;
    this.traces = book.traces();
  }

  static SeasonCase of(CaseBook book) {
    return new SeasonCase(book);
  }

  SeasonCase pass(String date, Mix mix, PassWeed... met) {
    LocalDate day = LocalDate.parse(date);
    PassTiming timing = book.on(day);
    SeasonTrace trace = traces.years().get(0);
    passes.add(
        new PassOutcome(
            passes.size(),
            day,
            timing,
            day,
            day,
            trace.dayOf(day) - trace.plantingDay(),
            trace.stageName(trace.dayOf(day)),
            mix,
            List.of(),
            Optional.empty(),
            Arrays.asList(met),
            LateCost.NONE,
            false));
    return this;
  }

  /** What stands at the last pass has cost so much by then, and each day later costs. */
  SeasonCase late(double lossShare, double dollarsPerDay) {
    PassOutcome p = passes.remove(passes.size() - 1);
    passes.add(
        new PassOutcome(
            p.index(),
            p.planned(),
            p.timing(),
            p.earliest(),
            p.latest(),
            p.daysAfterPlanting(),
            p.cropStage(),
            p.mix(),
            p.missedYears(),
            p.cost(),
            p.weeds(),
            new LateCost(lossShare, Money.ofDollars(dollarsPerDay)),
            p.made()));
    return this;
  }

  /** The last pass lays a layer. */
  SeasonCase layer(String weed, int fromDay, int toDay) {
    layers.add(new LayerSpan(passes.size() - 1, WeedId.of(weed), List.of(), fromDay, toDay));
    return this;
  }

  SeasonCase windowConfidence(double pct) {
    windowConfidencePct = pct;
    return this;
  }

  /** A weed at a pass: standing, so tall, met by these sites. */
  PassWeed standing(String weed, double perM2, double inches, SiteControl... foliar) {
    return new PassWeed(
        WeedId.of(weed),
        true,
        perM2,
        inches * 2.54 / 2,
        inches * 2.54,
        inches * 2.54,
        inches * 2.54,
        Arrays.asList(foliar),
        List.of());
  }

  /** A weed of which nothing stands, met in the soil. */
  PassWeed toCome(String weed, SiteControl... soil) {
    return new PassWeed(
        WeedId.of(weed),
        false,
        0,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        List.of(),
        Arrays.asList(soil));
  }

  PassWeed withSoil(PassWeed w, SiteControl... soil) {
    return new PassWeed(
        w.weed(),
        w.stands(),
        w.medianPerM2(),
        w.p50Cm(),
        w.p90Cm(),
        w.p90LowCm(),
        w.p90HighCm(),
        w.foliar(),
        Arrays.asList(soil));
  }

  /** What the active's site does to a weed; struck where the list of resistances names it. */
  SiteControl site(String active, String weed, double pct) {
    Ingredient i = book.book().catalog().ingredient(IngredientId.of(active));
    boolean struck = pressure(weed).listed().stream().anyMatch(r -> r.concerns(i));
    return new SiteControl(
        Site.of(i.site().number()),
        i.id(),
        pct,
        struck,
        pressure(weed).isOnlyWatched(i),
        false,
        !struck && pct >= 80);
  }

  private WeedPressure pressure(String weed) {
    return book.book().weedsOf(book.field().id()).stream()
        .filter(w -> w.weed().id().equals(WeedId.of(weed)))
        .findFirst()
        .orElseThrow();
  }

  /** Outcome of a weed that a program holds; change what the case is about. */
  static final class Outcome {
    private double control = 99;
    private double exposed;
    private double exposedWorstFifth;
    private double survivors;
    private double allSurvivors;
    private double withoutWeakest = 99;
    private double survivorsWithout;
    private Optional<Site> weakest = Optional.empty();
    private final List<WeedOutcome.LayerOverlap> overlaps = new ArrayList<>();
    private final List<String> unknown = new ArrayList<>();

    Outcome control(double pct) {
      control = pct;
      return this;
    }

    Outcome exposed(double pct) {
      return exposed(pct, pct);
    }

    /** In the median year, and in the one that one in five is worse than. */
    Outcome exposed(double pct, double worstFifthPct) {
      exposed = pct;
      exposedWorstFifth = worstFifthPct;
      return this;
    }

    Outcome survivors(double perAcre) {
      survivors = perAcre;
      allSurvivors = perAcre;
      survivorsWithout = perAcre;
      return this;
    }

    Outcome without(int site, double pct) {
      weakest = Optional.of(Site.of(site));
      withoutWeakest = pct;
      return this;
    }

    /** Survivors with the site gone; to be said after the survivors. */
    Outcome survivorsWithout(double perAcre) {
      survivorsWithout = perAcre;
      return this;
    }

    Outcome overlap(double days, double negativeShare) {
      return overlap(days, negativeShare, 0, 40);
    }

    Outcome overlap(double days, double negativeShare, double canopyShare, double toComePct) {
      overlaps.add(new WeedOutcome.LayerOverlap(0, 1, days, negativeShare, canopyShare, toComePct));
      return this;
    }

    Outcome unknown(String active) {
      unknown.add(active);
      return this;
    }
  }

  SeasonCase outcome(String weed, Outcome o) {
    weeds.add(
        new WeedOutcome(
            pressure(weed),
            o.control,
            o.control,
            o.exposed,
            o.exposedWorstFifth,
            0,
            o.survivors,
            o.allSurvivors,
            0,
            0.5,
            0,
            0,
            100,
            o.weakest,
            o.withoutWeakest,
            o.survivorsWithout,
            o.overlaps,
            o.unknown));
    if (o.exposed > 0) {
      SeasonTrace trace = traces.years().get(0);
      gaps.add(
          new GapSpan(
              WeedId.of(weed),
              trace.plantingDay() + 33,
              trace.plantingDay() + 62,
              o.exposed / 100));
    }
    return this;
  }

  SeasonOutcome season() {
    for (WeedPressure p : traces.weeds()) {
      if (weeds.stream().noneMatch(w -> w.pressure().weed().id().equals(p.weed().id()))) {
        outcome(p.weed().id().value(), new Outcome());
      }
    }
    return new SeasonOutcome(
        new Program(
            "case",
            book.field().id(),
            passes.stream().map(p -> new Pass(new Anchor.OnDate(p.planned()), p.mix())).toList()),
        passes,
        List.of(
            new YearOutcome(
                traces.years().get(0).year(),
                passes.stream().map(p -> p.timing().years().get(0).day()).toList(),
                List.of(),
                layers,
                gaps,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                0)),
        weeds,
        Optional.empty(),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        windowConfidencePct);
  }

  Judgement judge() {
    return ProgramJudge.judge(book.book(), traces, season(), LocalDate.of(2027, 3, 1));
  }
}
