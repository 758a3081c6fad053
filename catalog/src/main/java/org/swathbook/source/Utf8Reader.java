package org.swathbook.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Reads UTF-8 strictly: a byte-order mark is skipped, anything that is no UTF-8 ends in a problem
 * that names the encoding and the place. The reader of the platform would lose the characters
 * before the fault, and with them the place.
 */
final class Utf8Reader extends Reader {
  /** Bytes of a character at most. */
  private static final int LONGEST_CHARACTER = 4;

  private final String file;
  private final InputStream in;
  private final ByteBuffer bytes;
  private final CharBuffer chars;
  private final CharsetDecoder decoder =
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT);
  private boolean ended;
  private boolean faulty;
  private int line = 1;
  private int column = 1;
  private boolean afterReturn;

  /** Looks at the first bytes at once. */
  Utf8Reader(String file, InputStream in) throws IOException {
    this(file, in, 1 << 16);
  }

  private Utf8Reader(String file, InputStream in, int bytesAtOnce) throws IOException {
    this.file = file;
    this.in = in;
    this.bytes = ByteBuffer.allocate(bytesAtOnce);
    this.chars = CharBuffer.allocate(Math.min(1 << 13, bytesAtOnce)).limit(0);
    int n = in.readNBytes(bytes.array(), 0, bytes.capacity());
    ended = n < bytes.capacity();
    bytes.limit(n);
    refuseWideEncodings(n);
    if (startsWith(n, 0xEF, 0xBB, 0xBF)) {
      bytes.position(3);
    }
  }

  /** The whole text of a small file. */
  static String decode(String file, byte[] content) {
    int atOnce = Math.max(LONGEST_CHARACTER, Math.min(1 << 16, content.length + 1));
    try (Utf8Reader reader = new Utf8Reader(file, new ByteArrayInputStream(content), atOnce)) {
      StringBuilder out = new StringBuilder(content.length);
      char[] buffer = new char[Math.min(1 << 13, atOnce)];
      int n = reader.read(buffer, 0, buffer.length);
      while (n >= 0) {
        out.append(buffer, 0, n);
        n = reader.read(buffer, 0, buffer.length);
      }
      return out.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void refuseWideEncodings(int n) {
    if (startsWith(n, 0xFF, 0xFE, 0, 0) || startsWith(n, 0, 0, 0xFE, 0xFF)) {
      throw refuse("UTF-32");
    }
    boolean marked = startsWith(n, 0xFF, 0xFE) || startsWith(n, 0xFE, 0xFF);
    boolean unmarked = n >= 2 && (bytes.get(0) == 0 ^ bytes.get(1) == 0);
    if (marked || unmarked) {
      throw refuse("UTF-16");
    }
  }

  private boolean startsWith(int n, int... expected) {
    if (n < expected.length) {
      return false;
    }
    for (int i = 0; i < expected.length; i++) {
      if ((bytes.get(i) & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  private ProblemsException refuse(String encoding) {
    return ProblemsException.of(
        new Mark(file, line, column),
        "the file is written in " + encoding + ", not in UTF-8",
        "save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')");
  }

  @Override
  public int read(char[] target, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (!chars.hasRemaining() && !decodeMore()) {
      return -1;
    }
    int n = Math.min(length, chars.remaining());
    chars.get(target, offset, n);
    return n;
  }

  /** Fills the emptied character buffer; false at the end of the file. */
  private boolean decodeMore() throws IOException {
    chars.clear();
    if (!bytes.hasRemaining() && !ended) {
      refill();
    }
    if (takeAscii()) {
      chars.flip();
      return true;
    }
    while (chars.position() == 0) {
      if (faulty) {
        throw fault();
      }
      CoderResult result = decoder.decode(bytes, chars, ended);
      faulty = result.isError();
      if (result.isUnderflow() && chars.position() == 0) {
        if (ended) {
          chars.flip();
          return false;
        }
        refill();
      }
    }
    chars.flip();
    count();
    return true;
  }

  /**
   * Takes over what is plain ASCII up to anything else, and counts it: nearly all of most files,
   * for which the decoder would take several times as long.
   *
   * @return whether there was any
   */
  private boolean takeAscii() {
    byte[] from = bytes.array();
    char[] to = chars.array();
    int first = bytes.position();
    int length = Math.min(bytes.remaining(), to.length);
    int lineStart = 1 - column;
    boolean returned = afterReturn;
    int n = 0;
    while (n < length) {
      int run = n;
      for (; n < length; n++) {
        // What is no ASCII is below zero.
        byte b = from[first + n];
        if (b < ' ') {
          break;
        }
        to[n] = (char) b;
      }
      returned &= n == run;
      if (n == length) {
        break;
      }
      byte b = from[first + n];
      if (b != '\n' && b != '\r') {
        break;
      }
      to[n++] = (char) b;
      if (b == '\r' || !returned) {
        line++;
      }
      returned = b == '\r';
      lineStart = n;
    }
    afterReturn = returned;
    column = n - lineStart + 1;
    bytes.position(first + n);
    chars.position(n);
    return n > 0;
  }

  private void refill() throws IOException {
    bytes.compact();
    int n = in.readNBytes(bytes.array(), bytes.position(), bytes.remaining());
    ended = n < bytes.remaining();
    bytes.position(bytes.position() + n).flip();
  }

  private ProblemsException fault() {
    int first = bytes.hasRemaining() ? bytes.get(bytes.position()) & 0xFF : 0;
    return first >= 0x80
        ? ProblemsException.of(
            new Mark(file, line, column),
            "the file is not written in UTF-8 but, by its looks, in Windows-1252",
            "save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')")
        : refuse("another encoding");
  }

  private void count() {
    char[] decoded = chars.array();
    int end = chars.limit();
    for (int i = 0; i < end; i++) {
      char c = decoded[i];
      if (c >= ' ' && c < Character.MIN_SURROGATE) {
        // Nearly all there is.
        column++;
        afterReturn = false;
      } else if (c == 0) {
        throw ProblemsException.of(
            new Mark(file, line, column),
            "a NUL character stands in the file, which is then no text",
            "write the file as plain UTF-8 text");
      } else if (c == '\n' && afterReturn) {
        afterReturn = false;
      } else if (c == '\n' || c == '\r') {
        line++;
        column = 1;
        afterReturn = c == '\r';
      } else {
        afterReturn = false;
        column += Character.isLowSurrogate(c) ? 0 : 1;
      }
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
