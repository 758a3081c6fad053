package org.swathbook.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Canopy;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.ThermalClock;

/** Crops as the starter catalog has them; degree-days are given in °F and turned into °C-days. */
final class FixtureCrops {
  private static final Source SOURCE = new Source("default, test fixture");
  private static final LocalDate REVIEWED = LocalDate.of(2026, 11, 1);
  private static final ThermalClock CLAMPED =
      new ThermalClock(DegreeDayMethod.CLAMPED, 10, OptionalDouble.of(30));
  private static final ThermalClock AVERAGE_50 =
      new ThermalClock(DegreeDayMethod.AVERAGE, 10, OptionalDouble.empty());

  private FixtureCrops() {}

  static Crop corn() {
    List<CropStage> stages = new ArrayList<>();
    stages.add(degreeDaysF("VE", 115));
    List<String> leaves = new ArrayList<>();
    for (int n = 1; n <= 18; n++) {
      leaves.add("V" + n);
      stages.add(degreeDaysF("V" + n, n <= 10 ? 115 + 82 * n : 935 + 50 * (n - 10)));
    }
    stages.add(degreeDaysF("VT", 1385));
    stages.add(degreeDaysF("R1", 1400));
    stages.add(degreeDaysF("R2", 1640));
    stages.add(degreeDaysF("R4", 1880));
    stages.add(degreeDaysF("R5", 2120));
    stages.add(degreeDaysF("R6", 2600));
    return crop(
        "corn",
        CLAMPED,
        stages,
        "VE",
        leaves,
        Map.of(
            "VE", 1.0, "V3", 6.0, "V5", 12.0, "V6", 17.0, "V8", 27.0, "V10", 42.0, "V12", 54.0,
            "VT", 90.0),
        new Canopy(
            Optional.of("V10"), Collections.emptySortedMap(), OptionalDouble.empty(), SOURCE),
        new TreeMap<>(Map.of(76.2, "V3")),
        new TreeMap<>(Map.of(76.2, "V6")));
  }

  static Crop soybean() {
    List<CropStage> stages = new ArrayList<>();
    stages.add(degreeDaysF("VE", 130));
    Map<String, Integer> days = new LinkedHashMap<>();
    String[] names = {
      "VC", "V1", "V2", "V3", "V4", "V5", "V6", "V7", "V8", "R1", "R2", "R3", "R4", "R5", "R6",
      "R7", "R8"
    };
    int[] after = {5, 10, 15, 20, 25, 30, 33, 36, 39, 42, 45, 55, 64, 73, 88, 106, 115};
    for (int i = 0; i < names.length; i++) {
      days.put(names[i], after[i]);
    }
    days.forEach(
        (name, n) -> stages.add(new CropStage(name, OptionalDouble.empty(), OptionalInt.of(n))));
    return crop(
        "soybean",
        AVERAGE_50,
        stages,
        "VE",
        List.of("V1", "V2", "V3", "V4", "V5", "V6", "V7", "V8"),
        Map.of(
            "VE", 1.0, "V2", 7.0, "V3", 8.0, "V5", 11.0, "V6", 13.0, "R1", 16.0, "R2", 19.0, "R3",
            27.0, "R4", 33.0, "R5", 36.0),
        new Canopy(
            Optional.empty(), rows(19.05, 30, 38.1, 40, 76.2, 55), OptionalDouble.empty(), SOURCE),
        new TreeMap<>(Map.of(19.05, "V3", 38.1, "V2", 76.2, "V1")),
        new TreeMap<>(Map.of(19.05, "V5", 38.1, "V4", 76.2, "V3")));
  }

  static Crop grainSorghum() {
    List<CropStage> stages = new ArrayList<>();
    String[] names = {
      "emergence",
      "1-leaf",
      "2-leaf",
      "3-leaf",
      "4-leaf",
      "5-leaf",
      "6-leaf",
      "7-leaf",
      "8-leaf",
      "flag-leaf",
      "boot",
      "half-bloom",
      "soft-dough",
      "hard-dough",
      "mature"
    };
    int[] sums = {126, 193, 259, 326, 468, 610, 698, 786, 874, 1116, 1358, 1654, 1842, 2084, 2326};
    for (int i = 0; i < names.length; i++) {
      stages.add(degreeDaysF(names[i], sums[i]));
    }
    return crop(
        "grain-sorghum",
        CLAMPED,
        stages,
        "emergence",
        List.of(names).subList(1, 9),
        Map.of(
            "emergence",
            1.0,
            "3-leaf",
            4.0,
            "5-leaf",
            9.0,
            "8-leaf",
            16.0,
            "flag-leaf",
            30.0,
            "boot",
            38.0,
            "half-bloom",
            46.0),
        new Canopy(Optional.empty(), rows(38.1, 40, 76.2, 50), OptionalDouble.of(100), SOURCE),
        new TreeMap<>(Map.of(76.2, "3-leaf")),
        new TreeMap<>(Map.of(76.2, "6-leaf")));
  }

  private static CropStage degreeDaysF(String name, double fahrenheitDays) {
    return new CropStage(name, OptionalDouble.of(fahrenheitDays / 1.8), OptionalInt.empty());
  }

  private static SortedMap<Double, Integer> rows(double... pairs) {
    SortedMap<Double, Integer> map = new TreeMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put(pairs[i], (int) pairs[i + 1]);
    }
    return map;
  }

  private static Crop crop(
      String id,
      ThermalClock clock,
      List<CropStage> stages,
      String emergence,
      List<String> leaves,
      Map<String, Double> heightsIn,
      Canopy canopy,
      SortedMap<Double, String> removal,
      SortedMap<Double, String> afterResidual) {
    Map<String, Double> heightsCm = new LinkedHashMap<>();
    heightsIn.forEach((stage, inches) -> heightsCm.put(stage, inches * 2.54));
    return new Crop(
        CropId.of(id),
        id.replace('-', ' '),
        List.of(),
        clock,
        stages,
        emergence,
        leaves,
        Map.of(),
        heightsCm,
        canopy,
        removal,
        afterResidual,
        Map.of("all", SOURCE),
        REVIEWED);
  }
}
