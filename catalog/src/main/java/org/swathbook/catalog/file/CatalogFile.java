package org.swathbook.catalog.file;

/** The content of one file. */
final class CatalogFile {
  private final String path;
  private final String shown;
  private final boolean starter;
  private final byte[] content;

  /**
   * A file as it was read.
   *
   * @param path place in the catalog, {@code weeds/amapa.yaml}
   * @param shown name for people, {@code starter/weeds/amapa.yaml}
   * @param starter whether it comes with the program; every value then needs a source
   */
  CatalogFile(String path, String shown, boolean starter, byte[] content) {
    this.path = path;
    this.shown = shown;
    this.starter = starter;
    this.content = content;
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

  /** {@code amapa} of {@code weeds/amapa.yaml}. */
  String stem() {
    String name = path.substring(path.lastIndexOf('/') + 1);
    int dot = name.lastIndexOf('.');
    return dot < 0 ? name : name.substring(0, dot);
  }
}
