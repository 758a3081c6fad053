package org.swathbook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Site;

class BiotypesTest {

  private static Resistance to(int site, double share) {
    return new Resistance(Optional.of(Site.of(site)), Optional.empty(), share, "");
  }

  private static String line(List<Biotype> biotypes) {
    return biotypes.stream()
        .map(
            b ->
                Math.round(b.share() * 1000) / 10.0
                    + " % "
                    + b.resists().stream()
                        .map(r -> r.site().orElseThrow().toString())
                        .collect(Collectors.joining("+")))
        .collect(Collectors.joining(", "));
  }

  @Test
  void independentResistancesMakeEveryCombination() {
    List<Biotype> all =
        Biotypes.withSusceptibleRest(Biotypes.independent(List.of(to(2, 0.6), to(9, 0.2))));
    assertThat(line(all)).isEqualTo("12.0 % 2+9, 48.0 % 2, 8.0 % 9, 32.0 % ");
  }

  @Test
  void aShareOfAllLeavesNobodyWithoutIt() {
    List<Biotype> all =
        Biotypes.withSusceptibleRest(Biotypes.independent(List.of(to(2, 1.0), to(9, 0.2))));
    assertThat(line(all)).isEqualTo("20.0 % 2+9, 80.0 % 2");
  }

  @Test
  void sitesThatGoTogetherAreOneBiotype() {
    List<Biotype> all =
        Biotypes.withSusceptibleRest(Biotypes.together(0.9, List.of(to(2, 0.9), to(9, 0.9))));
    assertThat(line(all)).isEqualTo("90.0 % 2+9, 10.0 % ");
  }

  @Test
  void nothingListedIsOneSusceptibleBiotype() {
    assertThat(Biotypes.withSusceptibleRest(List.of())).containsExactly(new Biotype(1, List.of()));
  }

  @Test
  void moreThanAllPlantsIsAnError() {
    List<Biotype> tooMuch =
        List.of(new Biotype(0.6, List.of(to(2, 0.6))), new Biotype(0.41, List.of(to(9, 0.41))));
    assertThatThrownBy(() -> Biotypes.withSusceptibleRest(tooMuch))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
