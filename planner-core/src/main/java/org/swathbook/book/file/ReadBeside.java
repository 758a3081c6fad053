package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.Problems;

/**
 * A part of a book that is read beside whoever began it, where that is worth a thread. What comes
 * up is kept until it is finished, so that problems and notes stand in the same order every time.
 *
 * @param <T> what is read
 */
final class ReadBeside<T> {
  private final BiFunction<Problems, List<String>, T> part;
  private final Problems found = new Problems();
  private final List<String> said = new ArrayList<>();
  private final @Nullable CompletableFuture<T> reading;

  private ReadBeside(BiFunction<Problems, List<String>, T> part, boolean beside) {
    this.part = part;
    this.reading = beside ? CompletableFuture.supplyAsync(() -> part.apply(found, said)) : null;
  }

  /**
   * @param part is given where its problems and notes belong
   */
  static <T> ReadBeside<T> begin(BiFunction<Problems, List<String>, T> part) {
    return new ReadBeside<>(part, true);
  }

  /** The same, read when it is asked for where it is short. */
  static <T> ReadBeside<T> beginIf(boolean isLong, BiFunction<Problems, List<String>, T> part) {
    return new ReadBeside<>(part, isLong);
  }

  /**
   * Waits for the end, and adds what came up.
   *
   * @throws RuntimeException the very one that the reading ended with
   */
  T finished(Problems problems, List<String> notes) {
    if (reading == null) {
      return part.apply(problems, notes);
    }
    T read;
    try {
      read = reading.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw e;
    }
    problems.addAll(found.sorted());
    notes.addAll(said);
    return read;
  }
}
