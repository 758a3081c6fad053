package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.swathbook.catalog.Catalog;
import org.swathbook.check.Judgement;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;

/** The verdict with everything behind it. */
final class FindingText {
  /** Rows of questions shown before the rest is only counted. */
  static final int ASKS_SHOWN = 8;

  private static final String NOT_VERIFIED = "not-verified";

  private final Catalog catalog;

  FindingText(Catalog catalog) {
    this.catalog = catalog;
  }

  void verdict(Page page, Judgement judgement) {
    page.line(summary(judgement));
    judgement.findings().forEach(f -> finding(page, f, judgement.asks()));
    page.blank();
  }

  /** {@code Verdict: caution (1 warning, 18 values to look up)}. */
  static String summary(Judgement judgement) {
    List<String> parts = new ArrayList<>();
    for (Severity s : Severity.values()) {
      int n = (int) judgement.findings().stream().filter(f -> f.severity() == s).count();
      if (s == Severity.ASK) {
        n = judgement.asks().size();
      }
      if (n > 0) {
        parts.add(
            switch (s) {
              case BLOCK -> n + " blocking";
              case WARN -> Figures.counted(n, "warning", "warnings");
              case ASK -> Figures.counted(n, "value to look up", "values to look up");
              case NOTE -> Figures.counted(n, "note", "notes");
            });
      }
    }
    String verdict = "Verdict: " + judgement.verdict().word();
    return parts.isEmpty() ? verdict : verdict + " (" + String.join(", ", parts) + ")";
  }

  void finding(Page page, Finding f, List<Ask> asks) {
    String about = about(f.about());
    String severity = f.severity().word().toUpperCase(Locale.ROOT);
    page.line(
        "  "
            + severity
            + " ".repeat(6 - severity.length())
            + f.rule()
            + (about.isEmpty() ? "" : " · " + about));
    if (f.rule().value().equals(NOT_VERIFIED) && f.severity() == Severity.ASK) {
      asks(page, asks);
      return;
    }
    page.wrapped(8, f.message());
    String compared = compared(f);
    if (!compared.isEmpty()) {
      page.wrapped(8, compared);
    }
    if (!f.remedy().isBlank()) {
      page.wrapped(8, 10, "Remedy: " + f.remedy());
    }
  }

  private static String compared(Finding f) {
    List<String> parts = new ArrayList<>();
    if (!f.limit().isBlank()) {
      parts.add("limit " + f.limit());
    }
    if (!f.actual().isBlank()) {
      parts.add("here " + f.actual());
    }
    if (!f.source().isBlank()) {
      parts.add("source: " + f.source());
    }
    return String.join("; ", parts);
  }

  private String about(About about) {
    List<String> parts = new ArrayList<>();
    about.pass().ifPresent(p -> parts.add("pass " + (p + 1)));
    about.ingredient().ifPresent(i -> parts.add(catalog.ingredient(i).name()));
    about
        .product()
        .map(catalog::product)
        // An active brought by a product of its own name needs no second word.
        .filter(p -> about.ingredient().isEmpty() || !p.isSingle())
        .ifPresent(p -> parts.add(p.name()));
    about.weed().ifPresent(w -> parts.add(catalog.weed(w).name()));
    return String.join(" · ", parts);
  }

  /** In place of the message, which holds all rows: questions on the same thing share a row. */
  private void asks(Page page, List<Ask> asks) {
    Map<String, Set<String>> bySubject = new LinkedHashMap<>();
    for (Ask a : asks) {
      String subject =
          a.about()
              .ingredient()
              .map(i -> catalog.ingredient(i).name())
              .or(() -> a.about().product().map(p -> catalog.product(p).name()))
              .orElse(a.where());
      bySubject.computeIfAbsent(subject, s -> new LinkedHashSet<>()).add(a.what());
    }
    int all = bySubject.values().stream().mapToInt(Set::size).sum();
    page.line("        " + Figures.counted(all, "thing", "things") + " to look up:");
    int shown = 0;
    int told = 0;
    for (Map.Entry<String, Set<String>> row : bySubject.entrySet()) {
      if (shown == ASKS_SHOWN) {
        break;
      }
      page.wrapped(8, 10, "- " + row.getKey() + ": " + String.join("; ", row.getValue()));
      shown++;
      told += row.getValue().size();
    }
    if (all > told) {
      page.line("        and " + (all - told) + " more – see --json");
    }
  }
}
