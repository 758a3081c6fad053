package org.swathbook.catalog.file;

import java.util.Optional;
import org.swathbook.source.MapNode;
import org.swathbook.source.YamlReader;

/** One file of a catalog, as bytes or, for the starter, parsed already. */
final class CatalogFile {
  private static final byte[] NOTHING = {};

  private final String path;
  private final String shown;
  private final boolean starter;
  private final byte[] content;
  private final Optional<MapNode> parsed;

  private CatalogFile(
      String path, String shown, boolean starter, byte[] content, Optional<MapNode> parsed) {
    this.path = path;
    this.shown = shown;
    this.starter = starter;
    this.content = content;
    this.parsed = parsed;
  }

  /**
   * A file as it was read.
   *
   * @param path place in the catalog, {@code weeds/amapa.yaml}
   * @param shown name for people, {@code starter/weeds/amapa.yaml}
   * @param starter whether it comes with the program; every value then needs a source
   */
  static CatalogFile of(String path, String shown, boolean starter, byte[] content) {
    return new CatalogFile(path, shown, starter, content, Optional.empty());
  }

  /** A file whose keys are read already. */
  static CatalogFile parsed(String path, String shown, boolean starter, MapNode keys) {
    return new CatalogFile(path, shown, starter, NOTHING, Optional.of(keys));
  }

  String path() {
    return path;
  }

  String shown() {
    return shown;
  }

  boolean starter() {
    return starter;
  }

  byte[] content() {
    return content;
  }

  /**
   * The keys of a YAML file.
   *
   * @throws org.swathbook.source.ProblemsException when it is no such document
   */
  MapNode keys() {
    return parsed.orElseGet(() -> new YamlReader().readMap(shown, content));
  }

  /** {@code weeds} of {@code weeds/amapa.yaml}; empty for a file that lies in no folder. */
  String folder() {
    int slash = path.indexOf('/');
    return slash < 0 ? "" : path.substring(0, slash);
  }

  /** {@code amapa} of {@code weeds/amapa.yaml}. */
  String stem() {
    String name = path.substring(path.lastIndexOf('/') + 1);
    int dot = name.lastIndexOf('.');
    return dot < 0 ? name : name.substring(0, dot);
  }
}
