package org.swathbook.catalog;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;

/**
 * A product as it is poured: a generic description, never a brand.
 *
 * @param formulation two-letter international formulation code
 * @param spoken the unit in which its rate is spoken, amount 1
 * @param step the practical step in which a rate is set
 * @param order its label's own place in filling a tank; empty where the label gives none, or nobody
 *     has written it down
 * @param protection what people wear who handle it; unknown when nobody stated it
 * @param source of what it contains
 * @param sources by path, of the other values, {@code package}
 */
public record Product(
    ProductId id,
    String name,
    List<Content> contents,
    String formulation,
    Rate spoken,
    Rate step,
    Optional<Quantity> packageSize,
    Optional<Label> label,
    Optional<PouringOrder> order,
    Stated<Protection> protection,
    String note,
    Source source,
    Map<String, Source> sources) {

  /** The label that was read, and when. */
  public record Label(String id, LocalDate reviewed) {}

  /** One active in a product. */
  public record Content(IngredientId ingredient, Concentration concentration) {}

  public Product {
    contents = List.copyOf(contents);
    sources = Ordered.map(sources);
  }

  public boolean isSingle() {
    return contents.size() == 1;
  }

  public Optional<Content> find(IngredientId ingredient) {
    return contents.stream().filter(c -> c.ingredient().equals(ingredient)).findFirst();
  }
}
