package org.swathbook.cli.report;

import java.util.List;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.measure.Numbers;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.LoadSplit;
import org.swathbook.tank.MixingStep;

/** Words of a load sheet that are the same in every form of it. */
public final class LoadWords {

  /** What whoever fills and sprays writes down and signs. */
  public static final List<String> SIGN_OFF =
      List.of(
          "Labels of these products read, by",
          "EPA registration numbers held against the products in hand, by",
          "Protective equipment of the labels worn, by",
          "Loaded by, date and time",
          "Amounts checked against this sheet by, date and time",
          "Sprayed by, certificate number",
          "Wind and direction at the start, at the end",
          "Sprayer cleaned by, how, date and time");

  private LoadWords() {}

  /** How the loads differ, in one word for scripts. */
  public static String way(LoadSplit.Way way) {
    return switch (way) {
      case ONE -> "one";
      case FULL -> "full";
      case EVENED -> "equal";
      case FULL_AND_REST -> "full-and-rest";
    };
  }

  /** How the acres are cut into loads, and why. */
  public static String split(LoadSheet sheet) {
    int n = sheet.loads().size();
    String tank = "a tank of " + gallons(sheet.tankGallons()) + " gal";
    return switch (sheet.split().way()) {
      case ONE -> "one load of " + tank;
      case FULL -> n + " full loads of " + tank;
      case EVENED ->
          n
              + " equal loads below "
              + tank
              + ", since full ones would leave "
              + gallons(sheet.split().tinyRestGallons(sheet.tankGallons()))
              + " gal for the last, less than a quarter of it";
      case FULL_AND_REST ->
          (n == 2 ? "one full load" : n - 1 + " full loads") + " of " + tank + " and what remains";
    };
  }

  /** Whole gallons from 100 on, tenths below. */
  public static String gallons(double gallons) {
    return Numbers.grouped(gallons, gallons >= 100 ? 0 : 1);
  }

  public static String acres(double acres) {
    return Numbers.grouped(acres, 1);
  }

  public static String rinse(Rinse rinse) {
    return switch (rinse) {
      case WATER_RINSE -> "one rinse with water";
      case TRIPLE_RINSE -> "a triple rinse";
      case CLEANER -> "a rinse with a tank cleaner";
    };
  }

  /** Who says that a step stands where it stands. */
  public static String source(MixingStep step) {
    return step.guides().isEmpty()
        ? "common practice, no source"
        : String.join(", ", step.guides());
  }
}
