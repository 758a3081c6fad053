package org.swathbook.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.book.Biotype;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Residual;
import org.swathbook.control.JointAction;
import org.swathbook.control.ResidualCurve;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Soil control of one weed in one year, day by day, of plants that would come up on that day. Holds
 * its scratch arrays; one belongs to one thread.
 */
final class SoilDays {
  /** An active that gives a weed less than this fresh is no part of its layer. */
  private static final double LEAST_FRESH = 0.6;

  /** A foliar active is part of a layer when its length at the low rate is at least this. */
  private static final int LEAST_LENGTH_OF_FOLIAR = 14;

  private record Dose(
      int pass, int site, IngredientId id, double fresh, ResidualCurve curve, boolean inLayer) {}

  private final Dose[] doses;

  /** By dose, then by biotype: the share of its effect that the biotype still feels. */
  private final double[][] keeps;

  private final double[] shares;
  private final double missed;
  private final double[] bySite;

  /** Control by each dose now, before what a biotype resists. */
  private final double[] there;

  SoilDays(List<PreparedPass> passes, int year, int weed, WeedPressure pressure, HouseRules house) {
    List<Biotype> biotypes = pressure.biotypes();
    this.shares = biotypes.stream().mapToDouble(Biotype::share).toArray();
    this.missed = house.missSoil();
    List<Dose> found = new ArrayList<>();
    List<double[]> felts = new ArrayList<>();
    // In the order of their numbers: so what a pass does alone is the same beside others.
    TreeSet<Integer> present = new TreeSet<>();
    for (PreparedPass pass : passes) {
      for (int j = 0; j < pass.soilDoses(); j++) {
        present.add(pass.soilSite(j));
      }
    }
    List<Integer> sites = List.copyOf(present);
    for (int p = 0; p < passes.size(); p++) {
      PreparedPass pass = passes.get(p);
      for (int j = 0; j < pass.soilDoses(); j++) {
        Ingredient active = pass.soilDose(j).ingredient();
        if (!pass.isMissed(year)) {
          int a = pass.soilActive(j);
          double fresh = pass.effect().fresh(a, weed).orElse(0);
          double[] left = new double[shares.length];
          double felt = 0;
          for (int b = 0; b < left.length; b++) {
            left[b] = pass.keepsInSoil(j, weed, b);
            felt += shares[b] * left[b];
          }
          ResidualCurve curve = pass.effect().residual(a, year, pass.day(year)).orElseThrow();
          int place = sites.indexOf(pass.soilSite(j));
          boolean inLayer = fresh * felt >= LEAST_FRESH && longEnough(active);
          felts.add(left);
          found.add(new Dose(p, place, active.id(), fresh, curve, inLayer));
        }
      }
    }
    this.keeps = felts.toArray(double[][]::new);
    this.doses = found.toArray(Dose[]::new);
    this.there = new double[doses.length];
    this.bySite = new double[sites.size()];
  }

  private static boolean longEnough(Ingredient active) {
    Residual r = active.residual().find().orElseThrow();
    return active.foliar().isNone() || r.lowDays() >= LEAST_LENGTH_OF_FOLIAR;
  }

  /** Control, 0 to 1, by all soil actives in the ground together. */
  double control(int day) {
    for (int i = 0; i < doses.length; i++) {
      there[i] = doses[i].fresh() * doses[i].curve().share(day);
    }
    return together();
  }

  /** Actives that make the layer of a pass, in canonical order. */
  List<IngredientId> layerOf(int pass) {
    return Arrays.stream(doses).filter(d -> d.pass() == pass && d.inLayer()).map(Dose::id).toList();
  }

  /**
   * Control by the layer of a pass alone.
   *
   * @param activatedOnly whether only actives count whose activating rain has come by the day
   */
  double layerControl(int pass, int day, boolean activatedOnly) {
    for (int i = 0; i < doses.length; i++) {
      Dose d = doses[i];
      boolean counts =
          d.pass() == pass && d.inLayer() && (!activatedOnly || d.curve().activeFrom() <= day);
      there[i] = counts ? d.fresh() * d.curve().share(day) : 0;
    }
    return together();
  }

  /** Control by what there is of each dose now. */
  private double together() {
    double escapes = 0;
    for (int b = 0; b < shares.length; b++) {
      Arrays.fill(bySite, 0);
      for (int i = 0; i < doses.length; i++) {
        double e = there[i] * keeps[i][b];
        if (e > bySite[doses[i].site()]) {
          bySite[doses[i].site()] = e;
        }
      }
      escapes += shares[b] * JointAction.withMisses(missed, JointAction.survival(bySite));
    }
    return 1 - escapes;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                SoilDays.class,
                "part of a layer",
                "an active with enough fresh control of the weed; a foliar one with a long enough length at the low rate",
                "default")
            .with("fresh from", LEAST_FRESH, "")
            .with("length from", LEAST_LENGTH_OF_FOLIAR, "days"));
  }
}
