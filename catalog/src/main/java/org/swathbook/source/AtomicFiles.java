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

/** Writes a file whole: whoever reads it, even after a crash, finds the old bytes or the new. */
public final class AtomicFiles {
  private static final int MOST_TRIES = 1000;

  private AtomicFiles() {}

  /**
   * Replaces or makes the file; its folder must exist. On return the bytes are on the disk. A file
   * that was there keeps who may read and write it.
   *
   * @throws NotDurableException when the new bytes stand in the file and the disk fails to confirm
   *     that the file keeps its place
   * @throws IOException when they cannot be written; the file is then as it was
   */
  public static void write(Path path, byte[] bytes) throws IOException {
    write(path, bytes, AtomicFiles::force);
  }

  /** Forces a folder to the disk; a test puts a disk that fails in its place. */
  interface Disk {
    void force(FileChannel folder) throws IOException;
  }

  static void write(Path path, byte[] bytes, Disk disk) throws IOException {
    Path target = path.toAbsolutePath();
    Path folder = target.getParent();
    if (folder == null) {
      throw new IOException(path + " is no file");
    }
    Path beside = writeBeside(folder, String.valueOf(target.getFileName()), bytes);
    try {
      keepPermissions(target, beside);
      Files.move(
          beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(beside);
      throw e;
    }
    syncFolder(folder, disk);
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

  private static void force(FileChannel folder) throws IOException {
    folder.force(true);
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
