package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a coverage-guided fuzzer calls, again and again: the first byte of its input chooses the
 * file, the others stand in place of what is in it. The law is that of {@link FuzzedBook}: it is
 * read, or it is refused with plain problems. {@link #main} writes what to start from, every file
 * as it is when sound.
 */
public final class GuidedFuzzing {
  private static final FuzzedBook BOOK = made();

  private GuidedFuzzing() {}

  private static FuzzedBook made() {
    try {
      Path folder = Files.createTempDirectory("guided");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> removed(folder)));
      return new FuzzedBook(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void removed(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name and the form of this method are what the fuzzer looks for. */
  public static void fuzzerTestOneInput(byte[] input) throws IOException {
    if (input.length == 0) {
      return;
    }
    List<FuzzedBook.Target> targets = BOOK.targets();
    FuzzedBook.Target target = targets.get(Byte.toUnsignedInt(input[0]) % targets.size());
    byte[] content = Arrays.copyOfRange(input, 1, input.length);
    BOOK.readInPlace(target, content)
        .findFirst()
        .ifPresent(
            f -> {
              throw new AssertionError(f.toString());
            });
  }

  /**
   * Writes the sound files, each with its number before it, into the first folder, and makes the
   * second, in which the fuzzer keeps what reached something new.
   */
  public static void main(String[] folders) throws IOException {
    Path sound = Files.createDirectories(Path.of(folders[0]));
    Files.createDirectories(Path.of(folders[1]));
    List<FuzzedBook.Target> targets = BOOK.targets();
    for (int i = 0; i < targets.size(); i++) {
      byte[] text = targets.get(i).text().getBytes(UTF_8);
      byte[] seed = new byte[text.length + 1];
      seed[0] = (byte) i;
      System.arraycopy(text, 0, seed, 1, text.length);
      Files.write(sound.resolve("%03d".formatted(i)), seed);
    }
    BOOK.close();
  }
}
