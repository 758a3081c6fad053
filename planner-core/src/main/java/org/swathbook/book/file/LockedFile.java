package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.ProblemsException;

/**
 * A file of a book that grows by a few rows. One writer at a time works on it, under the lock of
 * the journal; the whole new file is written beside the old one, forced to the disk and moved into
 * its place. So whoever reads, without any lock, finds all rows of a call or none.
 */
final class LockedFile {
  private final Path path;
  private final Path book;
  private final String name;

  /** What is done while the lock is held. */
  interface Work<T> {
    T on(LockedFile file) throws IOException;
  }

  private LockedFile(Path book, String name) {
    this.path = book.resolve(name);
    this.book = book;
    this.name = name;
  }

  /**
   * Waits for its turn and does the work.
   *
   * @throws ProblemsException when the file is no good or cannot be written; it is then as it was
   */
  static <T> T change(Path book, String name, Work<T> work) {
    try (JournalLock lock = JournalLock.take(book)) {
      Objects.requireNonNull(lock);
      return work.on(new LockedFile(book, name));
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(name),
          "the file cannot be written (" + NewFiles.reason(e) + "), and is as it was",
          "see to the disk and the rights of the folder, then call again");
    }
  }

  boolean exists() {
    return Files.exists(path);
  }

  /** All bytes of the file. */
  byte[] read(String ifMissing) throws IOException {
    try (InputStream in = BookFiles.open(book, name, ifMissing)) {
      return in.readAllBytes();
    }
  }

  /** Writes the file last of what is written together, all or none. */
  void write(NewFiles together, byte[] whole) throws IOException {
    clearLeftovers();
    together.put(path, name, whole).write();
  }

  /** What writers left that were killed; none is at work while the lock is held. */
  private void clearLeftovers() throws IOException {
    Path real = exists() ? path.toRealPath() : path.toAbsolutePath();
    String start = "." + real.getFileName() + ".";
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(
            Objects.requireNonNull(real.getParent()),
            p -> {
              String beside = String.valueOf(p.getFileName());
              return beside.startsWith(start) && beside.endsWith(".tmp");
            })) {
      for (Path leftover : all) {
        Files.deleteIfExists(leftover);
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }
}
