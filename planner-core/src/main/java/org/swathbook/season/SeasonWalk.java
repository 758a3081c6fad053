package org.swathbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** Walks a program through every weather year and tells all that comes of it. */
public final class SeasonWalk {
  private final Book book;
  private final Kernel kernel;
  private final TraceSet traces;
  private final List<PreparedPass> passes;
  private final Score score;
  private final ProgramCensus census;
  private final LayerFinder layers;

  private SeasonWalk(Book book, Kernel kernel, List<PreparedPass> passes) {
    this.book = book;
    this.kernel = kernel;
    this.traces = kernel.traces();
    this.passes = passes;
    this.census = new ProgramCensus(kernel, passes);
    this.score = kernel.run(passes, Optional.empty(), census);
    this.layers = new LayerFinder(kernel, passes);
  }

  /**
   * @throws IllegalArgumentException in words, when an anchor does not come in the field's years or
   *     the book has no price for the crop
   */
  public static SeasonOutcome walk(Book book, TraceSet traces, Program program) {
    return walk(book, Kernel.of(book, traces), program);
  }

  /** The same with a kernel that has already worked for this field. */
  public static SeasonOutcome walk(Book book, Kernel kernel, Program program) {
    return new SeasonWalk(book, kernel, prepare(kernel, program)).outcome(program);
  }

  /**
   * What passes come to over all years.
   *
   * @param passes in the order of their dates
   */
  public static SeasonSums sums(Book book, Kernel kernel, List<PreparedPass> passes) {
    return new SeasonWalk(book, kernel, passes).sums();
  }

  /**
   * The same of passes that are made on their very dates, whatever labels and weather say.
   *
   * @throws IllegalArgumentException when a pass has no date, or one outside the field's season
   */
  public static SeasonSums sumsMade(Book book, Kernel kernel, List<Pass> made) {
    return sums(book, kernel, SitesMet.prepare(kernel, made));
  }

  /**
   * Of the same only what rules on passes ask of them: what stands at each, their layers and their
   * days, and nothing of what comes of it.
   *
   * @throws IllegalArgumentException as {@link #sumsMade}
   */
  public static WalkedPasses passesMade(Book book, Kernel kernel, List<Pass> made) {
    List<PreparedPass> passes = SitesMet.prepare(kernel, made);
    ProgramCensus census = new ProgramCensus(kernel, passes);
    kernel.standing(passes, census);
    List<List<List<LayerSpan>>> byWeed = new LayerFinder(kernel, passes).layersByWeed();
    PassOutcomes describe = new PassOutcomes(book, kernel, passes, census, byWeed);
    return walked(passes, describe, byWeed, kernel.traces().years().size());
  }

  /** The passes of a program in the order of their dates, those of one date as written. */
  public static List<PreparedPass> prepare(Kernel kernel, Program program) {
    double percentile = kernel.house().sizePercentile();
    List<PreparedPass> out = new ArrayList<>();
    for (Pass pass : program.passes()) {
      LocalDate date = Anchors.resolve(pass.at(), kernel.traces(), percentile);
      out.add(
          pass.at() instanceof Anchor.Made
              ? kernel.made(pass.mix(), date)
              : kernel.prepare(pass.mix(), date));
    }
    out.sort(Comparator.comparing(PreparedPass::planned));
    return List.copyOf(out);
  }

  private SeasonOutcome outcome(Program program) {
    List<List<List<LayerSpan>>> byWeed = layers.layersByWeed();
    PassOutcomes describe = new PassOutcomes(book, kernel, passes, census, byWeed);
    List<Integer> all = IntStream.range(0, byWeed.size()).boxed().toList();
    SeasonSums sums = sums(byWeed, describe, all);
    return new SeasonOutcome(
        program,
        sums.passes(),
        years(byWeed, describe),
        sums.weeds(),
        sums.cost(),
        sums.loss(),
        Money.ofDollars(kernel.untreated().lossDollarsPerAcre()),
        sums.net(),
        sums.windowConfidencePct());
  }

  private SeasonSums sums() {
    List<List<List<LayerSpan>>> byWeed = layers.layersByWeed();
    List<Integer> drivers = kernel.drivers();
    return sums(
        byWeed,
        new PassOutcomes(book, kernel, passes, census, byWeed),
        drivers.isEmpty() ? IntStream.range(0, byWeed.size()).boxed().toList() : drivers);
  }

  /**
   * @param told the weeds that are told of, by their places in the set
   */
  private SeasonSums sums(
      List<List<List<LayerSpan>>> byWeed, PassOutcomes describe, List<Integer> told) {
    WalkedPasses walked = walked(passes, describe, byWeed, score.years());
    WeedOutcomes ofWeeds = new WeedOutcomes(kernel, passes, walked.passes(), score, census);
    List<WeedOutcome> weedOutcomes = new ArrayList<>();
    for (int w : told) {
      weedOutcomes.add(ofWeeds.of(w, layers.overlaps(w, byWeed.get(w))));
    }
    Optional<Money> cost = ProgramCost.mean(book, passes, score.years());
    Money loss = Money.ofDollars(score.lossDollarsPerAcre());
    Money weedFree = Money.ofDollars(score.weedFreeDollarsPerAcre());
    return new SeasonSums(
        walked,
        weedOutcomes,
        byWeed(score::controlPct),
        cost,
        loss,
        cost.map(c -> weedFree.minus(loss).minus(c)),
        windowConfidencePct(passes, score.years()));
  }

  private static WalkedPasses walked(
      List<PreparedPass> passes,
      PassOutcomes describe,
      List<List<List<LayerSpan>>> byWeed,
      int years) {
    List<PassOutcome> outcomes = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      outcomes.add(describe.of(p));
    }
    List<WalkedPasses.Year> byYear = new ArrayList<>();
    for (int y = 0; y < years; y++) {
      List<LayerSpan> spans = new ArrayList<>();
      for (List<List<LayerSpan>> ofWeed : byWeed) {
        spans.addAll(ofWeed.get(y));
      }
      List<Integer> days = new ArrayList<>();
      for (PreparedPass pass : passes) {
        days.add(pass.day(y));
      }
      byYear.add(new WalkedPasses.Year(days, spans));
    }
    return new WalkedPasses(outcomes, byYear);
  }

  /** Share of the years, percent, in which every pass meets its windows. */
  public static double windowConfidencePct(List<PreparedPass> passes, int years) {
    int met = 0;
    for (int y = 0; y < years; y++) {
      boolean all = true;
      for (PreparedPass pass : passes) {
        all &= pass.meetsWindows(y);
      }
      if (all) {
        met++;
      }
    }
    return 100.0 * met / years;
  }

  private List<YearOutcome> years(List<List<List<LayerSpan>>> byWeed, PassOutcomes describe) {
    List<YearOutcome> out = new ArrayList<>();
    for (int y = 0; y < score.years(); y++) {
      int year = y;
      List<LayerSpan> spans = new ArrayList<>();
      List<GapSpan> gaps = new ArrayList<>();
      for (int w = 0; w < byWeed.size(); w++) {
        spans.addAll(byWeed.get(w).get(y));
        gaps.addAll(layers.gaps(y, w));
      }
      out.add(
          new YearOutcome(
              traces.years().get(y).year(),
              passes.stream().map(p -> p.day(year)).toList(),
              describe.sizes(y),
              spans,
              gaps,
              byWeed(w -> score.controlPct(w, year)),
              byWeed(w -> score.exposedShare(w, year)),
              byWeed(w -> score.exposedToNothing(w, year)),
              byWeed(w -> score.survivorsPerM2(w, year)),
              byWeed(w -> score.allSurvivorsPerM2(w, year)),
              score.lossShare(y)));
    }
    return out;
  }

  private Map<WeedId, Double> byWeed(java.util.function.IntToDoubleFunction value) {
    Map<WeedId, Double> out = new LinkedHashMap<>();
    for (int w = 0; w < traces.weeds().size(); w++) {
      out.put(traces.weeds().get(w).weed().id(), value.applyAsDouble(w));
    }
    return Collections.unmodifiableMap(out);
  }
}
