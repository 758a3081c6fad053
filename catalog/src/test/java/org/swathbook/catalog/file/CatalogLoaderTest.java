package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.WeedId;
import org.swathbook.source.Problem;
import org.swathbook.source.ProblemsException;

class CatalogLoaderTest {
  private final CatalogLoader loader = new CatalogLoader();

  @TempDir private Path book;

  private Path folder() {
    return book.resolve("catalog");
  }

  private void write(String path, String text) throws IOException {
    Path file = folder().resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void writeSmall() throws IOException {
    for (String path : SmallCatalog.PATHS) {
      write(path, new SmallCatalog().text(path));
    }
  }

  private List<String> problems(boolean withStarter) {
    ProblemsException e =
        catchThrowableOfType(
            ProblemsException.class, () -> loader.load(withStarter, Optional.of(folder())));
    return e.problems().stream().map(Problem::toString).toList();
  }

  @Test
  void aFolderAloneIsACatalog() throws IOException {
    writeSmall();
    Catalog catalog = loader.load(false, Optional.of(folder()));
    assertThat(catalog.ingredients()).hasSize(2);
    assertThat(catalog.responses()).hasSize(2);
  }

  @Test
  void nothingAtAllIsAnEmptyCatalog() {
    assertThat(loader.load(false, Optional.empty()).ingredients()).isEmpty();
  }

  @Test
  void aFileOfTheFolderReplacesTheStartersWhole() throws IOException {
    Catalog starter = loader.starter();
    write("ingredients/metribuzin.yaml", new SmallCatalog().text("ingredients/metribuzin.yaml"));
    Catalog both = loader.load(true, Optional.of(folder()));
    IngredientId id = new IngredientId("metribuzin");
    assertThat(both.ingredient(id).uses()).hasSize(2);
    assertThat(both.ingredient(id).rotationTo(new CropId("wheat")).isUnknown()).isTrue();
    assertThat(starter.ingredient(id)).isNotEqualTo(both.ingredient(id));
    assertThat(both.ingredients()).hasSameSizeAs(starter.ingredients());
    IngredientId other = new IngredientId("glyphosate");
    assertThat(both.ingredient(other)).isEqualTo(starter.ingredient(other));
  }

  @Test
  void aRowReplacesItsKeyAndTheListOfPairsIsReplacedWhole() throws IOException {
    Catalog starter = loader.starter();
    Response one = starter.responses().iterator().next();
    write(
        "responses.csv",
        "weed,ingredient,timing,emaxPct,lowPct,highPct,controlHeightIn,source,confidence\n"
            + String.join(
                ",",
                one.weed().value(),
                one.ingredient().value(),
                one.timing().name(),
                "13,12,14,,ours,low\n"));
    write("interactions.yaml", new SmallCatalog().text("interactions.yaml"));
    Catalog both = loader.load(true, Optional.of(folder()));
    assertThat(both.response(one.weed(), one.ingredient(), one.timing()).find().orElseThrow())
        .satisfies(
            r -> {
              assertThat(r.emaxPct()).isEqualTo(13);
              assertThat(r.source().text()).isEqualTo("ours");
            });
    assertThat(both.responses()).hasSameSizeAs(starter.responses());
    assertThat(both.interactions()).hasSize(1);
  }

  @Test
  void newEntriesMayNameThoseOfTheStarter() throws IOException {
    write(
        "products/my-mix.yaml",
        """
        format: swathbook.product/1
        name: my mix
        contains:
          - {ingredient: glyphosate, concentration: 2 lb ae/gal}
          - {ingredient: S-metolachlor, concentration: 2.5 lb/gal}
        formulation: SE
        unit: pt/acre
        """);
    Product product = loader.load(true, Optional.of(folder())).findProduct("My Mix").orElseThrow();
    assertThat(product.isSingle()).isFalse();
  }

  @Test
  void problemsNameFilesAsTheBookDoes() throws IOException {
    write("weeds/amapa.yaml", "eppo: [\n");
    assertThat(problems(true))
        .singleElement()
        .asString()
        .startsWith("catalog/weeds/amapa.yaml:1:7: a bracket is not closed");
  }

  @Test
  void aFolderThatTakesAStageAwayShowsWhatItBreaksInTheStarter() throws IOException {
    write("crops/soybean.yaml", new SmallCatalog().text("crops/soybean.yaml"));
    assertThat(problems(true))
        .anyMatch(p -> p.startsWith("starter/ingredients/") && p.contains("is neither a stage of"));
  }

  @Test
  void whatDoesNotBelongInTheFolderIsTold() throws IOException {
    writeSmall();
    write("ingredient/x.yaml", "");
    write("response.csv", "");
    write("README.md", "a remark");
    write("weeds/.hidden", "");
    write("weeds/AMATU.yaml", "");
    write("weeds/setfa.yml", "");
    write("weeds/---.yaml", "");
    assertThat(problems(false))
        .containsExactly(
            "catalog/ingredient:1:1: a catalog holds nothing of this name; did you mean"
                + " 'ingredients'?",
            "catalog/response.csv:1:1: a catalog holds nothing of this name; did you mean"
                + " 'responses.csv'?",
            "catalog/weeds/---.yaml:1:1: the name of the file is no id; name it after what it"
                + " holds",
            "catalog/weeds/AMATU.yaml:1:1: the name of the file is no id; name it amatu.yaml",
            "catalog/weeds/setfa.yml:1:1: this is no entry of the catalog; keep one entry a file,"
                + " with a name that ends in .yaml");
  }

  @Test
  void aFolderThatIsNotThereIsAProblem() {
    assertThat(problems(true))
        .singleElement()
        .asString()
        .startsWith("catalog:1:1: there is no such folder");
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
    writeSmall();
    Path outside = Files.writeString(book.resolve("secret.yaml"), "eppo: SETFA");
    try {
      Files.createSymbolicLink(folder().resolve("weeds/setfa.yaml"), outside);
    } catch (IOException | UnsupportedOperationException e) {
      return; // No links on this platform, so nothing to refuse.
    }
    assertThat(problems(false))
        .containsExactly(
            "catalog/weeds/setfa.yaml:1:1: the link leads out of the folder; put the file itself"
                + " here");
  }

  @Test
  void aCatalogIsMadeOnceForItsBytesAndAnewWhenTheyChange() throws IOException {
    writeSmall();
    Catalog first = loader.load(false, Optional.of(folder()));
    assertThat(loader.load(false, Optional.of(folder()))).isSameAs(first);
    write(
        "responses.csv",
        new SmallCatalog().text("responses.csv").replace("pre,80,70", "pre,81,70"));
    Catalog second = loader.load(false, Optional.of(folder()));
    assertThat(second).isNotSameAs(first);
    assertThat(
            second
                .response(new WeedId("AMAPA"), new IngredientId("metribuzin"), Response.Timing.PRE)
                .find()
                .orElseThrow()
                .emaxPct())
        .isEqualTo(81);
  }
}
