package org.swathbook.source;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The known word that a mistyped one was probably meant to be: fewest insertions, deletions,
 * replacements and swaps of neighbours, case counting for nothing.
 */
public final class Nearest {
  private Nearest() {}

  /** The nearest word, empty when none is near: at most a third of the letters may differ. */
  public static Optional<String> of(String typed, Collection<String> known) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    String best = null;
    int bestDistance = Math.max(1, Math.min(wanted.length(), 30) / 3) + 1;
    for (String word : new TreeSet<>(known)) {
      String candidate = word.toLowerCase(Locale.ROOT);
      if (Math.abs(candidate.length() - wanted.length()) < bestDistance) {
        int d = distance(wanted, candidate);
        if (d < bestDistance) {
          best = word;
          bestDistance = d;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** {@code did you mean 'rate'?}, or the known words when none is near. */
  public static String hint(String typed, Collection<String> known) {
    return of(typed, known)
        .map(word -> "did you mean '" + word + "'?")
        .orElseGet(() -> "write one of: " + listing(known));
  }

  private static String listing(Collection<String> known) {
    int most = 30;
    String shown = String.join(", ", known.stream().limit(most).toList());
    return known.size() > most ? shown + ", …" : shown;
  }

  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        d[i][j] = Math.min(replace, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
