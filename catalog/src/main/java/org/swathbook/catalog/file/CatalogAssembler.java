package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Makes one catalog of the files that count. Kinds are read in the order in which they name each
 * other: crops, weeds, ingredients, products, then the tables of how they meet.
 */
final class CatalogAssembler {
  private final Problems problems = new Problems();
  private final SortedMap<String, CatalogFile> files = new TreeMap<>();
  private final List<CatalogFile> tables = new ArrayList<>();

  /** A file with its keys; none when it could not be read as YAML. */
  private record Parsed(CatalogFile file, Optional<MapNode> keys) {}

  /**
   * The catalog of some files; of two with the same path the later counts, except that tables of
   * responses lie over each other row by row.
   *
   * @param before problems found while the files were gathered
   * @throws ProblemsException with all that is wrong
   */
  static Catalog assemble(List<CatalogFile> files, Problems before) {
    CatalogAssembler assembler = new CatalogAssembler();
    assembler.problems.addAll(before.sorted());
    return assembler.catalog(files);
  }

  private Catalog catalog(List<CatalogFile> all) {
    for (CatalogFile f : all) {
      if (f.path().equals(CatalogPaths.RESPONSES)) {
        tables.add(f);
      } else {
        files.put(f.path(), f);
      }
    }
    List<Parsed> cropFiles = parse(CatalogPaths.CROPS);
    List<Parsed> weedFiles = parse(CatalogPaths.WEEDS);
    List<Parsed> ingredientFiles = parse(CatalogPaths.INGREDIENTS);
    Names<CropId> cropNames = names("crop", cropFiles, CropId::of);
    Names<WeedId> weedNames = names("weed", weedFiles, WeedId::of);
    Names<IngredientId> ingredientNames = names("ingredient", ingredientFiles, IngredientId::of);

    Map<CropId, Crop> crops = read(cropFiles, CropReader::read, Crop::id);
    Map<WeedId, Weed> weeds = read(weedFiles, new WeedReader(cropNames)::read, Weed::id);
    Map<IngredientId, Ingredient> ingredients =
        read(
            ingredientFiles,
            new IngredientReader(ingredientNames, cropNames, weedNames, crops)::read,
            Ingredient::id);
    Map<ProductId, Product> products =
        read(
            parse(CatalogPaths.PRODUCTS),
            new ProductReader(ingredientNames, ingredients)::read,
            Product::id);
    Map<ResponseReader.Key, Response> responses = new LinkedHashMap<>();
    ResponseReader responseReader = new ResponseReader(weedNames, ingredientNames, problems);
    tables.forEach(t -> responses.putAll(responseReader.read(t)));
    List<Interaction> interactions = new ArrayList<>();
    InteractionReader interactionReader =
        new InteractionReader(weedNames, ingredientNames, ingredients, problems);
    CatalogFile list = files.get(CatalogPaths.INTERACTIONS);
    if (list != null) {
      parse(list)
          .keys()
          .ifPresent(
              k -> interactions.addAll(interactionReader.read(list, new MapReader(k, problems))));
    }
    problems.throwIfAny();
    return new Catalog(
        ingredients.values(),
        products.values(),
        weeds.values(),
        crops.values(),
        responses.values(),
        interactions);
  }

  private List<Parsed> parse(String folder) {
    return files.values().stream()
        .filter(f -> f.path().startsWith(folder + "/"))
        .map(this::parse)
        .toList();
  }

  private Parsed parse(CatalogFile f) {
    try {
      return new Parsed(f, Optional.of(f.keys()));
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return new Parsed(f, Optional.empty());
    }
  }

  /** The names come first, from all files, since any may be named before it is read. */
  private <I extends Comparable<I>> Names<I> names(
      String kind, List<Parsed> entries, Function<String, I> id) {
    Names<I> names = new Names<>(kind);
    entries.forEach(e -> names.add(e.file().stem(), id.apply(e.file().stem())));
    for (Parsed e : entries) {
      I own = id.apply(e.file().stem());
      e.keys()
          .ifPresent(
              keys -> {
                keys.find("name").ifPresent(n -> names.addAliases(n, own, problems));
                keys.find("aliases").ifPresent(n -> names.addAliases(n, own, problems));
              });
    }
    return names;
  }

  private <I, T> Map<I, T> read(
      List<Parsed> entries,
      BiFunction<CatalogFile, MapReader, Optional<T>> reader,
      Function<T, I> id) {
    Map<I, T> out = new LinkedHashMap<>();
    for (Parsed e : entries) {
      e.keys()
          .flatMap(k -> reader.apply(e.file(), new MapReader(k, problems)))
          .ifPresent(t -> out.put(id.apply(t), t));
    }
    return out;
  }
}
