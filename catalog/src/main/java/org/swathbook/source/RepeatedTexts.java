package org.swathbook.source;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Texts of a column that repeats most of them: each is one string as long as no other text has
 * taken its place. The table grows with the texts of the column, for most files are short.
 */
final class RepeatedTexts {
  /** Places at first, and at most; powers of two. */
  private static final int FEW = 32;

  private static final int MANY = 1024;

  /** A column with so many texts one after the other that were not remembered repeats none. */
  private static final int NEVER_AGAIN = 4096;

  private @Nullable String[] texts = new String[FEW];
  private byte[][] signs = new byte[FEW][];

  /** Texts made since the table was last grown. */
  private int made;

  /** Texts since the last one that was remembered. */
  private int unknown;

  /** The text of some bytes of UTF-8, at least one. */
  String of(byte[] bytes, int start, int length) {
    if (unknown == NEVER_AGAIN) {
      return new String(bytes, start, length, StandardCharsets.UTF_8);
    }
    int hash = hash(bytes, start, length);
    int place = hash & (texts.length - 1);
    byte[] there = signs[place];
    String text = texts[place];
    if (text != null && there != null && there.length == length && isAt(there, bytes, start)) {
      unknown = 0;
      return text;
    }
    unknown++;
    made++;
    if (made > texts.length && texts.length < MANY) {
      texts = new String[Math.min(MANY, 4 * texts.length)];
      signs = new byte[texts.length][];
      made = 0;
      place = hash & (texts.length - 1);
    }
    String fresh = new String(bytes, start, length, StandardCharsets.UTF_8);
    signs[place] = Arrays.copyOfRange(bytes, start, start + length);
    texts[place] = fresh;
    return fresh;
  }

  private static int hash(byte[] bytes, int start, int length) {
    int last = start + length - 1;
    int hash = length;
    hash = 31 * hash + bytes[start];
    hash = 31 * hash + bytes[start + length / 2];
    hash = 31 * hash + bytes[Math.max(start, last - 3)];
    hash = 31 * hash + bytes[Math.max(start, last - 1)];
    hash = 31 * hash + bytes[last];
    return hash ^ hash >>> 10;
  }

  private static boolean isAt(byte[] text, byte[] bytes, int start) {
    for (int i = text.length - 1; i >= 0; i--) {
      if (text[i] != bytes[start + i]) {
        return false;
      }
    }
    return true;
  }
}
