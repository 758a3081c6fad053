package org.swathbook.catalog;

import java.util.Locale;

/**
 * One spelling for names: lower case, every run of characters other than letters, digits and dots
 * one hyphen.
 */
public final class Slug {
  private Slug() {}

  public static String of(String name) {
    StringBuilder out = new StringBuilder();
    boolean gap = false;
    for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
      if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.') {
        if (gap && out.length() > 0) {
          out.append('-');
        }
        gap = false;
        out.append(c);
      } else {
        gap = true;
      }
    }
    return out.toString();
  }
}
