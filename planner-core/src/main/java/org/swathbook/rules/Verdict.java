package org.swathbook.rules;

import java.util.Collection;

/**
 * What all findings together amount to. Nothing is clear while something that matters is not known.
 */
public enum Verdict {
  CLEAR,
  UNVERIFIED,
  CAUTION,
  BLOCKED;

  public static Verdict of(Collection<Finding> findings) {
    Verdict worst = CLEAR;
    for (Finding f : findings) {
      Verdict v =
          switch (f.severity()) {
            case BLOCK -> BLOCKED;
            case WARN -> CAUTION;
            case ASK -> UNVERIFIED;
            case NOTE -> CLEAR;
          };
      if (v.compareTo(worst) > 0) {
        worst = v;
      }
    }
    return worst;
  }

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
