package org.swathbook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares text with the text kept under {@code src/test/resources/golden}. When they differ, the
 * new text is left under {@code target/golden-actual} for a look. With {@code -Dgolden.update=true}
 * the kept text is rewritten, and the test fails all the same, so that nobody takes an update for a
 * pass: look at the difference, then run again.
 */
final class Goldens {
  private final Path kept;
  private final Path actual;
  private final boolean update;

  Goldens(Path kept, Path actual, boolean update) {
    this.kept = kept;
    this.actual = actual;
    this.update = update;
  }

  /**
   * @param name a file name, which may hold folders: {@code check/clear.txt}
   * @param text what it should hold, in UTF-8 with LF at line ends
   */
  static void check(String name, String text) {
    Path module = Path.of(System.getProperty("basedir", ""));
    new Goldens(
            module.resolve("src/test/resources/golden"),
            module.resolve("target/golden-actual"),
            Boolean.getBoolean("golden.update"))
        .compare(name, text);
  }

  void compare(String name, String text) {
    Path file = kept.resolve(name);
    try {
      boolean exists = Files.exists(file);
      String expected = exists ? Files.readString(file) : "";
      if (exists && expected.equals(text)) {
        return;
      }
      Path written = (update ? kept : actual).resolve(name);
      Files.createDirectories(written.toAbsolutePath().getParent());
      Files.writeString(written, text);
      throw new AssertionError(
          update
              ? file + " was rewritten; look at the difference and run again without golden.update"
              : exists
                  ? file + " differs from " + written + firstDifference(expected, text)
                  : file + " does not exist; the text is in " + written);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String firstDifference(String expected, String text) {
    String[] before = expected.split("\n", -1);
    String[] after = text.split("\n", -1);
    int i = 0;
    while (i < before.length && i < after.length && before[i].equals(after[i])) {
      i++;
    }
    return " from line "
        + (i + 1)
        + "\n  kept: "
        + (i < before.length ? before[i] : "(ends)")
        + "\n  now:  "
        + (i < after.length ? after[i] : "(ends)");
  }
}
