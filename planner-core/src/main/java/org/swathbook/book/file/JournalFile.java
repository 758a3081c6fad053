package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.swathbook.source.AtomicFiles;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvTable;
import org.swathbook.source.Mark;
import org.swathbook.source.NotDurableException;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Adds rows to {@code applications.csv}. Under a lock, the whole new file is written beside the old
 * one, forced to the disk and moved into its place. So whoever reads, without any lock, finds the
 * journal with all rows of a call or with none: a writer that is killed leaves no half row, and no
 * pass of which some products are missing, to be mended later. When {@link #append} returns, the
 * rows outlive a loss of power. The price is that a call writes the whole file, of which a season
 * fills some hundred kilobytes.
 */
final class JournalFile {
  private static final String FILE = ApplicationsReader.TABLE.file();
  private static final Set<PosixFilePermission> WRITE =
      Set.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

  /** Makes the new rows from the journal as it is once the lock is held. */
  interface Rows {
    List<NewRow> of(CsvTable journal);
  }

  /** Reads the journal as it would be, before it is written. */
  interface Check {
    void read(CsvTable there, JournalText more, Problems problems);
  }

  private JournalFile() {}

  /**
   * Adds all rows or none.
   *
   * @return columns that the file did not have before
   * @throws ProblemsException when the rows or the file are no good, or it cannot be written; the
   *     journal is then as it was
   */
  static List<String> append(Path book, Rows rows, Check check) {
    try (JournalLock lock = JournalLock.take(book)) {
      Objects.requireNonNull(lock);
      Path file = writable(book);
      byte[] old = read(book);
      CsvTable there = table(old);
      JournalText text = JournalText.of(old, there.header(), rows.of(there));
      Problems problems = new Problems();
      // What stands there is not taken apart a second time.
      check.read(there, text, problems);
      text.told(problems).throwIfAny();
      clearLeftovers(file);
      AtomicFiles.write(file, text.whole());
      return text.added();
    } catch (NotDurableException e) {
      throw ProblemsException.of(
          Mark.startOf(FILE),
          "the journal " + e.words(),
          "see to the disk; the rows are in it, so look before you record them again");
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(FILE),
          "the journal cannot be written (" + reason(e) + "), and is as it was",
          "see to the disk and the rights of the folder, then call again");
    }
  }

  private static CsvTable table(byte[] old) {
    Problems problems = new Problems();
    CsvTable table = new CsvReader().read(FILE, old, ApplicationsReader.TABLE.columns(), problems);
    problems.throwIfAny();
    return table;
  }

  private static byte[] read(Path book) throws IOException {
    String header = "write one that starts with '" + String.join(",", ApplicationsReader.COLUMNS);
    try (InputStream in = BookFiles.open(book, FILE, header + "'")) {
      return in.readAllBytes();
    }
  }

  /** The file itself where its name is a link; a move could replace what may not be written. */
  private static Path writable(Path book) throws IOException {
    Path file = book.resolve(FILE);
    if (!Files.exists(file)) {
      return file;
    }
    Path real = file.toRealPath();
    PosixFileAttributeView posix = Files.getFileAttributeView(real, PosixFileAttributeView.class);
    boolean closed =
        posix != null && posix.readAttributes().permissions().stream().noneMatch(WRITE::contains);
    if (closed || !Files.isWritable(real)) {
      throw ProblemsException.of(
          Mark.startOf(FILE),
          "the journal is read-only, and is as it was",
          "allow writing to it, then call again");
    }
    return real;
  }

  /** What writers left that were killed; none is at work while the lock is held. */
  private static void clearLeftovers(Path file) throws IOException {
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(
            Objects.requireNonNull(file.toAbsolutePath().getParent()), "." + FILE + ".*.tmp")) {
      for (Path leftover : all) {
        Files.deleteIfExists(leftover);
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no right to write into its folder";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return reason == null ? e.getClass().getSimpleName() : reason;
  }
}
