package org.swathbook.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * Which sites of action the passes of a season bring to one weed, and how many of them its
 * emergence met: of a walk the part by which a long journal is ranked, without layers, costs and
 * what hangs on a single site. The same figures as in {@link SeasonWalk#sumsMade}, to the last bit.
 *
 * @param passes in the order of their dates
 * @param metNonePct share of the season's emergence that met none, one, two or more effective
 *     sites, mean
 */
public record SitesMet(
    List<OfPass> passes, double metNonePct, double metOnePct, double metTwoOrMorePct) {

  /**
   * What a pass does site by site.
   *
   * @param stands whether the weed counts as standing in the median year
   */
  public record OfPass(boolean stands, List<SiteControl> foliar, List<SiteControl> soil) {
    public OfPass {
      foliar = List.copyOf(foliar);
      soil = List.copyOf(soil);
    }

    public int effectiveFoliarSites() {
      return SiteControl.effective(foliar);
    }

    public int effectiveSoilSites() {
      return SiteControl.effective(soil);
    }
  }

  public SitesMet {
    passes = List.copyOf(passes);
  }

  /**
   * Of every weed of the field, in its order.
   *
   * @param made passes with dates, those of one date as written
   * @throws IllegalArgumentException when a pass has no date, or one outside the field's season
   */
  public static List<SitesMet> of(Kernel kernel, List<Pass> made) {
    List<PreparedPass> passes = prepare(kernel, made);
    ProgramCensus census = new ProgramCensus(kernel, passes);
    kernel.standing(passes, census);
    PassSites sites = new PassSites(kernel, census);
    List<SitesMet> out = new ArrayList<>();
    for (int w = 0; w < kernel.traces().weeds().size(); w++) {
      List<OfPass> byPass = new ArrayList<>();
      for (int p = 0; p < passes.size(); p++) {
        byPass.add(sites.of(passes.get(p), p, w));
      }
      double[] met = census.metPct(w);
      out.add(new SitesMet(byPass, met[0], met[1], met[2]));
    }
    return List.copyOf(out);
  }

  /** Of a walk that tells more. */
  public static SitesMet of(SeasonSums sums, WeedId weed) {
    List<OfPass> byPass = new ArrayList<>();
    for (PassOutcome pass : sums.passes()) {
      PassWeed w =
          pass.weeds().stream().filter(x -> x.weed().equals(weed)).findFirst().orElseThrow();
      byPass.add(new OfPass(w.stands(), w.foliar(), w.soil()));
    }
    WeedOutcome of = sums.weed(weed);
    return new SitesMet(byPass, of.metNonePct(), of.metOnePct(), of.metTwoOrMorePct());
  }

  /** Passes that are made on their very dates, in the order of these. */
  static List<PreparedPass> prepare(Kernel kernel, List<Pass> made) {
    List<PreparedPass> out = new ArrayList<>();
    for (Pass pass : made) {
      if (!(pass.at() instanceof Anchor.OnDate on)) {
        throw new IllegalArgumentException("what was made has a date, not " + pass.at());
      }
      out.add(kernel.made(pass.mix(), on.date()));
    }
    out.sort(Comparator.comparing(PreparedPass::planned));
    return List.copyOf(out);
  }
}
