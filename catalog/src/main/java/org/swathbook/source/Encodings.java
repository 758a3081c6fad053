package org.swathbook.source;

/** What bytes are as text: by which signs encodings are told, and what is said of all but UTF-8. */
final class Encodings {
  /** Bytes by which an encoding is told, at most. */
  static final int LONGEST_MARK = 4;

  /** Bytes of a character at most. */
  static final int LONGEST_CHARACTER = 4;

  private Encodings() {}

  /**
   * @param n so many bytes of the text are there; all, or enough to tell
   * @throws ProblemsException when they are of an encoding with wider units
   */
  static void refuseWide(String file, byte[] first, int n) {
    if (startsWith(first, n, 0xFF, 0xFE, 0, 0) || startsWith(first, n, 0, 0, 0xFE, 0xFF)) {
      throw refuse(Mark.startOf(file), "UTF-32");
    }
    boolean marked = startsWith(first, n, 0xFF, 0xFE) || startsWith(first, n, 0xFE, 0xFF);
    boolean unmarked = n >= 2 && (first[0] == 0 ^ first[1] == 0);
    if (marked || unmarked) {
      throw refuse(Mark.startOf(file), "UTF-16");
    }
  }

  /** Bytes of the byte-order mark of a text; 0 where it has none. */
  static int lengthOfMark(byte[] first, int n) {
    return startsWith(first, n, 0xEF, 0xBB, 0xBF) ? 3 : 0;
  }

  private static boolean startsWith(byte[] first, int n, int... expected) {
    if (n < expected.length) {
      return false;
    }
    for (int i = 0; i < expected.length; i++) {
      if ((first[i] & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  private static ProblemsException refuse(Mark at, String encoding) {
    return ProblemsException.of(
        at,
        "the file is written in " + encoding + ", not in UTF-8",
        "save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')");
  }

  static ProblemsException notUtf8(Mark at) {
    return ProblemsException.of(
        at,
        "the file is not written in UTF-8 but, by its looks, in Windows-1252",
        "save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')");
  }

  static ProblemsException nul(Mark at) {
    return ProblemsException.of(
        at,
        "a NUL character stands in the file, which is then no text",
        "write the file as plain UTF-8 text");
  }

  /** Bytes of the character that begins with this one, from 1 to 255; 1 of one that begins none. */
  static int length(int first) {
    if (first < 0xC2 || first > 0xF4) {
      return 1;
    }
    return first < 0xE0 ? 2 : first < 0xF0 ? 3 : LONGEST_CHARACTER;
  }

  /**
   * Whether bytes are a character as UTF-8 writes it, neither longer than need be nor half of one.
   *
   * @param n bytes that are there of it, at least one
   */
  static boolean isCharacter(byte[] bytes, int at, int n) {
    int first = bytes[at] & 0xFF;
    if (first < 0x80) {
      return true;
    }
    if (first < 0xC2 || first > 0xF4 || n < length(first)) {
      return false;
    }
    int second = bytes[at + 1] & 0xFF;
    int least = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
    int most = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
    boolean all = second >= least && second <= most;
    for (int i = 2; i < n; i++) {
      all &= (bytes[at + i] & 0xC0) == 0x80;
    }
    return all;
  }
}
