package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;

/** A cohort while scouting is put in: see {@link ScoutedCohorts}. */
final class ScoutedCell {
  /** Shares of the short, the middle and the tall plants. */
  static final double[] SHARES = {0.25, 0.5, 0.25};

  final int emergedOn;
  final int competesFrom;
  final double perM2;
  final double counted;
  double tillageSurvival;
  int endsOn = Integer.MAX_VALUE;

  /** 0 short, 1 middle, 2 tall; -1 for a cohort that is not divided. */
  int group = -1;

  final List<ScoutedCell> heirs = new ArrayList<>();
  final List<Integer> sizedOn = new ArrayList<>();
  final List<Double> ageThen = new ArrayList<>();

  ScoutedCell(
      int emergedOn, int competesFrom, double perM2, double counted, double tillageSurvival) {
    this.emergedOn = emergedOn;
    this.competesFrom = competesFrom;
    this.perM2 = perM2;
    this.counted = counted;
    this.tillageSurvival = tillageSurvival;
  }

  /** A part of it, the same in all else. */
  ScoutedCell part(int itsGroup) {
    double share = SHARES[itsGroup];
    ScoutedCell out =
        new ScoutedCell(emergedOn, competesFrom, perM2 * share, counted * share, tillageSurvival);
    out.group = itsGroup;
    out.sizedOn.addAll(sizedOn);
    out.ageThen.addAll(ageThen);
    return out;
  }

  void size(int day, double age) {
    sizedOn.add(day);
    ageThen.add(age);
  }

  boolean isUp(int day) {
    return emergedOn <= day && day < endsOn;
  }

  /** Thermal age at the end of a day, °C-days. */
  double age(int day, double[] thermal) {
    int last = sizedOn.size() - 1;
    while (last >= 0 && sizedOn.get(last) > day) {
      last--;
    }
    if (last >= 0) {
      return ageThen.get(last) + (thermal[day] - thermal[sizedOn.get(last)]);
    }
    return day <= emergedOn ? 0 : thermal[day] - thermal[emergedOn];
  }

  /** Plants per m² that stand at the end of a day when nothing was sprayed. */
  double standing(int day, int tilledOn) {
    if (!isUp(day)) {
      return 0;
    }
    double n = counted > 0 ? counted : perM2;
    return day >= tilledOn ? n * tillageSurvival : n;
  }
}
