package org.swathbook.source;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;

/**
 * Reads a cell however it is written: blanks around it, quotes, a quote in them written twice, line
 * ends in them. Blanks before a cell are passed over before it is asked whether it begins with a
 * quote.
 */
final class CellReader {
  private static final int MOST = 100_000;

  /** A quote that is open for so many bytes is never closed. */
  private static final int LONGEST_QUOTE = 20_000_000;

  private final String file;
  private final Utf8Bytes in;

  /** Where it begins; columns with characters of two {@code char}s as two, and as one. */
  private int line;

  private int rawColumn;
  private int column;

  /** Where its text stands, in bytes from where the row begins. */
  private int from;

  private int to;

  CellReader(String file, Utf8Bytes in) {
    this.file = file;
    this.in = in;
  }

  /** Goes to where a cell begins. */
  void begin() throws IOException {
    passBlanks();
    line = in.line();
    // Behind the last comma of a text without a line end the cell begins at the comma.
    column = Math.max(1, in.column() - (in.peek() == Utf8Bytes.END ? 1 : 0));
    rawColumn = column + in.pairs();
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }

  int from() {
    return from;
  }

  int to() {
    return to;
  }

  ProblemsException refuse(String what, String right) {
    return ProblemsException.of(fault(), what, right);
  }

  /** Where the cell begins, of which something is wrong. */
  Mark fault() {
    return new Mark(file, line, rawColumn);
  }

  /**
   * Reads the cell.
   *
   * @return false when its quotes do not close before the next comma
   * @throws ProblemsException when it is too long to be one
   */
  boolean read() throws IOException {
    from = place();
    if (in.peek() == '"') {
      if (!quoted()) {
        return false;
      }
    } else {
      in.passText();
      to = place();
      // Signs that show nothing count as blanks where no quotes keep them.
      while (to > from && byteAt(to - 1) >= 0 && byteAt(to - 1) <= ' ') {
        to--;
      }
    }
    if (to - from > MOST && text().length() > MOST) {
      throw refuse(
          "the cell holds more than " + MOST + " characters",
          "shorten the text, or close a quote that was left open here");
    }
    trim();
    return true;
  }

  private int place() {
    return in.at() - in.row();
  }

  private byte byteAt(int place) {
    return in.buffer()[in.row() + place];
  }

  private void passBlanks() throws IOException {
    int c = in.peek();
    while (c != Utf8Bytes.END && c <= ' ' && c != '\n' && c != '\r') {
      in.pass();
      c = in.peek();
    }
  }

  /** Reads up to the comma or line end behind the closing quote; false when there is none. */
  private boolean quoted() throws IOException {
    in.pass();
    from = place();
    to = from;
    int c = in.peek();
    while (c != Utf8Bytes.END && place() - from <= LONGEST_QUOTE) {
      if (c == '"') {
        in.pass();
        if (in.peek() != '"') {
          passBlanks();
          c = in.peek();
          return c == ',' || c == '\n' || c == '\r' || c == Utf8Bytes.END;
        }
        keep(in.pass());
      } else if (c == '\n' || c == '\r') {
        in.endLine();
        keep(1);
        if (in.passSecondHalf()) {
          keep(1);
        }
      } else {
        keep(in.pass());
      }
      c = in.peek();
    }
    return false;
  }

  /** Puts what was passed behind the rest of the text: quotes in it are written twice. */
  private void keep(int bytes) {
    byte[] buffer = in.buffer();
    int source = in.at() - bytes;
    int target = in.row() + to;
    for (int i = 0; i < bytes; i++) {
      buffer[target + i] = buffer[source + i];
    }
    to += bytes;
  }

  /** Takes off blanks around a cell, the no-break space of spreadsheets among them. */
  private void trim() {
    if (from == to || isInk(byteAt(from)) && isInk(byteAt(to - 1))) {
      return;
    }
    String text = text();
    int first = 0;
    int last = text.length();
    while (first < last && isBlank(text.charAt(first))) {
      first++;
    }
    while (last > first && isBlank(text.charAt(last - 1))) {
      last--;
    }
    to -= bytes(text.substring(last));
    from += bytes(text.substring(0, first));
  }

  private static boolean isInk(byte b) {
    return b > ' ';
  }

  private static boolean isBlank(char c) {
    return c == '\u00A0' || Character.isWhitespace(c);
  }

  private String text() {
    return new String(in.buffer(), in.row() + from, to - from, UTF_8);
  }

  private static int bytes(String text) {
    return text.getBytes(UTF_8).length;
  }
}
