package org.swathbook.catalog.file;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Loads the starter catalog and lays a folder over it. A file of the folder takes the place of the
 * starter's of the same id, a row of its {@code responses.csv} that of the same weed, ingredient
 * and timing, its {@code interactions.yaml} the whole list. Catalogs already made are kept by
 * content, so that a service that loads for every request parses each catalog once.
 */
public final class CatalogLoader {
  private static final String PLACE = "/org/swathbook/catalog/";
  private static final int KEPT = 8;

  // Both made when first needed: a program started for one command has no time for the others.
  private @Nullable CompletableFuture<Catalog> starter;
  private @Nullable Cache<CatalogContent, Catalog> made;

  /**
   * One that reads the starter catalog at once, in a thread of its own, while its caller does what
   * comes before.
   */
  public static CatalogLoader ahead() {
    CatalogLoader loader = new CatalogLoader();
    loader.starter = CompletableFuture.supplyAsync(CatalogLoader::readStarter, CatalogLoader::run);
    return loader;
  }

  /** The starter catalog by itself. */
  public Catalog starter() {
    return load(true, Optional.empty());
  }

  /**
   * The catalog of a book.
   *
   * @param withStarter whether the starter lies beneath
   * @param folder the book's own entries
   * @throws ProblemsException with everything that is wrong in the files
   */
  public Catalog load(boolean withStarter, Optional<Path> folder) {
    return folder
        .map(f -> load(withStarter, f, String.valueOf(f.getFileName())))
        .orElseGet(() -> load(withStarter, List.of(), new Problems()));
  }

  /**
   * The same, with the name under which problems show the folder.
   *
   * @throws ProblemsException with everything that is wrong in the files
   */
  public Catalog load(boolean withStarter, Path folder, String shown) {
    Problems problems = new Problems();
    return load(withStarter, CatalogFolder.read(folder, shown, problems), problems);
  }

  /**
   * The same with everything its files say, for those who keep them.
   *
   * @param shown name of the folder for people
   * @throws ProblemsException with everything that is wrong in the files
   */
  public WrittenCatalog written(boolean withStarter, Optional<Path> folder, String shown) {
    Problems problems = new Problems();
    List<CatalogFile> own =
        folder.map(f -> CatalogFolder.read(f, shown, problems)).orElse(List.of());
    return WrittenCatalog.of(load(withStarter, own, problems), files(withStarter, own));
  }

  /**
   * The file of an entry as it is written, remarks and all.
   *
   * @param folder the folder that was laid over the starter
   * @throws ProblemsException when the file is no longer there
   */
  public String text(WrittenEntry entry, Optional<Path> folder) {
    String path = entry.kind().path(entry.id());
    if (entry.starter()) {
      return new String(resource("starter/" + path), StandardCharsets.UTF_8);
    }
    Problems problems = new Problems();
    List<CatalogFile> own =
        folder.map(f -> CatalogFolder.read(f, "catalog", problems)).orElse(List.of());
    return own.stream()
        .filter(f -> f.path().equals(path))
        .map(f -> new String(f.content(), StandardCharsets.UTF_8))
        .findFirst()
        .orElseThrow(
            () -> ProblemsException.of(entry.mark(), "the file is gone", "read the catalog again"));
  }

  private Catalog load(boolean withStarter, List<CatalogFile> own, Problems problems) {
    if (!problems.isEmpty()) {
      return CatalogAssembler.assemble(files(withStarter, own), problems);
    }
    if (withStarter && own.isEmpty()) {
      return madeStarter();
    }
    return made()
        .get(
            new CatalogContent(withStarter, own),
            key -> CatalogAssembler.assemble(files(withStarter, own), problems));
  }

  private synchronized Catalog madeStarter() {
    if (starter == null) {
      starter = CompletableFuture.completedFuture(readStarter());
    }
    return starter.join();
  }

  private synchronized Cache<CatalogContent, Catalog> made() {
    if (made == null) {
      made = Caffeine.newBuilder().maximumSize(KEPT).build();
    }
    return made;
  }

  private static void run(Runnable reading) {
    Thread thread = new Thread(reading, "starter catalog");
    thread.setDaemon(true);
    thread.start();
  }

  private static Catalog readStarter() {
    return MadeStarter.read(resource(MadeStarter.NAME));
  }

  private static List<CatalogFile> files(boolean withStarter, List<CatalogFile> own) {
    List<CatalogFile> all = new ArrayList<>(withStarter ? starterFiles() : List.of());
    all.addAll(own);
    return all;
  }

  /** The files of the starter catalog, parsed already. */
  static List<CatalogFile> starterFiles() {
    return new StarterFile().read(resource(StarterFile.NAME));
  }

  private static byte[] resource(String name) {
    try (InputStream in = CatalogLoader.class.getResourceAsStream(PLACE + name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the starter catalog was not built; Maven builds it after compiling");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
