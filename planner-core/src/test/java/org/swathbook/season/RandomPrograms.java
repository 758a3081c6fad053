package org.swathbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/** Programs drawn from a seed: any actives at any rates, sensible or not. */
final class RandomPrograms {
  static final String[] FIELDS = {"ND-1", "ND-2", "QH-1", "QH-3"};

  /** Each active with a rate near the top of its label. */
  private static final List<Line> HIGH =
      List.of(
          new Line("S-metolachlor", 1.9),
          new Line("pyroxasulfone", 0.16),
          new Line("flumioxazin", 0.096),
          new Line("metribuzin", 0.5),
          new Line("atrazine", 2.0),
          new Line("mesotrione", 0.188),
          new Line("glyphosate", 1.13),
          new Line("glufosinate-ammonium", 0.66),
          new Line("2,4-D choline", 0.95),
          new Line("clethodim", 0.125));

  private RandomPrograms() {}

  /** A dose of the mix written down before it becomes one. */
  record Line(String active, double lb) {
    Dose dose() {
      return Sprays.dose(active, lb);
    }
  }

  /** A pass written down: days from planting and what is in the tank. */
  record Plan(int day, List<Line> lines) {
    Mix mix() {
      return Mix.of(lines.stream().map(Line::dose).toList());
    }
  }

  static String field(Random random) {
    return FIELDS[random.nextInt(FIELDS.length)];
  }

  static List<Plan> plans(Random random, int most) {
    List<Plan> out = new ArrayList<>();
    int n = random.nextInt(most + 1);
    for (int i = 0; i < n; i++) {
      out.add(plan(random));
    }
    out.sort((a, b) -> Integer.compare(a.day(), b.day()));
    return out;
  }

  static Plan plan(Random random) {
    int day = random.nextBoolean() ? random.nextInt(35) - 30 : random.nextInt(65);
    List<Line> actives = new ArrayList<>(HIGH);
    List<Line> lines = new ArrayList<>();
    int n = 1 + random.nextInt(4);
    for (int i = 0; i < n; i++) {
      Line high = actives.remove(random.nextInt(actives.size()));
      lines.add(new Line(high.active(), high.lb() * (0.2 + random.nextDouble())));
    }
    return new Plan(day, lines);
  }

  static List<PreparedPass> prepare(Kernel kernel, List<Plan> plans) {
    LocalDate planted = kernel.traces().field().plantDate();
    return plans.stream().map(p -> kernel.prepare(p.mix(), planted.plusDays(p.day()))).toList();
  }

  static Score score(Kernel kernel, List<Plan> plans) {
    return kernel.score(prepare(kernel, plans));
  }
}
