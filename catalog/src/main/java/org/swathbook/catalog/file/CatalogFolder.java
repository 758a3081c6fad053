package org.swathbook.catalog.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.swathbook.catalog.Slug;
import org.swathbook.source.Mark;
import org.swathbook.source.Nearest;
import org.swathbook.source.Problems;

/**
 * Gathers the files of a catalog folder; what does not belong there is a problem, not passed over.
 */
final class CatalogFolder {
  private static final int MOST_BYTES = 20_000_000;

  private final Path root;
  private final String shown;
  private final Problems problems;
  private final List<CatalogFile> files = new ArrayList<>();

  private CatalogFolder(Path root, String shown, Problems problems) {
    this.root = root;
    this.shown = shown;
    this.problems = problems;
  }

  /**
   * The files of a folder in the order of their names.
   *
   * @param shown name of the folder for people
   */
  static List<CatalogFile> read(Path root, String shown, Problems problems) {
    CatalogFolder folder = new CatalogFolder(root, shown, problems);
    if (!Files.isDirectory(root)) {
      problems.add(
          Mark.startOf(shown), "there is no such folder", "make it, or name the one that is meant");
    } else {
      folder.list();
    }
    return folder.files;
  }

  private void list() {
    for (Path p : children(root)) {
      String name = name(p);
      boolean isFolder = Files.isDirectory(p);
      if (isFolder && CatalogPaths.FOLDERS.contains(name)) {
        children(p).forEach(c -> entry(name, c));
      } else if (!isFolder
          && List.of(CatalogPaths.RESPONSES, CatalogPaths.INTERACTIONS).contains(name)) {
        add(name, p);
      } else if (isFolder || !isRemark(name)) {
        List<String> known = new ArrayList<>(CatalogPaths.FOLDERS);
        known.addAll(List.of(CatalogPaths.RESPONSES, CatalogPaths.INTERACTIONS));
        problems.add(
            Mark.startOf(shown + "/" + name),
            "a catalog holds nothing of this name",
            Nearest.hint(name, known));
      }
    }
  }

  private void entry(String folder, Path p) {
    String name = name(p);
    String stem = name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : "";
    if (!stem.isEmpty() && !Files.isDirectory(p)) {
      String id = Slug.of(stem);
      if (id.equals(stem)) {
        add(folder + "/" + name, p);
      } else {
        problems.add(
            Mark.startOf(shown + "/" + folder + "/" + name),
            "the name of the file is no id",
            id.isEmpty() ? "name it after what it holds" : "name it " + id + ".yaml");
      }
    } else if (!isRemark(name)) {
      problems.add(
          Mark.startOf(shown + "/" + folder + "/" + name),
          "this is no entry of the catalog",
          "keep one entry a file, with a name that ends in .yaml");
    }
  }

  private void add(String path, Path file) {
    String name = shown + "/" + path;
    try {
      if (!file.toRealPath().startsWith(root.toRealPath())) {
        problems.add(
            Mark.startOf(name), "the link leads out of the folder", "put the file itself here");
        return;
      }
      try (InputStream in = Files.newInputStream(file)) {
        files.add(CatalogFile.of(path, name, false, in.readNBytes(MOST_BYTES)));
      }
    } catch (IOException e) {
      problems.add(Mark.startOf(name), "the file cannot be read", "check that it may be opened");
    }
  }

  private List<Path> children(Path folder) {
    try (Stream<Path> found = Files.list(folder)) {
      return found
          .filter(p -> !name(p).startsWith("."))
          .sorted((a, b) -> name(a).compareTo(name(b)))
          .toList();
    } catch (IOException e) {
      problems.add(Mark.startOf(shown), "the folder cannot be read", "check that it may be opened");
      return List.of();
    }
  }

  private static boolean isRemark(String name) {
    return name.endsWith(".md") || name.endsWith(".txt") || name.endsWith("~");
  }

  private static String name(Path p) {
    return String.valueOf(p.getFileName());
  }
}
