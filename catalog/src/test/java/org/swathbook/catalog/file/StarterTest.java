package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;

/** The catalog that comes with the program: it loads, and it says where each value is from. */
class StarterTest {
  private final Catalog starter = new CatalogLoader().starter();

  @Test
  void itHoldsWhatAPlanNeeds() {
    assertThat(starter.ingredients()).isNotEmpty();
    assertThat(starter.products()).isNotEmpty();
    assertThat(starter.weeds()).isNotEmpty();
    assertThat(starter.crops()).isNotEmpty();
    assertThat(starter.responses()).isNotEmpty();
    assertThat(starter.interactions()).isNotEmpty();
  }

  @Test
  void everyStatedValueHasASource() {
    List<Stated<?>> all = new ArrayList<>();
    for (Ingredient i : starter.ingredients()) {
      all.addAll(List.of(i.residual(), i.halfLifeDays(), i.foliar()));
      all.addAll(i.rotation().values());
      for (Use u : i.uses()) {
        all.addAll(
            List.of(
                u.traits(),
                u.timing(),
                u.cropHeightCm(),
                u.rates(),
                u.plantingInterval(),
                u.soilPh(),
                u.caps(),
                u.applications(),
                u.repeatDays(),
                u.weedHeights()));
        all.addAll(u.harvest().values());
        all.addAll(
            List.of(
                u.terms().carrierMinGalPerAcre(),
                u.terms().reentryHours(),
                u.terms().restrictedUse(),
                u.terms().setbacks(),
                u.terms().tank().partners(),
                u.terms().tank().droplets(),
                u.terms().tank().cleanOut(),
                u.terms().day().windMph(),
                u.terms().day().inversionRefused()));
      }
    }
    List<Source> sources = all.stream().flatMap(s -> s.findSource().stream()).toList();
    assertThat(sources).hasSizeGreaterThan(1000).allMatch(StarterTest::isReal);
    assertThat(starter.crops())
        .allMatch(c -> c.sources().values().stream().allMatch(StarterTest::isReal));
    assertThat(starter.crops()).allMatch(c -> isReal(c.canopy().source()));
    assertThat(starter.weeds())
        .allMatch(w -> isReal(w.emergence().source()) && isReal(w.height().source()))
        .allMatch(w -> isReal(w.seed().source()))
        .allMatch(w -> w.competition().values().stream().allMatch(c -> isReal(c.source())));
    assertThat(starter.responses()).allMatch(r -> isReal(r.source()));
    assertThat(starter.interactions()).allMatch(i -> isReal(i.source()));
    assertThat(starter.products()).allMatch(p -> isReal(p.source()));
  }

  private static boolean isReal(Source s) {
    return !s.equals(Source.NOT_GIVEN) && !s.text().isBlank();
  }

  @Test
  void everyWeedAnswersToSomethingAndEveryCropEmerges() {
    assertThat(starter.weeds())
        .allSatisfy(
            w ->
                assertThat(starter.responses().stream().filter(r -> r.weed().equals(w.id())))
                    .as(w.name())
                    .isNotEmpty());
    for (Crop c : starter.crops()) {
      assertThat(c.findStage("emergence")).as(c.name()).isPresent();
    }
  }

  @Test
  void itIsTheSameWhateverTheLocaleOfTheMachine() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      Catalog turkish = new CatalogLoader().load(true, Optional.empty());
      assertThat(List.copyOf(turkish.ingredients())).isEqualTo(List.copyOf(starter.ingredients()));
      assertThat(List.copyOf(turkish.responses())).isEqualTo(List.copyOf(starter.responses()));
    } finally {
      Locale.setDefault(before);
    }
  }
}
