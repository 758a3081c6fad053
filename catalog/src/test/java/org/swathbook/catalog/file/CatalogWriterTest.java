package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Use;
import org.swathbook.source.ProblemsException;

class CatalogWriterTest {
  private final Catalog starter = new CatalogLoader().starter();

  /** As a starter it must hold a source for every value. */
  @Test
  void theStarterReadsBackTheSameWithEverySource() {
    Map<String, String> files = CatalogWriter.write(starter);
    Catalog read = WrittenFiles.read(files, true);
    WrittenFiles.assertSame(read, starter);
    assertThat(CatalogWriter.write(read)).isEqualTo(files);
  }

  @Test
  void aFolderOfItIsACatalogOfItsOwn(@TempDir Path folder) {
    Path made = folder.resolve("mine/catalog");
    CatalogWriter.write(starter, made, "catalog");
    WrittenFiles.assertSame(new CatalogLoader().load(false, Optional.of(made)), starter);
  }

  @Test
  void aFolderThatHoldsSomethingIsLeftAsItIs(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThatThrownBy(() -> CatalogWriter.write(starter, folder, "catalog"))
        .isInstanceOf(ProblemsException.class)
        .hasMessage("catalog:1:1: the folder is not empty; name a new folder, or empty this one");
    try (var left = Files.list(folder)) {
      assertThat(left).containsExactly(folder.resolve("notes.txt"));
    }
  }

  @Test
  void filesLookAsIfAPersonHadWrittenThem() {
    Map<String, String> files = CatalogWriter.write(new SmallCatalog().load());
    assertThat(files.keySet()).containsExactlyInAnyOrderElementsOf(SmallCatalog.PATHS);
    assertThat(files.get("ingredients/metribuzin.yaml"))
        .isEqualTo(
            """
            format: swathbook.ingredient/1
            name: metribuzin
            site: 5
            family: triazinone
            rateBasis: ai
            movement: xylem
            capGroup: metribuzin
            soil:
              residual: {at: 0.25 lb ai/acre, days: 30}
              residualHigh: {at: 0.5 lb ai/acre, days: 50}
              activatingRain: 0.5 in
              halfLife: 40 days
            foliar: none
            uses:
              - crop: soybean
                position: [preplant, pre]
                timing: {from: 30 days before planting, before: emergence}
                trait: none
                rate:
                  - {texture: coarse, organicMatter: "< 2 %", refused: yes}
                  - {texture: [medium, fine], rate: 0.25-0.5 lb ai/acre}
                plantingInterval: [{upTo: 0.25 lb ai/acre, days: 0}, {upTo: 0.5 lb ai/acre, days: 14, rain: 1 in}]
                soilPh: {before: 7.5}
                cap: {amount: 0.75 lb ai/acre, per: season}
                applications: 1
                repeat: none
                intervals: {grain: none, forage: 40 days, grazing: refused}
                tank: {partners: {only: [glyphosate]}}
                day: {wind: {max: 10 mph}}
              - {crop: soybean, position: [post], refusedUse: yes, note: burns soybean that is up}
            usesComplete: yes
            rotation: {corn: 4 months, soybean: none}
            reentry: 12 h
            restrictedUse: no
            tank: {partners: none, cleanOut: {rinse: triple-rinse, sensitive: [corn]}}
            day: {wind: {min: 3 mph, max: 15 mph}, inversion: refused}
            sources:
              - {for: [all], source: from memory}
              - {for: [soil], source: a handbook}
              - {for: [soil.halfLife], source: a paper}
              - {for: [uses.1], source: a label}
              - {for: [uses.1.cap], source: a letter}
            reviewed: 2026-11-01
            """);
  }

  @Test
  void whatNoFileCanSayIsNotWritten() {
    Catalog small = new SmallCatalog().load();
    Ingredient i = small.ingredient(new IngredientId("metribuzin"));
    Use use = i.uses().get(0);
    Use silent =
        new Use(
            use.crop(),
            use.positions(),
            use.formulations(),
            use.methods(),
            use.refused(),
            use.traits(),
            use.timing(),
            use.cropHeightCm(),
            use.rates(),
            use.weedRates(),
            use.incorporationRefused(),
            use.plantingInterval(),
            use.soilPh(),
            use.caps(),
            use.applications(),
            use.repeatDays(),
            use.harvest(),
            use.weedHeights(),
            use.registration(),
            TermsReader.unknown(),
            use.condition(),
            use.note());
    Ingredient open =
        new Ingredient(
            i.id(),
            i.name(),
            i.aliases(),
            i.site(),
            i.family(),
            i.rateBasis(),
            i.movement(),
            i.capGroup(),
            i.residual(),
            i.halfLifeDays(),
            List.of(silent),
            i.usesComplete(),
            i.rotation(),
            i.terms(),
            i.incorporation(),
            i.sources(),
            i.reviewed());
    Catalog catalog =
        new Catalog(List.of(open), List.of(), small.weeds(), small.crops(), List.of(), List.of());
    assertThatThrownBy(() -> CatalogWriter.write(catalog))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a use cannot leave open what its ingredient states: activity through leaves");
  }

  @Test
  void notesLabelsAndRangesAreKept() {
    Map<String, String> files = CatalogWriter.write(starter);
    assertThat(Objects.requireNonNull(files.get("products/glyphosate-4.5sl.yaml")))
        .contains("label: {id: DEMO-")
        .contains("\nnote: ");
    assertThat(Objects.requireNonNull(files.get("interactions.yaml"))).contains("loses: 27-75 %");
  }
}
