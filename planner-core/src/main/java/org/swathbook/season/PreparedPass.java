package org.swathbook.season;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.control.ColdDay;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.MixEffect;
import org.swathbook.control.SoilEffect;
import org.swathbook.control.TankActive;
import org.swathbook.growth.PassTiming;
import org.swathbook.program.Mix;
import org.swathbook.season.outcome.SiteControl;

/**
 * A mix on a planned date, with its day and its effects in every weather year. Made by {@link
 * Kernel#prepare}; immutable for all who use it.
 */
public final class PreparedPass {
  private final Mix mix;
  private final MixEffect effect;
  private final PassTiming timing;
  private final int[] day;
  private final boolean[] met;
  private final boolean made;
  private final boolean inTheCold;
  private final Position.Phase[] phase;
  private final DayView[] view;
  private final SoilEffect[][][] soil;
  private final double[][][] keepsInSoil;
  private final int[] soilActive;
  private final int[] soilSite;

  /**
   * By year, then by weed, each looked up when first asked for. Two threads may both look one up:
   * they find the same.
   */
  private final @Nullable FoliarTable[] foliar;

  /** By weed, found when first asked for: by biotype, whether its leaves feel it as before. */
  private final @Nullable AsBefore[] leavesAsBefore;

  private final OwnSoil ownSoil;

  PreparedPass(
      Mix mix,
      MixEffect effect,
      PassTiming timing,
      int[] day,
      boolean[] met,
      boolean made,
      boolean inTheCold,
      Position.Phase[] phase,
      DayView[] view,
      int[] soilActive,
      SoilEffect[][][] soil,
      double[][][] keepsInSoil,
      OwnSoil ownSoil) {
    this.mix = mix;
    this.effect = effect;
    this.timing = timing;
    this.day = day;
    this.met = met;
    this.made = made;
    this.inTheCold = inTheCold;
    this.phase = phase;
    this.view = view;
    this.soilActive = soilActive;
    this.soil = soil;
    this.keepsInSoil = keepsInSoil;
    this.ownSoil = ownSoil;
    this.foliar = new FoliarTable[day.length * effect.weeds()];
    this.leavesAsBefore = new AsBefore[effect.weeds()];
    this.soilSite = new int[soilActive.length];
    for (int j = 0; j < soilActive.length; j++) {
      soilSite[j] = effect.actives().get(soilActive[j]).ingredient().site().number();
    }
  }

  public Mix mix() {
    return mix;
  }

  public MixEffect effect() {
    return effect;
  }

  public PassTiming timing() {
    return timing;
  }

  public LocalDate planned() {
    return timing.planned();
  }

  /** Spray day in a year, by its place in the set; -1 when the pass is missed. */
  public int day(int year) {
    return day[year];
  }

  public boolean isMissed(int year) {
    return day[year] < 0;
  }

  /** Whether it is a fact: made, or taken as made, on its very date. */
  public boolean isMade() {
    return made;
  }

  /**
   * Whether the cold slows an active (its place in the tank) in the leaves on most of the days on
   * which the pass is sprayed. What is made is past it.
   */
  boolean isSlowed(int active) {
    return inTheCold && ColdDay.slows(effect.actives().get(active).ingredient());
  }

  /**
   * Whether it is made, and the first suitable day after a wait of the house's queue lies in all
   * its windows too.
   */
  public boolean meetsWindows(int year) {
    return met[year];
  }

  /** Where in the crop's life it falls in a year; that of the planned date when it is missed. */
  public Position.Phase phase(int year) {
    return phase[year];
  }

  /** Years in which it is missed, in order. */
  public List<Integer> missedYears() {
    List<Integer> out = new java.util.ArrayList<>();
    for (int y = 0; y < day.length; y++) {
      if (day[y] < 0) {
        out.add(timing.years().get(y).year());
      }
    }
    return List.copyOf(out);
  }

  DayView view(int year) {
    return view[year];
  }

  FoliarTable foliar(int year, int weed, Optional<Site> without) {
    if (without.isPresent() && effect.has(without.get())) {
      return effect.foliar(weed, phase[year], without);
    }
    int at = year * effect.weeds() + weed;
    FoliarTable table = foliar[at];
    if (table == null) {
      table = effect.foliar(weed, phase[year]);
      foliar[at] = table;
    }
    return table;
  }

  /**
   * Whether leaves of a biotype, not the first, feel it in every year as the one before it does.
   */
  boolean leavesFeelAsBefore(int weed, int biotype) {
    AsBefore known = leavesAsBefore[weed];
    if (known == null) {
      boolean[] alike = new boolean[effect.biotypes(weed)];
      Arrays.fill(alike, true);
      for (int y = 0; y < day.length; y++) {
        FoliarTable table = foliar(y, weed, Optional.empty());
        for (int b = 1; b < alike.length; b++) {
          alike[b] &= table.isFeltAsBefore(b);
        }
      }
      known = new AsBefore(alike);
      leavesAsBefore[weed] = known;
    }
    return known.biotypes[biotype];
  }

  /** A final field, so that another thread sees what is in it. */
  private static final class AsBefore {
    private final boolean[] biotypes;

    AsBefore(boolean[] biotypes) {
      this.biotypes = biotypes;
    }
  }

  /** Whether a biotype, not the first, feels its soil doses as the one before it does. */
  boolean soilIsFeltAsBefore(int weed, int biotype) {
    for (double[][] dose : keepsInSoil) {
      if (dose[weed][biotype] != dose[weed][biotype - 1]) {
        return false;
      }
    }
    return true;
  }

  /** The layers that it lays by itself against a weed. */
  public PassLayers ownLayers(Kernel kernel, int weed) {
    return ownSoil.layers(kernel, this, weed);
  }

  /** What each of its sites does to a weed through the soil. */
  List<SiteControl> soilSites(Kernel kernel, int weed) {
    return ownSoil.sites(kernel, this, weed);
  }

  /** Number of actives with soil activity. */
  int soilDoses() {
    return soilActive.length;
  }

  /** Place of such an active in the tank. */
  int soilActive(int dose) {
    return soilActive[dose];
  }

  TankActive soilDose(int dose) {
    return effect.actives().get(soilActive[dose]);
  }

  int soilSite(int dose) {
    return soilSite[dose];
  }

  SoilEffect soil(int year, int dose, int weed) {
    return soil[year][dose][weed];
  }

  /** Share of the soil effect that a biotype still feels. */
  double keepsInSoil(int dose, int weed, int biotype) {
    return keepsInSoil[dose][weed][biotype];
  }
}
