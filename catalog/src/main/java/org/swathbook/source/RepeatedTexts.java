package org.swathbook.source;

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
  private char[][] signs = new char[FEW][];

  /** Texts made since the table was last grown. */
  private int made;

  /** Texts since the last one that was remembered. */
  private int unknown;

  /** The text of some signs, at least one. */
  String of(char[] chars, int start, int length) {
    if (unknown == NEVER_AGAIN) {
      return new String(chars, start, length);
    }
    int hash = hash(chars, start, length);
    int place = hash & (texts.length - 1);
    char[] there = signs[place];
    String text = texts[place];
    if (text != null && there != null && there.length == length && isAt(there, chars, start)) {
      unknown = 0;
      return text;
    }
    unknown++;
    made++;
    if (made > texts.length && texts.length < MANY) {
      texts = new String[Math.min(MANY, 4 * texts.length)];
      signs = new char[texts.length][];
      made = 0;
      place = hash & (texts.length - 1);
    }
    String fresh = new String(chars, start, length);
    signs[place] = Arrays.copyOfRange(chars, start, start + length);
    texts[place] = fresh;
    return fresh;
  }

  private static int hash(char[] chars, int start, int length) {
    int last = start + length - 1;
    int hash = length;
    hash = 31 * hash + chars[start];
    hash = 31 * hash + chars[start + length / 2];
    hash = 31 * hash + chars[Math.max(start, last - 3)];
    hash = 31 * hash + chars[Math.max(start, last - 1)];
    hash = 31 * hash + chars[last];
    return hash ^ hash >>> 10;
  }

  private static boolean isAt(char[] text, char[] chars, int start) {
    for (int i = text.length - 1; i >= 0; i--) {
      if (text[i] != chars[start + i]) {
        return false;
      }
    }
    return true;
  }
}
