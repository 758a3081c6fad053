package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * The beginning of a file, by which its layout is told. Nothing is judged here: encodings and
 * quotes are the matter of the reader that is chosen.
 */
record FirstLines(List<String> lines) {
  private static final int MOST_BYTES = 1 << 13;
  private static final String BYTE_ORDER_MARK = "\u00EF\u00BB\u00BF";

  FirstLines {
    lines = List.copyOf(lines);
  }

  /**
   * @param ifMissing what to do when the file is missing
   */
  static FirstLines of(Path book, String file, String ifMissing) {
    try (InputStream in = BookFiles.open(book, file, ifMissing)) {
      // One character a byte, so that any encoding gets through; layouts show in ASCII.
      String text = new String(in.readNBytes(MOST_BYTES), StandardCharsets.ISO_8859_1);
      return of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(3) : text);
    } catch (IOException e) {
      throw BookFiles.unreadable(file, e, ifMissing);
    }
  }

  static FirstLines of(String text) {
    return new FirstLines(Arrays.asList(text.split("\r\n|\r|\n", -1)));
  }

  /** The first line that is not blank; empty when all are. */
  String first() {
    return lines.stream().filter(l -> !l.isBlank()).findFirst().orElse("").strip();
  }

  /** Cells of the first line, without quotes. */
  List<String> cells() {
    return Arrays.stream(first().split("[,;\t]"))
        .map(c -> c.strip().replaceAll("^\"|\"$", "").strip())
        .toList();
  }

  /** Number of lines before the first that is as wanted. */
  OptionalInt before(Predicate<String> wanted) {
    for (int i = 0; i < lines.size(); i++) {
      if (wanted.test(lines.get(i).strip())) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether this is no text of one byte a letter. */
  boolean isWide() {
    return lines.stream().anyMatch(l -> l.indexOf('\0') >= 0);
  }
}
