package org.swathbook.book.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;

/**
 * Lets one writer at a time change the journal of a book, whatever process or thread it is. The
 * lock lies on a file of its own, since the journal itself is replaced by every writer. The file
 * stays when the lock is gone: taking it away would let two writers lock two files. The system
 * frees the lock of a process that ends, killed or not.
 */
final class JournalLock implements AutoCloseable {
  static final String FILE = ".applications.lock";
  private static final int WAIT_MILLIS = 5;

  /** Half a minute, of writers that take milliseconds each. */
  private static final int TRIES = 6000;

  private final FileChannel channel;

  private JournalLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Waits for its turn.
   *
   * @throws ProblemsException when another writer does not end, or the wait is interrupted
   * @throws IOException when the folder takes no lock
   */
  static JournalLock take(Path book) throws IOException {
    FileChannel channel =
        FileChannel.open(
            book.resolve(FILE),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    try {
      for (int i = 0; i < TRIES; i++) {
        if (tryLock(channel) != null) {
          return new JournalLock(channel);
        }
        Thread.sleep(WAIT_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      channel.close();
      throw ProblemsException.of(
          Mark.startOf(ApplicationsReader.TABLE.file()),
          "the call was interrupted while it waited for another to end",
          "nothing was written; call again");
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
    channel.close();
    throw ProblemsException.of(
        Mark.startOf(ApplicationsReader.TABLE.file()),
        "another call has been writing the journal for half a minute",
        "wait until it has ended, then call again");
  }

  /** Null while another holds it: another process, or another thread of this one. */
  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
