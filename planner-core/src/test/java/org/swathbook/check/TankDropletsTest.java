package org.swathbook.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.rules.ActiveUse;

/** Over soybean, from the starter catalog. */
class TankDropletsTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  private static TankDroplets tank(String... actives) {
    return TankDroplets.of(Arrays.stream(actives).map(a -> over(STARTER, a)).toList());
  }

  private static ActiveUse over(Catalog catalog, String name) {
    Ingredient active = catalog.findIngredient(name).orElseThrow();
    Product product = catalog.singles(active.id()).get(0);
    Optional<Use> use =
        active.uses().stream()
            .filter(u -> u.isFor(CropId.of("soybean")) && u.isIn(Position.Phase.IN_CROP))
            .findFirst();
    Dose dose = Doses.ofIngredient(active, product, Rate.lbPerAcre(0.1, active.rateBasis()));
    return new ActiveUse(dose, dose.actives().get(0), use);
  }

  @Test
  void theCoarserOfTheFineEndsAndTheFinerOfTheCoarseOnes() {
    assertThat(tank("2,4-D choline", "glyphosate").words()).contains("coarse to ultra coarse");
    assertThat(tank("glufosinate-ammonium", "2,4-D choline").words()).contains("coarse");
  }

  @Test
  void nothingInCommonIsNoRange() {
    assertThat(tank("dicamba", "glufosinate-ammonium").words()).isEmpty();
  }

  @Test
  void whatIsNotStatedIsNamed(@TempDir Path folder) throws IOException {
    Catalog silent = withoutDroplets(folder, "glyphosate");
    TankDroplets tank =
        TankDroplets.of(
            List.of(
                over(silent, "glyphosate"),
                over(silent, "2,4-D choline"),
                over(silent, "glyphosate")));
    assertThat(tank.unknown()).containsExactly("glyphosate");
    assertThat(tank.words()).contains("coarse to ultra coarse");
  }

  /** The starter catalog with an ingredient that says nothing of droplets. */
  private static Catalog withoutDroplets(Path folder, String id) throws IOException {
    String file = "ingredients/" + id + ".yaml";
    try (InputStream in =
        CatalogLoader.class.getResourceAsStream("/org/swathbook/catalog/starter/" + file)) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), UTF_8);
      Files.createDirectories(folder.resolve("ingredients"));
      Files.writeString(folder.resolve(file), text.replaceAll("(?m)^ *droplets: .*\n", ""));
    }
    return new CatalogLoader().load(true, Optional.of(folder));
  }
}
