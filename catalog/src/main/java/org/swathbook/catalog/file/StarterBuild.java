package org.swathbook.catalog.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.AtomicFiles;
import org.swathbook.source.Problems;

/**
 * Run by the build: parses the folder of the starter catalog into one file, and makes the catalog
 * of it in another.
 */
public final class StarterBuild {
  private StarterBuild() {}

  /**
   * Makes the files anew.
   *
   * @param args the folder, and the folder to write into
   * @throws org.swathbook.source.ProblemsException with everything that is wrong in the starter
   */
  public static void main(String[] args) throws IOException {
    List<CatalogFile> files = files(Path.of(args[0]));
    Path out = Path.of(args[1]);
    Files.createDirectories(out.toAbsolutePath());
    AtomicFiles.write(out.resolve(StarterFile.NAME), new StarterFile().write(files));
    Catalog catalog = CatalogAssembler.assemble(files, new Problems());
    AtomicFiles.write(out.resolve(MadeStarter.NAME), MadeStarter.write(catalog));
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
