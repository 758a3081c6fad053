package org.swathbook.catalog.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.swathbook.source.AtomicFiles;
import org.swathbook.source.Problems;

/** Run by the build: parses the folder of the starter catalog into one file. */
public final class StarterBuild {
  private StarterBuild() {}

  /**
   * Makes the file anew.
   *
   * @param args the folder, and the file to write
   * @throws org.swathbook.source.ProblemsException when a file is no YAML or does not belong there
   */
  public static void main(String[] args) throws IOException {
    List<CatalogFile> files = files(Path.of(args[0]));
    Path out = Path.of(args[1]);
    Files.createDirectories(out.toAbsolutePath().getParent());
    AtomicFiles.write(out, new StarterFile().write(files));
  }

  /**
   * The files of the folder in the order of their names, by which the result is always the same.
   */
  static List<CatalogFile> files(Path folder) {
    Problems problems = new Problems();
    List<CatalogFile> files =
        CatalogFolder.read(folder, "starter", problems).stream()
            .map(f -> CatalogFile.of(f.path(), StarterFile.shown(f.path()), true, f.content()))
            .toList();
    problems.throwIfAny();
    return files;
  }
}
