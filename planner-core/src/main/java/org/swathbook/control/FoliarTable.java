package org.swathbook.control;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Biotype;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;

/**
 * What a tank does through the leaves of one weed, by height class: each active alone after
 * antagonism, and for each biotype the joint survival of plants that are reached and how the
 * survivors are set back. Never better on taller plants.
 *
 * <p>The setback is the hardest one among the partners that work on the biotype: control of at
 * least 50 % of its smallest plants; so more of anything never sets back less, and a plant too tall
 * to be killed is burnt back like the others.
 */
public final class FoliarTable {
  private final List<double[]> plain;
  private final double[] left;
  private final double[][] survival;

  /** By biotype. */
  private final byte[] setback;

  private final boolean idle;

  /** By biotype: whether it feels all that the one before it does. */
  private final boolean[] asBefore;

  private FoliarTable(List<double[]> plain, double[] left, double[][] survival, byte[] setback) {
    this.plain = plain;
    this.left = left;
    this.survival = survival;
    this.setback = setback;
    boolean none = true;
    for (double[] s : survival) {
      none &= s[0] == 1;
    }
    this.idle = none;
    this.asBefore = new boolean[survival.length];
    for (int b = 1; b < asBefore.length; b++) {
      asBefore[b] = Arrays.equals(survival[b], survival[b - 1]) && setback[b] == setback[b - 1];
    }
  }

  /**
   * @param plain control by height class of each active by itself on a plant that resists nothing
   * @param without a site that does nothing to plants, though it is still in the tank and its
   *     antagonism too
   */
  static FoliarTable of(
      WeedPressure pressure,
      List<TankActive> actives,
      MixInteractions interactions,
      List<double[]> plain,
      Optional<Site> without) {
    int n = actives.size();
    double[] left = new double[n];
    for (int a = 0; a < n; a++) {
      boolean off = without.isPresent() && without.get().equals(actives.get(a).ingredient().site());
      left[a] = off ? 0 : interactions.antagonism(a, pressure.weed());
    }
    List<MixInteractions.Synergy> synergies = interactions.synergies(pressure.weed());
    List<Biotype> biotypes = pressure.biotypes();
    double[] each = new double[n];
    int[] place = places(actives);
    double[] bySite = new double[n];
    double[][] survival = new double[biotypes.size()][HeightClasses.COUNT];
    byte[] setback = new byte[biotypes.size()];
    for (int b = 0; b < biotypes.size(); b++) {
      double[] keeps = new double[n];
      for (int a = 0; a < n; a++) {
        keeps[a] =
            ResistanceFactors.foliar(pressure.weed(), biotypes.get(b), actives.get(a).ingredient());
      }
      setback[b] = (byte) hardest(actives, plain, left, keeps).rank();
      double last = 0;
      for (int k = 0; k < HeightClasses.COUNT; k++) {
        Arrays.fill(bySite, 0);
        for (int a = 0; a < n; a++) {
          double e = plain.get(a)[k] * left[a] * keeps[a];
          each[a] = 1 - e;
          bySite[place[a]] = Math.max(bySite[place[a]], e);
        }
        double p = JointAction.survival(bySite);
        last = Math.max(last, p * MixInteractions.remaining(synergies, each));
        survival[b][k] = last;
      }
    }
    return new FoliarTable(plain, left, survival, setback);
  }

  private static Setback hardest(
      List<TankActive> actives, List<double[]> plain, double[] left, double[] keeps) {
    Setback hardest = Setback.NONE;
    for (int a = 0; a < left.length; a++) {
      if (plain.get(a)[0] * left[a] * keeps[a] >= Setback.WORKS) {
        Setback s = actives.get(a).ingredient().isContact() ? Setback.CONTACT : Setback.SYSTEMIC;
        hardest = s.compareTo(hardest) > 0 ? s : hardest;
      }
    }
    return hardest;
  }

  /**
   * For each active the first place at which its site stands: partners of one site hit one target,
   * so of them only the largest effect counts (default, ours: the dose of both added up lies
   * between), and Colby's product runs over sites.
   */
  private static int[] places(List<TankActive> actives) {
    int[] place = new int[actives.size()];
    for (int a = 0; a < place.length; a++) {
      place[a] = a;
      for (int earlier = a - 1; earlier >= 0; earlier--) {
        if (actives.get(earlier).ingredient().site().equals(actives.get(a).ingredient().site())) {
          place[a] = place[earlier];
        }
      }
    }
    return place;
  }

  /** Whether the same plants live through it, set back alike. */
  boolean doesAsMuchAs(FoliarTable other) {
    return Arrays.deepEquals(survival, other.survival) && Arrays.equals(setback, other.setback);
  }

  /** Whether it does nothing to any biotype at any height. */
  public boolean isIdle() {
    return idle;
  }

  /** Whether a biotype, not the first, feels it as the one before it does. */
  public boolean isFeltAsBefore(int biotype) {
    return asBefore[biotype];
  }

  /**
   * Control, 0 to 1, by one active of the tank alone, after antagonism, on a plant that resists
   * nothing.
   */
  public double alone(int active, int heightClass) {
    return plain.get(active)[heightClass] * left[active];
  }

  /** Share of the plants reached that lives, 0 to 1. */
  public double survival(int biotype, int heightClass) {
    return survival[biotype][heightClass];
  }

  /** The same by height class; not to be written to. */
  public double[] survival(int biotype) {
    return survival[biotype];
  }

  /** {@link Setback#rank} of the survivors, however tall. */
  public int setbackRank(int biotype) {
    return setback[biotype];
  }

  public Setback setback(int biotype) {
    return Setback.ofRank(setback[biotype]);
  }

  /** Control, 0 to 1, of all biotypes by share, all plants reached. */
  public double joint(WeedPressure pressure, int heightClass) {
    double lives = 0;
    for (int b = 0; b < survival.length; b++) {
      lives += pressure.biotypes().get(b).share() * survival[b][heightClass];
    }
    return 1 - lives;
  }
}
