package org.swathbook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.swathbook.catalog.Site;

class BiotypesProperties {

  private static List<Resistance> listed(List<Double> shares) {
    List<Resistance> out = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      out.add(new Resistance(Optional.of(new Site(i + 1)), Optional.empty(), shares.get(i), ""));
    }
    return out;
  }

  @Property
  void sharesAreThoseOfAllPlants(
      @ForAll @Size(max = 6) List<@DoubleRange(min = 0, max = 1) Double> shares) {
    List<Biotype> all = Biotypes.withSusceptibleRest(Biotypes.independent(listed(shares)));
    assertThat(all.stream().mapToDouble(Biotype::share).sum()).isCloseTo(1, within(1e-9));
    assertThat(all).allMatch(b -> b.share() > 0);
  }

  @Property
  void everyListedShareIsFoundAgainInTheBiotypes(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 1) Double> shares) {
    List<Resistance> listed = listed(shares);
    List<Biotype> all = Biotypes.withSusceptibleRest(Biotypes.independent(listed));
    for (Resistance r : listed) {
      double found =
          all.stream().filter(b -> b.resists().contains(r)).mapToDouble(Biotype::share).sum();
      assertThat(found).isCloseTo(r.share(), within(1e-9));
    }
  }
}
