package org.swathbook.catalog;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A site of action by its HRAC/WSSA number. Numbers of older lists are accepted and mean the
 * current one: 7 is 5, 8 and 16 are 15, 17 is 0, 20 and 21 are 29 (harmonised list of 2020; the old
 * pairs from memory).
 */
public record Site(int number) implements Comparable<Site> {

  private static final Map<Integer, Integer> OLD_NUMBERS =
      Map.of(7, 5, 8, 15, 16, 15, 17, 0, 20, 29, 21, 29);

  public static Site of(int number) {
    return new Site(OLD_NUMBERS.getOrDefault(number, number));
  }

  /** Reads a site number; empty when the text is no whole number of 0 to 40. */
  public static Optional<Site> find(String text) {
    String t = text.strip();
    if (t.isEmpty() || t.length() > 2 || !isDigits(t) || Integer.parseInt(t) > 40) {
      return Optional.empty();
    }
    return Optional.of(of(Integer.parseInt(t)));
  }

  private static boolean isDigits(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Site o && number == o.number;
  }

  @Override
  public int hashCode() {
    return number;
  }

  @Override
  public int compareTo(Site other) {
    return Integer.compare(number, other.number);
  }

  @Override
  public String toString() {
    return Integer.toString(number);
  }
}
