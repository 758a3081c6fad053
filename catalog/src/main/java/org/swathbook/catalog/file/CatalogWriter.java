package org.swathbook.catalog.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.AtomicFiles;
import org.swathbook.source.MapNode;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFolder;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.YamlWriter;

/**
 * Writes a catalog as the files of a catalog folder, so that {@link CatalogLoader} reads the folder
 * back to the same catalog: every value to the last bit, with its source. What a file can hold and
 * a catalog cannot is lost, which is remarks and spellings. Heights, rain and temperatures are
 * written in the units of labels where that gives the same number.
 */
public final class CatalogWriter {
  private static final String YAML = ".yaml";

  private CatalogWriter() {}

  /**
   * The text of every file by its path in the folder, {@code ingredients/metribuzin.yaml}.
   *
   * @throws IllegalArgumentException for what only code can say and no file can, as a use that
   *     leaves open what its ingredient states
   */
  public static Map<String, String> write(Catalog catalog) {
    Map<String, String> files = new LinkedHashMap<>();
    catalog
        .crops()
        .forEach(c -> put(files, CatalogPaths.CROPS, c.id().value(), CropWriter.write(c)));
    catalog
        .ingredients()
        .forEach(
            i -> put(files, CatalogPaths.INGREDIENTS, i.id().value(), IngredientWriter.write(i)));
    catalog
        .products()
        .forEach(p -> put(files, CatalogPaths.PRODUCTS, p.id().value(), ProductWriter.write(p)));
    catalog
        .weeds()
        .forEach(
            w ->
                put(
                    files,
                    CatalogPaths.WEEDS,
                    w.id().value().toLowerCase(Locale.ROOT),
                    WeedWriter.write(w)));
    files.put(
        CatalogPaths.INTERACTIONS,
        YamlWriter.text(InteractionsWriter.write(catalog.interactions())));
    files.put(CatalogPaths.RESPONSES, ResponsesWriter.write(catalog.responses()));
    return Collections.unmodifiableMap(files);
  }

  private static void put(Map<String, String> files, String folder, String stem, MapNode keys) {
    files.put(folder + "/" + stem + YAML, YamlWriter.text(keys));
  }

  /**
   * Writes the files into a folder, which is made when there is none: all of them or none.
   *
   * @param shown name of the folder for people
   * @throws ProblemsException when something is in the folder already, or when it cannot be written
   */
  public static void write(Catalog catalog, Path folder, String shown) {
    Map<String, String> files = write(catalog);
    try {
      if (!NewFolder.isFree(folder)) {
        throw ProblemsException.of(
            Mark.startOf(shown), "the folder is not empty", "name a new folder, or empty this one");
      }
      NewFolder.write(folder, made -> write(files, made));
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(shown), "the folder cannot be written", "check the folder and the disk");
    }
  }

  private static void write(Map<String, String> files, Path folder) throws IOException {
    for (Map.Entry<String, String> f : files.entrySet()) {
      Path file = folder.resolve(f.getKey());
      Files.createDirectories(file.toAbsolutePath().getParent());
      AtomicFiles.write(file, f.getValue().getBytes(StandardCharsets.UTF_8));
    }
  }
}
