package org.swathbook.catalog.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.YamlReader;

/** Reads one file of a catalog that is otherwise the starter. */
final class OneEntry {
  private final Names<CropId> cropNames = new Names<>("crop");
  private final Names<WeedId> weedNames = new Names<>("weed");
  private final Names<IngredientId> ingredientNames = new Names<>("ingredient");
  private final Map<CropId, Crop> crops = new LinkedHashMap<>();
  private final Map<IngredientId, Ingredient> ingredients = new LinkedHashMap<>();

  OneEntry(Catalog starter) {
    for (Crop c : starter.crops()) {
      crops.put(c.id(), c);
      cropNames.add(c.id().value(), c.id());
      cropNames.add(c.name(), c.id());
      c.aliases().forEach(a -> cropNames.add(a, c.id()));
    }
    starter
        .weeds()
        .forEach(
            w -> {
              weedNames.add(w.id().value(), w.id());
              weedNames.add(w.name(), w.id());
              w.aliases().forEach(a -> weedNames.add(a, w.id()));
            });
    for (Ingredient i : starter.ingredients()) {
      ingredients.put(i.id(), i);
      ingredientNames.add(i.id().value(), i.id());
      i.aliases().forEach(a -> ingredientNames.add(a, i.id()));
    }
  }

  /** What is wrong with the file; nothing when it is accepted. */
  List<Problem> problems(String path, JsonNode document) {
    Problems problems = new Problems();
    byte[] content = PlainJson.bytes(document);
    CatalogFile file = CatalogFile.of(path, path, false, content);
    try {
      MapNode keys = new YamlReader().readMap(path, content);
      read(file, new MapReader(keys, problems), problems);
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
    }
    return problems.sorted();
  }

  private void read(CatalogFile file, MapReader map, Problems problems) {
    switch (file.folder()) {
      case CatalogPaths.CROPS -> CropReader.read(file, map);
      case CatalogPaths.WEEDS -> new WeedReader(cropNames).read(file, map);
      case CatalogPaths.INGREDIENTS ->
          new IngredientReader(ingredientNames, cropNames, weedNames, crops).read(file, map);
      case CatalogPaths.PRODUCTS -> new ProductReader(ingredientNames, ingredients).read(file, map);
      default ->
          new InteractionReader(weedNames, ingredientNames, ingredients, problems).read(file, map);
    }
  }
}
