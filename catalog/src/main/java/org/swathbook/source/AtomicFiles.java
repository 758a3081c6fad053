package org.swathbook.source;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Writes a file whole: whoever reads it, even after a crash, finds the old bytes or the new. Where
 * its name is a link, the file behind it is written; what is no file, or is read-only, is left
 * alone.
 */
public final class AtomicFiles {
  private static final int MOST_TRIES = 1000;

  private AtomicFiles() {}

  /**
   * Replaces or makes the file; its folder must exist. On return the bytes are on the disk. A file
   * that was there keeps who may read and write it.
   *
   * @throws NotWritableException when what stands there forbids it
   * @throws NotDurableException when the new bytes stand in the file and the disk fails to confirm
   *     that the file keeps its place
   * @throws IOException when they cannot be written; the file is then as it was
   */
  public static void write(Path path, byte[] bytes) throws IOException {
    writeAll(Map.of(path, bytes), DISK);
  }

  /** The last two steps of a write; a test puts a disk that fails in its place. */
  interface Disk {
    /** Forces a folder to the disk. */
    void force(FileChannel folder) throws IOException;

    /** Puts what is written into its place. */
    default void move(Path beside, Path place) throws IOException {
      Files.move(
          beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  static final Disk DISK = folder -> folder.force(true);

  /**
   * Replaces or makes several files, all of them or none: the bytes of all are on the disk before
   * the first takes its place, which needs no room any more. Their folders must exist.
   *
   * @throws NotWritableException as for one file, or when two names lead to the same
   * @throws NotDurableException as for one file; all have their new bytes then
   * @throws PartlyWrittenException when some have taken their place and the next was refused it
   * @throws IOException when they cannot be written; all are then as they were
   */
  public static void writeAll(Map<Path, byte[]> files) throws IOException {
    writeAll(files, DISK);
  }

  static void writeAll(Map<Path, byte[]> files, Disk disk) throws IOException {
    Map<Path, Path> places = new LinkedHashMap<>();
    for (Path file : files.keySet()) {
      Path place = WritePlace.of(file);
      if (places.containsValue(place)) {
        throw WritePlace.twice(file);
      }
      places.put(file, place);
    }
    Map<Path, Path> besides = new LinkedHashMap<>();
    List<Path> written = new ArrayList<>();
    Set<Path> folders = new LinkedHashSet<>();
    try {
      for (Map.Entry<Path, byte[]> file : files.entrySet()) {
        Path place = Objects.requireNonNull(places.get(file.getKey()));
        Path folder = Objects.requireNonNull(place.getParent());
        folders.add(folder);
        Path beside = writeBeside(folder, String.valueOf(place.getFileName()), file.getValue());
        besides.put(file.getKey(), beside);
        keepPermissions(place, beside);
      }
      for (Map.Entry<Path, Path> file : besides.entrySet()) {
        disk.move(file.getValue(), Objects.requireNonNull(places.get(file.getKey())));
        written.add(file.getKey());
      }
    } catch (IOException | RuntimeException e) {
      for (Path beside : besides.values()) {
        Files.deleteIfExists(beside);
      }
      if (!written.isEmpty()) {
        throw new PartlyWrittenException(written, e);
      }
      throw e;
    }
    for (Path folder : folders) {
      syncFolder(folder, disk);
    }
  }

  private static void keepPermissions(Path old, Path fresh) throws IOException {
    PosixFileAttributeView of = Files.getFileAttributeView(old, PosixFileAttributeView.class);
    PosixFileAttributeView to = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
    if (of != null && to != null && Files.exists(old)) {
      to.setPermissions(of.readAttributes().permissions());
    }
  }

  private static Path writeBeside(Path folder, String name, byte[] bytes) throws IOException {
    for (int i = 0; ; i++) {
      Path beside = folder.resolve("." + name + "." + i + ".tmp");
      try (FileChannel out =
          FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        try {
          ByteBuffer rest = ByteBuffer.wrap(bytes);
          while (rest.hasRemaining()) {
            out.write(rest);
          }
          out.force(true);
        } catch (IOException e) {
          Files.deleteIfExists(beside);
          throw e;
        }
        return beside;
      } catch (FileAlreadyExistsException e) {
        // Another writer's, or left by one that was killed.
        if (i == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  /**
   * Makes the new name itself last. Three failures are three things. A platform that opens no
   * folder (Windows) and a file system that knows no such order (some of networks) say so always
   * and of every folder; the move is as durable as it can be made there, and to fail would mean
   * never to write at all. Any other failure is a disk at fault: the bytes are on it, but after a
   * loss of power the old file may be back. The move cannot be taken back either, for that would be
   * a move like it; so whoever promised that the bytes last has to be told.
   */
  private static void syncFolder(Path folder, Disk disk) throws IOException {
    FileChannel channel;
    try {
      channel = FileChannel.open(folder, StandardOpenOption.READ);
    } catch (IOException e) {
      return;
    }
    try (channel) {
      disk.force(channel);
    } catch (IOException e) {
      if (!isNotOffered(e)) {
        throw new NotDurableException(e);
      }
    }
  }

  /**
   * EINVAL and EBADF, by the words of the C library, since Java keeps no number; in another
   * language than English they pass for a fault, which errs to the safe side.
   */
  private static boolean isNotOffered(IOException e) {
    String words = String.valueOf(e.getMessage());
    return words.contains("Invalid argument") || words.contains("Bad file descriptor");
  }
}
