package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.swathbook.catalog.Canopy;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.measure.Unit;

/** Random crops, and the clocks that weeds count by too. */
final class RandomCrops {

  /** A clock with the unit in which its file counts. */
  record Clock(ThermalClock clock, Unit unit) {

    double sum(double written) {
      return new ThermalClocks(clock, unit).celsiusDays(written);
    }
  }

  private final Draw draw;

  RandomCrops(Draw draw) {
    this.draw = draw;
  }

  Clock clock() {
    Unit unit = draw.pick(Unit.FAHRENHEIT, Unit.CELSIUS);
    DegreeDayMethod method = draw.pick(DegreeDayMethod.values());
    boolean clamped = method == DegreeDayMethod.CLAMPED;
    double base = clamped ? draw.number(0, 50) : draw.number(-10, 50);
    OptionalDouble ceiling =
        clamped || draw.chance(0.3)
            ? Draw.box(unit.toSi(base + draw.number(1, 40)))
            : OptionalDouble.empty();
    return new Clock(new ThermalClock(method, unit.toSi(base), ceiling), unit);
  }

  Crop crop() {
    String name = draw.name();
    String id = draw.chance(0.5) ? Slug.of(name) : Slug.of(draw.name());
    Clock clock = clock();
    List<CropStage> stages = stages(clock);
    List<String> names = stages.stream().map(CropStage::name).toList();
    List<String> leaves =
        draw.chance(0.2) ? List.of() : names.stream().filter(n -> draw.chance(0.7)).toList();
    SortedMap<Double, String> bare = new TreeMap<>();
    SortedMap<Double, String> after = new TreeMap<>();
    removal(names, leaves, bare, after);
    Map<String, Integer> bbch = byStage(names, () -> draw.whole(0, 99));
    Map<String, Double> heights = heights(names);
    Canopy canopy = canopy(names);
    Map<String, Source> sources = new LinkedHashMap<>();
    sources.put("stages", draw.source());
    names.forEach(n -> sources.put("stages.at." + n, draw.source()));
    bbch.keySet().forEach(n -> sources.put("bbch." + n, draw.source()));
    heights.keySet().forEach(n -> sources.put("heights." + n, draw.source()));
    sources.put("canopy", canopy.source());
    if (!bare.isEmpty()) {
      sources.put("criticalRemoval", draw.source());
    }
    if (!leaves.isEmpty()) {
      sources.put("leafStages", draw.source());
    }
    sources.put("name", draw.source());
    return new Crop(
        new CropId(id),
        name,
        draw.names(2),
        clock.clock(),
        stages,
        names.get(0),
        leaves,
        bbch,
        heights,
        canopy,
        bare,
        after,
        sources,
        draw.date());
  }

  /** The first counts heat, later ones heat or days, each kind rising. */
  private List<CropStage> stages(Clock clock) {
    List<CropStage> out = new ArrayList<>();
    double written = draw.number(1, 200);
    int days = 0;
    int size = draw.whole(1, 8);
    for (int i = 0; i < size; i++) {
      String name = draw.pick("V" + i, i + "-leaf", "Feekes " + i + ".5", "[" + i + "]: a, #");
      if (i == 0 || draw.chance(0.6)) {
        out.add(new CropStage(name, Draw.box(clock.sum(written)), OptionalInt.empty()));
        written += draw.number(1, 200);
      } else {
        days += draw.whole(1, 20);
        out.add(new CropStage(name, OptionalDouble.empty(), OptionalInt.of(days)));
      }
    }
    return out;
  }

  private <T> Map<String, T> byStage(List<String> names, Supplier<T> value) {
    Map<String, T> out = new LinkedHashMap<>();
    draw.some(names, 0).forEach(n -> out.put(n, value.get()));
    return out;
  }

  /** Of some stages in any order; a later one is no lower. */
  private Map<String, Double> heights(List<String> names) {
    Map<String, Double> any = byStage(names, draw::heightCm);
    List<Double> rising = any.values().stream().sorted().toList();
    List<String> inOrder = names.stream().filter(any::containsKey).toList();
    any.replaceAll((name, cm) -> rising.get(inOrder.indexOf(name)));
    return any;
  }

  private Canopy canopy(List<String> names) {
    SortedMap<Double, Integer> days = new TreeMap<>();
    Optional<String> at = draw.maybe(() -> draw.pick(names));
    if (at.isEmpty()) {
      int closed = draw.whole(0, 90);
      for (double row : draw.list(1, 3, draw::heightCm).stream().sorted().toList()) {
        days.put(row, closed);
        closed += draw.whole(0, 30);
      }
    }
    return new Canopy(
        at,
        days,
        draw.chance(0.3) ? Draw.box(draw.number(0, 200)) : OptionalDouble.empty(),
        draw.source());
  }

  /** Not stated, at any row spacing, or by row spacing with a stage or so many stages after it. */
  private void removal(
      List<String> names,
      List<String> leaves,
      SortedMap<Double, String> bare,
      SortedMap<Double, String> after) {
    if (draw.chance(0.3)) {
      return;
    }
    if (draw.chance(0.5)) {
      String at = draw.pick(names);
      bare.put(0.0, at);
      after.put(0.0, draw.pick(names.subList(names.indexOf(at), names.size())));
      return;
    }
    Set<Double> rows = new LinkedHashSet<>(draw.list(1, 3, draw::heightCm));
    int later = draw.whole(0, 2);
    if (leaves.size() > later && draw.chance(0.7)) {
      for (double row : rows) {
        int at = draw.whole(0, leaves.size() - 1 - later);
        bare.put(row, leaves.get(at));
        after.put(row, leaves.get(at + later));
      }
    } else {
      String same = draw.pick(names);
      List<String> before = names.subList(0, names.indexOf(same) + 1);
      rows.forEach(row -> bare.put(row, draw.pick(before)));
      rows.forEach(row -> after.put(row, same));
    }
  }
}
