package org.swathbook.catalog.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/** A catalog of two crops, one weed and two actives, sound until a test changes it. */
public final class SmallCatalog {
  static final List<String> PATHS =
      List.of(
          "crops/corn.yaml",
          "crops/soybean.yaml",
          "weeds/amapa.yaml",
          "ingredients/glyphosate.yaml",
          "ingredients/metribuzin.yaml",
          "products/glyphosate-4.5sl.yaml",
          "products/metribuzin-75wg.yaml",
          "responses.csv",
          "interactions.yaml");

  private final Map<String, String> texts = new LinkedHashMap<>();
  private boolean starter;

  public SmallCatalog() {
    PATHS.forEach(p -> texts.put(p, resource(p)));
  }

  /** Replaces a piece of a file; it must be there. */
  public SmallCatalog with(String path, String piece, String other) {
    String text = Objects.requireNonNull(texts.get(path), path);
    if (!text.contains(piece)) {
      throw new IllegalArgumentException(path + " has no '" + piece + "'");
    }
    int at = text.indexOf(piece);
    texts.put(path, text.substring(0, at) + other + text.substring(at + piece.length()));
    return this;
  }

  public SmallCatalog file(String path, String text) {
    texts.put(path, text);
    return this;
  }

  public SmallCatalog without(String path) {
    texts.remove(path);
    return this;
  }

  /** As if it came with the program: every value needs a source. */
  SmallCatalog asStarter() {
    starter = true;
    return this;
  }

  public String text(String path) {
    return Objects.requireNonNull(texts.get(path), path);
  }

  Catalog load() {
    return CatalogAssembler.assemble(files(), new Problems());
  }

  /** The catalog with its entries as they are written. */
  public WrittenCatalog written() {
    return WrittenCatalog.of(load(), files());
  }

  private List<CatalogFile> files() {
    List<CatalogFile> files = new ArrayList<>();
    texts.forEach(
        (path, text) ->
            files.add(CatalogFile.of(path, path, starter, text.getBytes(StandardCharsets.UTF_8))));
    return files;
  }

  /** What is wrong with it, as it is shown; nothing when it loads. */
  List<String> problems() {
    try {
      load();
      return List.of();
    } catch (ProblemsException e) {
      return e.problems().stream().map(Problem::toString).toList();
    }
  }

  private static String resource(String path) {
    try (InputStream in = SmallCatalog.class.getResourceAsStream("small/" + path)) {
      return new String(Objects.requireNonNull(in, path).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
