package org.swathbook.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Everything known, by id; immutable. Listings are in the order of their ids. */
public final class Catalog {

  private record Key(WeedId weed, IngredientId ingredient, Response.Timing timing) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key o
          && weed.equals(o.weed)
          && ingredient.equals(o.ingredient)
          && timing == o.timing;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * weed.hashCode() + ingredient.hashCode()) + timing.hashCode();
    }
  }

  private final SortedMap<IngredientId, Ingredient> ingredients = new TreeMap<>();
  private final SortedMap<ProductId, Product> products = new TreeMap<>();
  private final SortedMap<WeedId, Weed> weeds = new TreeMap<>();
  private final SortedMap<CropId, Crop> crops = new TreeMap<>();
  private final Map<IngredientId, List<Product>> singles = new TreeMap<>();
  private final Map<String, List<Ingredient>> byCapGroup = new TreeMap<>();
  private final Map<Key, Response> responses = new LinkedHashMap<>();
  private final List<Interaction> interactions;
  private final Map<String, Ingredient> ingredientsBySpelling = new TreeMap<>();
  private final Map<String, Weed> weedsBySpelling = new TreeMap<>();
  private final Map<String, Crop> cropsBySpelling = new TreeMap<>();

  public Catalog(
      Collection<Ingredient> ingredients,
      Collection<Product> products,
      Collection<Weed> weeds,
      Collection<Crop> crops,
      Collection<Response> responses,
      List<Interaction> interactions) {
    ingredients.forEach(
        i -> {
          this.ingredients.put(i.id(), i);
          i.aliases().forEach(a -> ingredientsBySpelling.put(Slug.of(a), i));
        });
    ingredients.forEach(i -> ingredientsBySpelling.put(i.id().value(), i));
    products.forEach(p -> this.products.put(p.id(), p));
    weeds.forEach(
        w -> {
          this.weeds.put(w.id(), w);
          w.aliases().forEach(a -> weedsBySpelling.put(Slug.of(a), w));
          weedsBySpelling.put(Slug.of(w.name()), w);
          weedsBySpelling.put(Slug.of(w.id().value()), w);
        });
    crops.forEach(
        c -> {
          this.crops.put(c.id(), c);
          c.aliases().forEach(a -> cropsBySpelling.put(Slug.of(a), c));
          cropsBySpelling.put(c.id().value(), c);
        });
    responses.forEach(r -> this.responses.put(new Key(r.weed(), r.ingredient(), r.timing()), r));
    this.interactions = List.copyOf(interactions);
    for (Product p : this.products.values()) {
      if (p.isSingle()) {
        singles.computeIfAbsent(p.contents().get(0).ingredient(), i -> new ArrayList<>()).add(p);
      }
    }
    for (Ingredient i : this.ingredients.values()) {
      byCapGroup.computeIfAbsent(i.capGroup(), g -> new ArrayList<>()).add(i);
    }
  }

  public Collection<Ingredient> ingredients() {
    return Collections.unmodifiableCollection(ingredients.values());
  }

  public Collection<Product> products() {
    return Collections.unmodifiableCollection(products.values());
  }

  public Collection<Weed> weeds() {
    return Collections.unmodifiableCollection(weeds.values());
  }

  public Collection<Crop> crops() {
    return Collections.unmodifiableCollection(crops.values());
  }

  public Collection<Response> responses() {
    return Collections.unmodifiableCollection(responses.values());
  }

  public List<Interaction> interactions() {
    return interactions;
  }

  /** The ingredient of this id; an error when there is none, since ids are checked on loading. */
  public Ingredient ingredient(IngredientId id) {
    Ingredient found = ingredients.get(id);
    if (found == null) {
      throw new IllegalArgumentException("no ingredient " + id);
    }
    return found;
  }

  public Product product(ProductId id) {
    Product found = products.get(id);
    if (found == null) {
      throw new IllegalArgumentException("no product " + id);
    }
    return found;
  }

  public Weed weed(WeedId id) {
    Weed found = weeds.get(id);
    if (found == null) {
      throw new IllegalArgumentException("no weed " + id);
    }
    return found;
  }

  public Crop crop(CropId id) {
    Crop found = crops.get(id);
    if (found == null) {
      throw new IllegalArgumentException("no crop " + id);
    }
    return found;
  }

  /** By any spelling that slugs alike, or an alias. */
  public Optional<Ingredient> findIngredient(String typed) {
    return Optional.ofNullable(ingredientsBySpelling.get(Slug.of(typed)));
  }

  public Optional<Product> findProduct(String typed) {
    String slug = Slug.of(typed);
    return slug.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(products.get(new ProductId(slug)));
  }

  /** By EPPO code, common name or alias. */
  public Optional<Weed> findWeed(String typed) {
    return Optional.ofNullable(weedsBySpelling.get(Slug.of(typed)));
  }

  public Optional<Crop> findCrop(String typed) {
    return Optional.ofNullable(cropsBySpelling.get(Slug.of(typed)));
  }

  /** All forms of a parent active whose caps count together, in the order of their ids. */
  public List<Ingredient> ofCapGroup(String capGroup) {
    return Collections.unmodifiableList(byCapGroup.getOrDefault(capGroup, List.of()));
  }

  /** Products that hold this active and no other, in the order of their ids. */
  public List<Product> singles(IngredientId ingredient) {
    return Collections.unmodifiableList(singles.getOrDefault(ingredient, List.of()));
  }

  /** What is known of a pair; unknown when nothing is, never 0 in silence. */
  public Stated<Response> response(WeedId weed, IngredientId ingredient, Response.Timing timing) {
    Response r = responses.get(new Key(weed, ingredient, timing));
    return r != null
        ? Stated.value(r, r.source())
        : Stated.unknown("control of " + weed + " by " + ingredient + " (" + timing + ")");
  }
}
