package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.YamlReader;

/**
 * Makes one catalog of the files that count. Kinds are read in the order in which they name each
 * other: crops, weeds, ingredients, products, then the tables of how they meet.
 */
final class CatalogAssembler {
  private final YamlReader yaml = new YamlReader();
  private final Problems problems = new Problems();
  private final SortedMap<String, CatalogFile> files = new TreeMap<>();
  private final List<CatalogFile> tables = new ArrayList<>();
  private final Names<CropId> cropNames = new Names<>("crop");
  private final Names<WeedId> weedNames = new Names<>("weed");
  private final Names<IngredientId> ingredientNames = new Names<>("ingredient");

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
    in(CatalogPaths.CROPS).forEach(f -> cropNames.add(f.stem(), CropId.of(f.stem())));
    in(CatalogPaths.WEEDS).forEach(f -> weedNames.add(f.stem(), WeedId.of(f.stem())));
    in(CatalogPaths.INGREDIENTS)
        .forEach(f -> ingredientNames.add(f.stem(), IngredientId.of(f.stem())));

    Map<CropId, Crop> crops = read(CatalogPaths.CROPS, CropReader::read, Crop::id);
    crops
        .values()
        .forEach(c -> names(cropNames, c.id(), c.name(), c.aliases(), CatalogPaths.CROPS, c.id()));
    Map<WeedId, Weed> weeds = read(CatalogPaths.WEEDS, new WeedReader(cropNames)::read, Weed::id);
    weeds
        .values()
        .forEach(
            w ->
                names(
                    weedNames,
                    w.id(),
                    w.name(),
                    w.aliases(),
                    CatalogPaths.WEEDS,
                    w.id().value().toLowerCase(Locale.ROOT)));
    Map<IngredientId, Ingredient> ingredients =
        read(
            CatalogPaths.INGREDIENTS,
            new IngredientReader(ingredientNames, cropNames, crops)::read,
            Ingredient::id);
    ingredients
        .values()
        .forEach(
            i ->
                names(
                    ingredientNames,
                    i.id(),
                    i.name(),
                    i.aliases(),
                    CatalogPaths.INGREDIENTS,
                    i.id()));
    Map<ProductId, Product> products =
        read(
            CatalogPaths.PRODUCTS,
            new ProductReader(ingredientNames, ingredients)::read,
            Product::id);
    Map<ResponseReader.Key, Response> responses = new LinkedHashMap<>();
    ResponseReader responseReader = new ResponseReader(weedNames, ingredientNames, problems);
    tables.forEach(t -> responses.putAll(responseReader.read(t)));
    List<Interaction> interactions =
        Optional.ofNullable(files.get(CatalogPaths.INTERACTIONS))
            .flatMap(
                f ->
                    map(f)
                        .map(
                            m ->
                                new InteractionReader(
                                        weedNames, ingredientNames, ingredients, problems)
                                    .read(f, m)))
            .orElse(List.of());
    problems.throwIfAny();
    return new Catalog(
        ingredients.values(),
        products.values(),
        weeds.values(),
        crops.values(),
        responses.values(),
        interactions);
  }

  private List<CatalogFile> in(String folder) {
    return files.values().stream().filter(f -> f.path().startsWith(folder + "/")).toList();
  }

  private <I, T> Map<I, T> read(
      String folder, BiFunction<CatalogFile, MapReader, Optional<T>> reader, Function<T, I> id) {
    Map<I, T> out = new LinkedHashMap<>();
    for (CatalogFile f : in(folder)) {
      map(f).flatMap(m -> reader.apply(f, m)).ifPresent(t -> out.put(id.apply(t), t));
    }
    return out;
  }

  private Optional<MapReader> map(CatalogFile f) {
    try {
      return Optional.of(new MapReader(yaml.readMap(f.shown(), f.content()), problems));
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private <I extends Comparable<I>> void names(
      Names<I> names, I id, String name, List<String> aliases, String folder, Object stem) {
    CatalogFile file = files.get(folder + "/" + stem + ".yaml");
    Mark mark = Mark.startOf(file == null ? folder : file.shown());
    names.addAlias(name, id, mark, problems);
    aliases.forEach(a -> names.addAlias(a, id, mark, problems));
  }
}
