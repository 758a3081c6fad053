package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.season.RandomPrograms.Line;
import org.swathbook.testing.Fixtures;

/** What passes alike do in the soil is found once, and is what each by itself would be told. */
class OwnSoilProperties {
  private static final List<String> LEAVES_ALONE = List.of("glufosinate-ammonium", "clethodim");

  @Property(tries = 100)
  void layersAndSitesAreThoseOfAPassAskedAboutAlone(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Kernel kernel = Kernels.of(field);
    List<Line> lines = RandomPrograms.plan(random).lines();
    LocalDate planted = kernel.traces().field().plantDate();
    LocalDate on = planted.plusDays(random.nextInt(60) - 30);
    Mix first = mix(lines, "");
    for (String partner : LEAVES_ALONE) {
      Mix other = mix(lines, partner);
      PreparedPass one = kernel.prepare(first, on);
      PreparedPass with = kernel.prepare(other, on);
      Kernel anew = Kernel.of(Fixtures.book(), kernel.traces());
      PreparedPass alone = anew.prepare(other, on);
      for (int w = 0; w < kernel.traces().weeds().size(); w++) {
        // Asked in this order, so that the second is told what was found of the first.
        PassLayers before = one.ownLayers(kernel, w);
        PassLayers told = with.ownLayers(kernel, w);
        PassLayers right = alone.ownLayers(anew, w);
        for (int y = 0; y < kernel.traces().years().size(); y++) {
          assertThat(told.in(y)).isEqualTo(right.in(y));
        }
        assertThat(told.effectiveSites()).isEqualTo(right.effectiveSites());
        assertThat(with.soilSites(kernel, w)).isEqualTo(alone.soilSites(anew, w));
        assertThat(before == told).isEqualTo(sameDays(one, with, kernel.traces().years().size()));
      }
    }
  }

  private static Mix mix(List<Line> lines, String partner) {
    List<Dose> doses = new ArrayList<>();
    for (Line l : lines) {
      if (!LEAVES_ALONE.contains(l.active())) {
        doses.add(l.dose());
      }
    }
    if (!partner.isEmpty()) {
      doses.add(Sprays.dose(partner, 0.4));
    }
    return Mix.of(doses);
  }

  /** A partner may close the window of a year. */
  private static boolean sameDays(PreparedPass a, PreparedPass b, int years) {
    for (int y = 0; y < years; y++) {
      if (a.day(y) != b.day(y)) {
        return false;
      }
    }
    return true;
  }
}
