package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapNode;
import org.swathbook.source.Nearest;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;

/** Names of catalog entries as people type them; an unknown one names the nearest known. */
final class Names {
  private final Catalog catalog;
  private final Set<String> rotationCrops = new TreeSet<>();

  Names(Catalog catalog) {
    this.catalog = catalog;
    for (Ingredient i : catalog.ingredients()) {
      i.rotation().keySet().forEach(c -> rotationCrops.add(c.value()));
    }
  }

  Catalog catalog() {
    return catalog;
  }

  /** A crop with its stages and all. */
  Crop crop(String text) {
    return catalog
        .findCrop(text)
        .orElseThrow(() -> unknown(text, "crop of the catalog", cropWords()));
  }

  /** A crop that grows before or after: one of the catalog, or one that some interval names. */
  CropId anyCrop(String text) {
    Optional<CropId> known = catalog.findCrop(text).map(Crop::id);
    if (known.isPresent()) {
      return known.get();
    }
    Set<String> all = new TreeSet<>(cropWords());
    all.addAll(rotationCrops);
    String slug = Slug.of(text);
    if (!rotationCrops.contains(slug)) {
      throw unknown(text, "crop of the catalog", all);
    }
    return new CropId(slug);
  }

  Weed weed(String text) {
    return catalog
        .findWeed(text)
        .orElseThrow(
            () ->
                unknown(
                    text,
                    "weed of the catalog",
                    words(
                        catalog.weeds(),
                        w -> {
                          List<String> all = new ArrayList<>(w.aliases());
                          all.add(w.id().value());
                          all.add(w.name());
                          return all;
                        })));
  }

  /** A weed that is the key of an entry; empty with a problem where there is none of this name. */
  Optional<Weed> weedOfKey(MapNode.Entry entry, Problems problems) {
    try {
      return Optional.of(weed(entry.key()));
    } catch (MeasureException e) {
      problems.add(entry.keyMark(), e, "AMAPA");
      return Optional.empty();
    }
  }

  Ingredient ingredient(String text) {
    return catalog
        .findIngredient(text)
        .orElseThrow(() -> unknown(text, "ingredient of the catalog", ingredientWords()));
  }

  /** Traits of a cell: {@code none} by itself, or some of those known. */
  Set<Trait> traits(String text) {
    Set<Trait> out = new LinkedHashSet<>();
    String[] parts = text.split(";");
    for (String part : parts) {
      String slug = Slug.of(part);
      if (slug.equals("none") && parts.length > 1) {
        throw new MeasureException(
            "'" + text + "' says none and a trait; write none by itself, or the traits alone");
      }
      if (!slug.equals("none") && !slug.isEmpty()) {
        if (!Trait.NAMES.contains(slug)) {
          throw unknown(part.strip(), "trait that a use needs", Trait.NAMES);
        }
        out.add(new Trait(slug));
      }
    }
    return out;
  }

  Set<String> ingredientWords() {
    return words(
        catalog.ingredients(),
        i -> {
          List<String> all = new ArrayList<>(i.aliases());
          all.add(i.name());
          return all;
        });
  }

  Set<String> productWords() {
    return words(catalog.products(), p -> List.of(p.id().value()));
  }

  private Set<String> cropWords() {
    return words(
        catalog.crops(),
        c -> {
          List<String> all = new ArrayList<>(c.aliases());
          all.add(c.id().value());
          return all;
        });
  }

  private static <T> Set<String> words(
      Collection<T> entries, Function<T, Collection<String>> spellings) {
    Set<String> words = new TreeSet<>();
    entries.forEach(e -> words.addAll(spellings.apply(e)));
    return words;
  }

  /** One of some words, typed in any spelling that slugs alike. */
  static <T> TextParser<T> word(Map<String, T> words, String kind) {
    return text -> {
      T found = words.get(Slug.of(text));
      if (found == null) {
        throw unknown(text, kind, words.keySet());
      }
      return found;
    };
  }

  static MeasureException unknown(String text, String kind, Collection<String> known) {
    return new MeasureException("'" + text + "' is no " + kind + "; " + Nearest.hint(text, known));
  }
}
