package org.swathbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A product without a price cannot be planned with; a price without a product is a typing error.
 */
class DemoPricesTest {
  private static final Path PRICES = Path.of("..", "demo-data", "prices.csv");
  private static final Path PRODUCTS =
      Path.of("../catalog/src/main/resources/org/swathbook/catalog/starter/products");

  @Test
  void everyProductOfTheStarterCatalogHasOnePriceAndEveryPriceAProduct() throws IOException {
    List<String> priced =
        Files.readAllLines(PRICES).stream().skip(1).map(row -> row.split(",", -1)[0]).toList();

    assertThat(priced).isNotEmpty().containsExactlyInAnyOrderElementsOf(productIds());
  }

  private static List<String> productIds() throws IOException {
    try (Stream<Path> files = Files.list(PRODUCTS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml"))
          .map(name -> name.substring(0, name.length() - ".yaml".length()))
          .sorted()
          .toList();
    }
  }
}
