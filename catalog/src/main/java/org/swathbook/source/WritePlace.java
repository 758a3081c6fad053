package org.swathbook.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

/**
 * Where a file of some name is to be written. A file is written by moving another into its place,
 * and a move asks neither what it replaces nor who may write to it: a link would be lost and the
 * file behind it go stale, a device would become a file, and what is read-only would be replaced.
 * So all of that is asked here.
 */
final class WritePlace {
  private static final Set<PosixFilePermission> WRITE =
      Set.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

  private WritePlace() {}

  /**
   * The file itself where its name is a link; its folder with all links followed.
   *
   * @throws NotWritableException when no file can be written there, or must not
   */
  static Path of(Path file) throws NotWritableException {
    Path full = file.toAbsolutePath();
    Path folder = full.getParent();
    Path name = full.getFileName();
    if (folder == null || name == null || Files.isDirectory(full)) {
      throw new NotWritableException(
          file, "this is a folder", "name a file, or take the folder away");
    }
    if (!Files.isDirectory(folder)) {
      throw Files.exists(folder)
          ? new NotWritableException(file, "its folder is none, but a file", "name another folder")
          : new NotWritableException(
              file, "its folder does not exist", "make the folder, or name another");
    }
    Path place = resolved(file, full, folder.resolve(name));
    if (!Files.isWritable(folderOf(place))) {
      throw noFolderToWriteIn(file);
    }
    return place;
  }

  /**
   * Whether {@link #of} will know a place once the folders that are lacking are made.
   *
   * @throws NotWritableException when it will not
   */
  static void checkWithFolders(Path file) throws NotWritableException {
    Path folder = folderOf(file.toAbsolutePath());
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      of(file);
      return;
    }
    while (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      folder = folderOf(folder);
    }
    if (!Files.isDirectory(folder)) {
      throw new NotWritableException(
          file, "its folder cannot be made: " + folder + " is none", "name another folder");
    }
    if (!Files.isWritable(folder)) {
      throw noFolderToWriteIn(file);
    }
  }

  private static Path resolved(Path file, Path full, Path inFolder) throws NotWritableException {
    try {
      BasicFileAttributes there = Files.readAttributes(full, BasicFileAttributes.class);
      if (!there.isRegularFile()) {
        throw new NotWritableException(
            file, "this is a device or a pipe, and no file", "name a file");
      }
      Path real = full.toRealPath();
      if (isReadOnly(real)) {
        throw new NotWritableException(
            file, "the file is read-only", "allow writing to it, or name another");
      }
      return real;
    } catch (NotWritableException e) {
      throw e;
    } catch (IOException e) {
      if (e instanceof NoSuchFileException && !Files.exists(full, LinkOption.NOFOLLOW_LINKS)) {
        return fresh(file, inFolder);
      }
      throw new NotWritableException(
          file,
          Files.isSymbolicLink(full) ? "the link leads nowhere" : "what is there cannot be read",
          "take it away, or name another file");
    }
  }

  private static Path fresh(Path file, Path inFolder) throws NotWritableException {
    try {
      return folderOf(inFolder).toRealPath().resolve(inFolder.getFileName());
    } catch (IOException e) {
      throw noFolderToWriteIn(file);
    }
  }

  /** The permissions, since whoever may do anything is let through whatever they say. */
  private static boolean isReadOnly(Path real) throws IOException {
    PosixFileAttributeView posix = Files.getFileAttributeView(real, PosixFileAttributeView.class);
    boolean closed =
        posix != null && posix.readAttributes().permissions().stream().noneMatch(WRITE::contains);
    return closed || !Files.isWritable(real);
  }

  private static Path folderOf(Path full) {
    Path folder = full.getParent();
    return folder == null ? full : folder;
  }

  static NotWritableException twice(Path file) {
    return new NotWritableException(
        file, "two files are to be written there", "give each its own name");
  }

  private static NotWritableException noFolderToWriteIn(Path file) {
    return new NotWritableException(
        file, "its folder takes no files", "see to the rights of the folder, or name another");
  }
}
