package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.tank.HardWater;
import org.swathbook.tank.WaterTreatment;
import org.swathbook.tank.WaterTreatment.AmmoniumSulfateFacts;

/** What the water of a tank needs. */
final class WaterText {
  private WaterText() {}

  static List<String> lines(WaterTreatment water) {
    if (water instanceof WaterTreatment.NoWater) {
      return List.of("Liquid fertilizer carries this mix; there is no water to treat.");
    }
    if (water instanceof WaterTreatment.Tested t) {
      return List.of(salts(t), sulfate(t));
    }
    if (water instanceof WaterTreatment.Untested u) {
      return List.of(
          "NOT TESTED. Hard water ties up "
              + Figures.list(u.acids())
              + "; how much ammonium sulfate it takes is not known without its hardness.",
          held(u.facts()) + refused(u.facts()));
    }
    return List.of("Nothing in this tank is known to be tied up by hard water.");
  }

  private static String salts(WaterTreatment.Tested t) {
    return "Hardness "
        + Numbers.decimals(t.hardnessPpmCaCo3(), 0)
        + " ppm CaCO3"
        + (t.hard()
            ? ": hard water, which ties up " + Figures.list(t.acids()) + "."
            : ", below what counts as hard for "
                + Figures.list(t.acids())
                + " ("
                + Numbers.decimals(HardWater.MOST_HARDNESS_PPM, 0)
                + " ppm CaCO3; Purdue University, from memory).")
        + " Its salts take "
        + Numbers.decimals(t.lbPer100Gal(), 1)
        + " lb of ammonium sulfate in 100 gal (North Dakota State University, from memory"
        + (t.ironTested() ? "" : "; iron not tested")
        + "; sodium and potassium not counted).";
  }

  private static String sulfate(WaterTreatment.Tested t) {
    AmmoniumSulfateFacts f = t.facts();
    double asked = t.askedLbPer100Gal();
    if (!f.refusedBy().isEmpty()) {
      return held(f) + refused(f);
    }
    if (asked == 0) {
      return "No treatment asked for.";
    }
    String wanted =
        "Asked for: "
            + Numbers.decimals(asked, 1)
            + " lb/100 gal"
            + (f.askedByLabels().isPresent() && f.askedByLabels().getAsDouble() == asked
                ? ", by label"
                : ", by the water")
            + ". ";
    boolean byLabel = f.askedByLabels().isPresent() && f.askedByLabels().getAsDouble() > 0;
    if (f.conditioner() && !byLabel) {
      return wanted + held(f);
    }
    boolean short_ = f.held().isPresent() && Quantity.exceeds(asked, f.held().getAsDouble());
    return wanted + held(f) + (short_ ? " TOO LITTLE." : f.held().isPresent() ? " Enough." : "");
  }

  private static String held(AmmoniumSulfateFacts f) {
    String conditioner =
        f.conditioner()
            ? " A conditioner without ammonium is in the tank; its own label says at what rate it"
                + " does the same."
            : "";
    if (f.held().isEmpty()) {
      return "In the tank: ammonium sulfate of a strength that is not known." + conditioner;
    }
    return (f.held().getAsDouble() == 0
            ? "In the tank: no ammonium sulfate."
            : "In the tank: " + Numbers.decimals(f.held().getAsDouble(), 1) + " lb/100 gal.")
        + conditioner;
  }

  private static String refused(AmmoniumSulfateFacts f) {
    if (f.refusedBy().isEmpty()) {
      return "";
    }
    return " REFUSED by "
        + Figures.list(f.refusedBy())
        + (f.conditioner()
            ? ": no ammonium."
            : ": no ammonium; hard water then needs a conditioner without it, as that label allows.");
  }
}
