package org.swathbook.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Writes a folder of files. Everything is written beside its place first and moved there when all
 * is written: a new folder in one step, into an empty one entry by entry.
 */
public final class NewFolder {
  private NewFolder() {}

  /** Writes the files. */
  public interface Content {
    void into(Path folder) throws IOException;
  }

  /**
   * Whether a folder may be written: nothing of that name is there, or an empty folder.
   *
   * @throws IOException when it cannot be looked into
   */
  public static boolean isFree(Path target) throws IOException {
    if (!Files.exists(target)) {
      return true;
    }
    if (!Files.isDirectory(target)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(target)) {
      return inside.findAny().isEmpty();
    }
  }

  /**
   * Makes the folder, or fills it where it is there and empty. An empty folder stays the one it
   * was: it may be a link, or the one that someone works in; and since it may lie on another disk
   * than the folder it lies in, what is to be moved into it is written inside.
   *
   * @throws IOException when it cannot be written; nothing of it is there then
   */
  public static void write(Path target, Content content) throws IOException {
    boolean there = Files.exists(target);
    Path parent = there ? target : Objects.requireNonNull(target.toAbsolutePath().getParent());
    if (!there) {
      Files.createDirectories(parent);
    }
    Path beside = Files.createTempDirectory(parent, ".new-");
    try {
      // A temporary folder is for its owner alone; a folder within it is for whom others are.
      Path made = Files.createDirectory(beside.resolve("made"));
      content.into(made);
      if (there) {
        fill(target, made);
      } else {
        Files.move(made, target, StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      delete(beside);
    }
  }

  private static void fill(Path target, Path made) throws IOException {
    List<Path> entries;
    try (Stream<Path> inside = Files.list(made)) {
      entries = inside.sorted().toList();
    }
    for (Path p : entries) {
      Files.move(p, target.resolve(p.getFileName()), StandardCopyOption.ATOMIC_MOVE);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
