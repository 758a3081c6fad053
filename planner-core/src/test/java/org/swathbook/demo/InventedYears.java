package org.swathbook.demo;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What each invented year is like, so that the ten years hold cold and warm, dry and wet springs,
 * layers that wait for rain and layers that a cloudburst moves.
 */
final class InventedYears {
  static final LocalDate FIRST = LocalDate.of(2016, 9, 1);
  static final LocalDate LAST = LocalDate.of(2026, 11, 20);

  private static final Season ORDINARY = new Season(0, 0, 1, 1);

  private static final Map<Integer, Season> SEASONS =
      Map.of(
          2017, new Season(0.4, 0.0, 1.15, 0.95),
          2018, new Season(-1.0, 0.4, 0.85, 1.15),
          2019, new Season(-1.1, -0.4, 1.20, 1.05),
          2020, new Season(0.2, 0.6, 0.90, 0.85),
          2021, new Season(0.0, 0.3, 1.10, 0.90),
          2022, new Season(-0.6, 0.8, 0.75, 0.70),
          2023, new Season(-0.2, 0.1, 0.65, 1.05),
          2024, new Season(0.7, 0.2, 1.25, 1.00),
          2025, new Season(0.3, 0.0, 1.00, 1.10),
          2026, new Season(0.4, 0.2, 0.95, 0.95));

  /** Warm months in which corn reaches the stages that the journal of the demo book writes. */
  private static final Map<YearMonth, Double> SET_MONTHS =
      Map.of(
          YearMonth.of(2025, 5), 2.5,
          YearMonth.of(2026, 5), 2.5,
          YearMonth.of(2026, 6), 1.0);

  private static final List<DrySpell> DRY_SPELLS =
      List.of(
          dry(DemoStation.SEDGE_FORK, "2018-05-05", "2018-05-24"),
          dry(DemoStation.DRY_BUTTE, "2018-05-05", "2018-05-26"),
          dry(DemoStation.SEDGE_FORK, "2023-05-09", "2023-05-27"),
          dry(DemoStation.DRY_BUTTE, "2023-05-07", "2023-05-29"),
          dry(DemoStation.DRY_BUTTE, "2022-05-03", "2022-05-21"),
          // the journal's "no rain for 16 days" after the pass of 24 May 2026 on OB-4
          dry(DemoStation.SEDGE_FORK, "2026-05-24", "2026-06-09"));

  private static final List<Downpour> DOWNPOURS =
      List.of(
          // wets the layers of mid-May 2026 before the dry spell
          wet(DemoStation.SEDGE_FORK, "2026-05-18", 17.0),
          wet(DemoStation.SEDGE_FORK, "2019-05-21", 44.0),
          wet(DemoStation.SEDGE_FORK, "2019-05-22", 39.0),
          wet(DemoStation.DRY_BUTTE, "2019-05-21", 52.0),
          wet(DemoStation.DRY_BUTTE, "2019-05-22", 31.0),
          wet(DemoStation.SEDGE_FORK, "2021-05-16", 58.0),
          wet(DemoStation.SEDGE_FORK, "2021-05-17", 27.0),
          wet(DemoStation.DRY_BUTTE, "2024-05-19", 47.0),
          wet(DemoStation.DRY_BUTTE, "2024-05-20", 36.0));

  private InventedYears() {}

  /** How far the day's season stands off the normals. */
  static double warmthC(LocalDate day) {
    Season season = SEASONS.getOrDefault(day.getYear(), ORDINARY);
    int month = day.getMonthValue();
    if (month >= 3 && month <= 5) {
      return season.springC;
    }
    return month >= 6 && month <= 8 ? season.summerC : 0;
  }

  /** Factor on the month's normal rain. */
  static double wetness(LocalDate day) {
    Season season = SEASONS.getOrDefault(day.getYear(), ORDINARY);
    int month = day.getMonthValue();
    if (month >= 4 && month <= 6) {
      return season.springRain;
    }
    return month >= 7 && month <= 9 ? season.summerRain : 1;
  }

  /** Anomaly the mean of this month is set to, °C; empty where chance decides. */
  static OptionalDouble setAnomalyC(YearMonth month) {
    Double anomaly = SET_MONTHS.get(month);
    return anomaly == null ? OptionalDouble.empty() : OptionalDouble.of(anomaly);
  }

  static boolean keptDry(DemoStation station, LocalDate day) {
    return DRY_SPELLS.stream()
        .anyMatch(s -> s.station == station && !day.isBefore(s.from) && !day.isAfter(s.to));
  }

  /** Rain the day is given whatever chance says, mm; 0 on all other days. */
  static double downpourMm(DemoStation station, LocalDate day) {
    return DOWNPOURS.stream()
        .filter(d -> d.station == station && d.day.equals(day))
        .mapToDouble(Downpour::mm)
        .sum();
  }

  private static DrySpell dry(DemoStation station, String from, String to) {
    return new DrySpell(station, LocalDate.parse(from), LocalDate.parse(to));
  }

  private static Downpour wet(DemoStation station, String day, double mm) {
    return new Downpour(station, LocalDate.parse(day), mm);
  }

  /** Warmth March–May and June–August in °C; rain April–June and July–September as factors. */
  private record Season(double springC, double summerC, double springRain, double summerRain) {}

  private record DrySpell(DemoStation station, LocalDate from, LocalDate to) {}

  private record Downpour(DemoStation station, LocalDate day, double mm) {}
}
