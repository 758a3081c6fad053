package org.swathbook.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.catalog.Weed;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Puts what was seen of a weed into the cohorts that the model let come up.
 *
 * <p>Heights alone: every cohort that is up becomes three – short, middle, tall, a quarter, a half
 * and a quarter of its plants – which are of that size from that day on. So the plants that stand
 * have the heights that were seen whatever passes have left of each cohort. A later height moves
 * the three and does not divide them again. One height is the median; the spread around it is that
 * of the model, upwards within a bound: what the model has untreated may be long dead.
 *
 * <p>A count: all that is up ends on that day, and cohorts of the count stand in its place, each
 * with the competition of those it stands for, and divided as the model's plants are. Without a
 * height they keep the sizes of the model. Where the model has no plants up, the day of emergence
 * follows from the height; without one they are just up.
 */
final class ScoutedCohorts {
  /** Of one height: the ninetieth percentile is at most so many times the median (default). */
  private static final double MOST_OF_MEDIAN = 2;

  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;

  /** What was seen, on a day of the weather year. */
  record Sight(int day, Optional<ScoutedHeight> height, OptionalDouble perM2) {}

  private final Weed weed;
  private final HeightModel model;
  private final double[] thermal;
  private final int plantingDay;
  private final boolean tilled;
  private final List<ScoutedCell> cells = new ArrayList<>();

  private ScoutedCohorts(CohortSet modelled, int plantingDay, boolean tilled) {
    this.weed = modelled.weed();
    this.model = modelled.model();
    this.thermal = modelled.thermal();
    this.plantingDay = plantingDay;
    this.tilled = tilled;
    for (int c = 0; c < modelled.count(); c++) {
      int up = modelled.emergedOn(c);
      cells.add(new ScoutedCell(up, up, modelled.perM2(c), 0, modelled.tillageSurvival(c)));
    }
  }

  /**
   * @param sights in the order of their days, at most one a day
   * @param tilled whether the soil is worked on the planting day
   * @return the same cohorts where nothing was seen
   */
  static CohortSet apply(CohortSet modelled, List<Sight> sights, int plantingDay, boolean tilled) {
    if (sights.isEmpty()) {
      return modelled;
    }
    ScoutedCohorts all = new ScoutedCohorts(modelled, plantingDay, tilled);
    sights.forEach(all::see);
    return all.set(sights.stream().mapToInt(Sight::day).toArray());
  }

  private void see(Sight sight) {
    Optional<double[]> heights = sight.height().map(h -> heights(h, sight.day()));
    if (sight.perM2().isPresent()) {
      count(sight.day(), heights, sight.perM2().getAsDouble());
    } else {
      size(sight.day(), heights.orElseThrow());
    }
  }

  private void size(int day, double[] heights) {
    for (ScoutedCell c : List.copyOf(cells)) {
      if (c.isUp(day)) {
        for (ScoutedCell part : parts(c, heights)) {
          sized(part, day, model.ageAt(heights[part.group < 0 ? 1 : part.group]));
        }
      }
    }
  }

  /** The cohort itself, or the three that it is divided into in the list. */
  private List<ScoutedCell> parts(ScoutedCell c, double[] heights) {
    if (c.group >= 0 || heights[0] == heights[2]) {
      return List.of(c);
    }
    List<ScoutedCell> three = List.of(c.part(0), c.part(1), c.part(2));
    replace(cells, c, three);
    cells.forEach(other -> replace(other.heirs, c, three));
    return three;
  }

  private static void replace(List<ScoutedCell> in, ScoutedCell c, List<ScoutedCell> with) {
    int at = in.indexOf(c);
    if (at >= 0) {
      in.remove(at);
      in.addAll(at, with);
    }
  }

  private void sized(ScoutedCell c, int day, double age) {
    c.size(day, age);
    if (tilled && day < plantingDay) {
      c.tillageSurvival = CohortBuilder.tillageSurvival(model.heightCm(age(c, plantingDay)));
    }
  }

  private double age(ScoutedCell c, int day) {
    return c.age(day, thermal);
  }

  private double standing(ScoutedCell c, int day) {
    return c.standing(day, plantingDay);
  }

  private void count(int day, Optional<double[]> heights, double perM2) {
    List<ScoutedCell> up = cells.stream().filter(c -> c.isUp(day)).toList();
    double all = 0;
    for (ScoutedCell c : up) {
      all += standing(c, day);
    }
    List<ScoutedCell> counted = new ArrayList<>();
    if (perM2 > 0 && !(all > 0)) {
      counted.addAll(sightOfNew(day, heights, perM2));
    } else if (perM2 > 0) {
      for (List<ScoutedCell> kin : kin(up, heights.isPresent()).values()) {
        double standing = 0;
        for (ScoutedCell c : kin) {
          standing += standing(c, day);
        }
        if (standing > 0) {
          List<ScoutedCell> heirs = heirs(day, kin.get(0), heights, perM2 * (standing / all));
          kin.forEach(c -> c.heirs.addAll(heirs));
          counted.addAll(heirs);
        }
      }
    }
    up.forEach(c -> c.endsOn = day);
    int place = 0;
    while (place < cells.size() && cells.get(place).emergedOn <= day) {
      place++;
    }
    cells.addAll(place, counted);
  }

  /**
   * Cohorts that one lot of new ones stands for: where sizes were seen too all that compete alike,
   * else each by itself, since it keeps its size.
   */
  private static Map<Object, List<ScoutedCell>> kin(List<ScoutedCell> up, boolean sized) {
    Map<Object, List<ScoutedCell>> out = new LinkedHashMap<>();
    for (ScoutedCell c : up) {
      Object key = sized ? (Object) c.competesFrom : c;
      out.computeIfAbsent(key, k -> new ArrayList<>()).add(c);
    }
    return out;
  }

  private List<ScoutedCell> heirs(
      int day, ScoutedCell of, Optional<double[]> heights, double perM2) {
    if (heights.isPresent()) {
      return seen(day, of.competesFrom, heights.get(), perM2);
    }
    ScoutedCell heir = new ScoutedCell(day, of.competesFrom, 0, perM2, 1);
    heir.group = of.group;
    sized(heir, day, age(of, day));
    return List.of(heir);
  }

  /** Plants where the model has none. */
  private List<ScoutedCell> sightOfNew(int day, Optional<double[]> heights, double perM2) {
    double[] cm = heights.orElse(new double[3]);
    double age = model.ageAt(cm[1]);
    int up = day;
    while (up > 0 && thermal[day] - thermal[up] < age) {
      up--;
    }
    return seen(day, up, cm, perM2);
  }

  private List<ScoutedCell> seen(int day, int competesFrom, double[] heights, double perM2) {
    ScoutedCell whole = new ScoutedCell(day, competesFrom, 0, perM2, 1);
    List<ScoutedCell> parts =
        heights[0] == heights[2]
            ? List.of(whole)
            : List.of(whole.part(0), whole.part(1), whole.part(2));
    parts.forEach(c -> sized(c, day, model.ageAt(heights[c.group < 0 ? 1 : c.group])));
    return parts;
  }

  /** Short, middle and tall, cm; never above the greatest height of the weed. */
  private double[] heights(ScoutedHeight seen, int day) {
    double[] out = {seen.lowCm(), seen.medianCm(), seen.highCm()};
    if (!seen.isRange()) {
      double[] modelled = percentiles(day);
      double half = modelled[1];
      out[0] *= half > 0 ? modelled[0] / half : 1;
      out[2] *= half > 0 ? Math.min(MOST_OF_MEDIAN, modelled[2] / half) : 1;
    }
    for (int g = 0; g < out.length; g++) {
      out[g] = Math.min(out[g], model.maxCm());
    }
    return out;
  }

  /** Heights of the modelled plants: a tenth, half, nine tenths are no taller; 0 for none. */
  private double[] percentiles(int day) {
    List<ScoutedCell> byHeight = new ArrayList<>(cells);
    byHeight.removeIf(c -> !(standing(c, day) > 0));
    byHeight.sort(Comparator.comparingDouble(c -> age(c, day)));
    double all = byHeight.stream().mapToDouble(c -> standing(c, day)).sum();
    double[] shares = {LOW, 0.5, HIGH};
    double[] out = new double[shares.length];
    for (int g = 0; g < shares.length; g++) {
      double sum = 0;
      for (ScoutedCell c : byHeight) {
        sum += standing(c, day);
        out[g] = model.heightCm(age(c, day));
        if (sum >= shares[g] * all * (1 - 1e-12)) {
          break;
        }
      }
    }
    return out;
  }

  private CohortSet set(int[] days) {
    return new CohortSet(
        weed,
        cells.stream().mapToInt(c -> c.emergedOn).toArray(),
        cells.stream().mapToDouble(c -> c.perM2).toArray(),
        cells.stream().mapToDouble(c -> c.tillageSurvival).toArray(),
        thermal,
        new Seen(cells, days));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                ScoutedCohorts.class,
                "scouted sizes",
                "from that day on short, middle and tall plants of the heights seen; one height is the median, short and tall by the model's spread, tall within a bound",
                "default")
            .with("short", ScoutedCell.SHARES[0], "of the plants")
            .with("middle", ScoutedCell.SHARES[1], "of the plants")
            .with("tall", ScoutedCell.SHARES[2], "of the plants")
            .with("short up to the percentile", LOW, "")
            .with("tall from", HIGH, "")
            .with("tall at most", MOST_OF_MEDIAN, "of the median")
            .given("scouting.csv"),
        ModelCard.of(
                ModelSection.WEEDS,
                ScoutedCohorts.class,
                "scouted count",
                "from that day on so many plants in the place of all that were up; what comes up later stays the model's",
                "definition")
            .given("scouting.csv; plants/m²"));
  }
}
