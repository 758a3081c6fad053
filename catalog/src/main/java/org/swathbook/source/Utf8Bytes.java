package org.swathbook.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The bytes of a text as they come, and how far they are read. All signs that part a table are
 * ASCII, so it is taken apart without making characters of its bytes. What is no ASCII is held to
 * UTF-8 strictly (The Unicode Standard, table 3-7): a byte-order mark is passed over, anything that
 * is no UTF-8 ends in a problem that names the encoding and the place.
 */
final class Utf8Bytes {
  /** What {@link #peek} tells at the end of the text. */
  static final int END = -1;

  private static final int AT_ONCE = 1 << 16;

  private final String file;
  private final InputStream in;
  private byte[] buffer;
  private int at;
  private int end;
  private boolean ended;
  private boolean afterReturn;

  /** Where the row begins that is read, and the one before it; below zero when that may go. */
  private int row;

  private int rowBefore = -1;

  /**
   * Of the line that is read: its number, where it begins, and on it so far the bytes that begin no
   * character and the characters of two {@code char}s.
   */
  private int line = 1;

  private int lineStart;
  private int inside;
  private int pairs;

  /** Looks at the first bytes at once. */
  Utf8Bytes(String file, InputStream in) throws IOException {
    this(file, in, AT_ONCE);
  }

  private Utf8Bytes(String file, InputStream in, int atOnce) throws IOException {
    this.file = file;
    this.in = in;
    this.buffer = new byte[atOnce];
    while (end < Encodings.LONGEST_MARK && fill()) {
      // Until the encoding can be told.
    }
    Encodings.refuseWide(file, buffer, end);
    at = Encodings.lengthOfMark(buffer, end);
    row = at;
    lineStart = at;
  }

  /**
   * The whole text of a small file.
   *
   * @throws ProblemsException when it is no UTF-8
   */
  static String decode(String file, byte[] content) {
    int atOnce = Math.max(Encodings.LONGEST_MARK, Math.min(AT_ONCE, content.length + 1));
    try {
      Utf8Bytes all = new Utf8Bytes(file, new ByteArrayInputStream(content), atOnce);
      while (all.skipLine()) {
        // Whatever is no text is refused on the way.
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    int mark = Encodings.lengthOfMark(content, content.length);
    return new String(content, mark, content.length - mark, StandardCharsets.UTF_8);
  }

  /**
   * Puts a line of ASCII in front of a text of which nothing is read yet.
   *
   * @param number the line that it counts as
   */
  void begin(String text, int number) {
    byte[] there = buffer;
    int length = text.length() + 1;
    buffer = new byte[there.length + length];
    for (int i = 0; i < text.length(); i++) {
      buffer[i] = (byte) text.charAt(i);
    }
    buffer[length - 1] = '\n';
    System.arraycopy(there, at, buffer, length, end - at);
    end += length - at;
    at = 0;
    row = 0;
    lineStart = 0;
    line = number;
  }

  byte[] buffer() {
    return buffer;
  }

  /** Place in the buffer of the byte that comes next. */
  int at() {
    return at;
  }

  /** Past the last byte that is there. */
  int end() {
    return end;
  }

  /** Place in the buffer where the row begins that is read. */
  int row() {
    return row;
  }

  int rowBefore() {
    return rowBefore;
  }

  int line() {
    return line;
  }

  /** Column of the byte that comes next, a character a column. */
  int column() {
    return at - lineStart - inside + 1;
  }

  /** So many columns more there are where characters of two {@code char}s count as two. */
  int pairs() {
    return pairs;
  }

  /**
   * A row begins here, behind the second half of a line end.
   *
   * @param needed whether the bytes of the row before are still asked for
   */
  void beginRow(boolean needed) throws IOException {
    rowBefore = needed ? row : -1;
    row = at;
    if (passSecondHalf()) {
      row = at;
    }
  }

  /** Goes over the second half of a line end, where one comes next. */
  boolean passSecondHalf() throws IOException {
    boolean is = afterReturn && peek() == '\n';
    if (is) {
      at++;
      lineStart = at;
    }
    afterReturn = false;
    return is;
  }

  /** Goes over bytes of the row that are known to be ASCII and no line end. */
  void goTo(int place) {
    at = place;
  }

  /** Goes over a line end, or over the first half of one. */
  void endLine() throws IOException {
    afterReturn = peek() == '\r';
    at++;
    line++;
    lineStart = at;
    inside = 0;
    pairs = 0;
  }

  /** Goes over a whole line; false at the end of the text. */
  boolean skipLine() throws IOException {
    beginRow(false);
    if (peek() == END) {
      return false;
    }
    passTo((byte) '\n');
    if (peek() != END) {
      endLine();
    }
    return true;
  }

  /** The byte that comes next, from 0 to 255. */
  int peek() throws IOException {
    return at < end || fill() ? buffer[at] & 0xFF : END;
  }

  /**
   * Goes over the character that comes next, which is no line end.
   *
   * @return its bytes, which stand in the buffer before the next one
   * @throws ProblemsException when these bytes are no character
   */
  int pass() throws IOException {
    if (buffer[at] > 0) {
      at++;
      return 1;
    }
    return passOther();
  }

  /** Goes to the next comma or line end, or to the end of the text. */
  void passText() throws IOException {
    passTo((byte) ',');
  }

  private void passTo(byte sign) throws IOException {
    while (true) {
      int p = at;
      int stop = end;
      byte[] bytes = buffer;
      byte next = 1;
      for (; p < stop; p++) {
        next = bytes[p];
        if (next <= 0 || next == sign || next == '\n' || next == '\r') {
          break;
        }
      }
      at = p;
      if (p == stop) {
        if (!fill()) {
          return;
        }
      } else if (next <= 0) {
        passOther();
      } else {
        return;
      }
    }
  }

  private int passOther() throws IOException {
    int first = buffer[at] & 0xFF;
    if (first == 0) {
      throw Encodings.nul(mark());
    }
    int length = Encodings.length(first);
    while (end - at < length && fill()) {
      // Until the character is there.
    }
    if (!Encodings.isCharacter(buffer, at, Math.min(length, end - at))) {
      throw Encodings.notUtf8(mark());
    }
    at += length;
    inside += length - 1;
    pairs += length == Encodings.LONGEST_CHARACTER ? 1 : 0;
    return length;
  }

  private Mark mark() {
    return new Mark(file, line, column());
  }

  /**
   * Brings more of the text behind what is there; what is needed no more may make room for it.
   *
   * @return false at its end
   */
  boolean fill() throws IOException {
    if (ended) {
      return false;
    }
    int needed = rowBefore < 0 ? row : rowBefore;
    if (needed > 0) {
      System.arraycopy(buffer, needed, buffer, 0, end - needed);
      at -= needed;
      end -= needed;
      row -= needed;
      rowBefore -= rowBefore < 0 ? 0 : needed;
      lineStart -= needed;
    } else if (end == buffer.length) {
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
    int n = in.read(buffer, end, buffer.length - end);
    if (n < 0) {
      ended = true;
      return false;
    }
    end += n;
    return true;
  }
}
