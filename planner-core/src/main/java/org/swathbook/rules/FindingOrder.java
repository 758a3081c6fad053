package org.swathbook.rules;

import java.util.Optional;

/**
 * The orders of findings and of asks. They are spelled out: what the platform chains together of
 * many keys is made anew by every start, which takes longer than a short command sorts.
 */
final class FindingOrder {
  private FindingOrder() {}

  static int ofFindings(Finding a, Finding b) {
    int c = a.severity().compareTo(b.severity());
    c = c != 0 ? c : Integer.compare(pass(a), pass(b));
    c = c != 0 ? c : a.rule().compareTo(b.rule());
    c = c != 0 ? c : missingFirst(a.about().ingredient(), b.about().ingredient());
    c = c != 0 ? c : missingFirst(a.about().weed(), b.about().weed());
    c = c != 0 ? c : missingFirst(a.about().product(), b.about().product());
    c = c != 0 ? c : missingFirst(a.about().neighbor(), b.about().neighbor());
    return c != 0 ? c : a.message().compareTo(b.message());
  }

  static int ofAsks(Ask a, Ask b) {
    int c = missingFirst(a.about().ingredient(), b.about().ingredient());
    c = c != 0 ? c : a.rule().compareTo(b.rule());
    c = c != 0 ? c : a.what().compareTo(b.what());
    c = c != 0 ? c : missingFirst(a.about().product(), b.about().product());
    return c != 0 ? c : missingFirst(a.about().weed(), b.about().weed());
  }

  private static int pass(Finding f) {
    return f.about().pass().orElse(Integer.MAX_VALUE);
  }

  private static <T extends Comparable<T>> int missingFirst(Optional<T> a, Optional<T> b) {
    return a.isPresent() && b.isPresent()
        ? a.get().compareTo(b.get())
        : Boolean.compare(a.isPresent(), b.isPresent());
  }
}
