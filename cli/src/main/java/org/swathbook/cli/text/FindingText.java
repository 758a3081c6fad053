package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.swathbook.catalog.Catalog;
import org.swathbook.check.Judgement;
import org.swathbook.rules.About;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;

/** The verdict with everything behind it. */
public final class FindingText {
  private static final String NOT_VERIFIED = "not-verified";

  private final Catalog catalog;

  public FindingText(Catalog catalog) {
    this.catalog = catalog;
  }

  void verdict(Page page, Judgement judgement) {
    verdict(page, judgement, f -> true);
  }

  /** The verdict on all findings, of which only some are shown. */
  void verdict(Page page, Judgement judgement, Predicate<Finding> shown) {
    Shown all = shown(judgement, shown);
    page.line(all.summary());
    all.findings().forEach(f -> finding(page, f));
    page.blank();
  }

  /**
   * A verdict in words.
   *
   * @param summary {@code Verdict: caution (1 warning, 18 things to look up)}
   */
  public record Shown(String summary, List<Said> findings) {
    public Shown {
      findings = List.copyOf(findings);
    }
  }

  /**
   * A finding in words.
   *
   * @param severity in one word, in capitals
   * @param title rule and what it is about
   * @param lines what it says; later lines of {@code hanging} paragraphs are set in
   */
  public record Said(String severity, String title, List<Paragraph> lines) {
    public Said {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A paragraph of a finding.
   *
   * @param hanging whether its later lines are set in
   */
  public record Paragraph(String words, boolean hanging) {}

  /** The verdict on all findings, with the words of those that are to be shown. */
  public Shown shown(Judgement judgement, Predicate<Finding> shown) {
    Map<Finding, List<Integer>> grouped = grouped(judgement.findings());
    AskText asks = new AskText(catalog, judgement.asks());
    List<Said> said = new ArrayList<>();
    grouped.forEach(
        (finding, passes) -> {
          if (!shown.test(finding)) {
            return;
          }
          // In place of the message, which holds all rows in one sentence.
          boolean asked =
              finding.rule().value().equals(NOT_VERIFIED) && finding.severity() == Severity.ASK;
          said.add(said(finding, passes, asked ? asks.paragraphs() : paragraphs(finding)));
        });
    return new Shown(summary(judgement, grouped, asks), said);
  }

  /** Findings without a judgement around them, in words. */
  public Shown said(List<Finding> findings) {
    List<Said> said = new ArrayList<>();
    grouped(findings)
        .forEach((finding, passes) -> said.add(said(finding, passes, paragraphs(finding))));
    return new Shown("", said);
  }

  /** Findings without a judgement around them. */
  void findings(Page page, List<Finding> findings) {
    said(findings).findings().forEach(f -> finding(page, f));
  }

  /** {@code Verdict: caution (1 warning, 18 things to look up)}. */
  private static String summary(
      Judgement judgement, Map<Finding, List<Integer>> grouped, AskText asks) {
    List<String> parts = new ArrayList<>();
    for (Severity s : Severity.values()) {
      int n =
          s == Severity.ASK
              ? asks.count()
              : (int) grouped.keySet().stream().filter(f -> f.severity() == s).count();
      if (n > 0) {
        parts.add(
            switch (s) {
              case BLOCK -> n + " blocking";
              case WARN -> Figures.counted(n, "warning", "warnings");
              case ASK -> Figures.counted(n, "thing to look up", "things to look up");
              case NOTE -> Figures.counted(n, "note", "notes");
            });
      }
    }
    String verdict = "Verdict: " + judgement.verdict().word();
    return parts.isEmpty() ? verdict : verdict + " (" + String.join(", ", parts) + ")";
  }

  /** What is said alike of several passes, once with the numbers of the passes. */
  private static Map<Finding, List<Integer>> grouped(List<Finding> findings) {
    Map<Finding, List<Integer>> out = new LinkedHashMap<>();
    for (Finding f : findings) {
      About a = f.about();
      Finding anywhere =
          new Finding(
              f.rule(),
              f.severity(),
              f.message(),
              f.limit(),
              f.actual(),
              f.source(),
              f.remedy(),
              a.withoutPass());
      List<Integer> passes = out.computeIfAbsent(anywhere, k -> new ArrayList<>());
      a.pass().ifPresent(p -> passes.add(p + 1));
    }
    return out;
  }

  private Said said(Finding f, List<Integer> passes, List<Paragraph> lines) {
    String about = about(f.about(), passes);
    return new Said(
        f.severity().word().toUpperCase(Locale.ROOT),
        f.rule() + (about.isEmpty() ? "" : " · " + about),
        lines);
  }

  private static List<Paragraph> paragraphs(Finding f) {
    List<Paragraph> out = new ArrayList<>();
    out.add(new Paragraph(f.message(), false));
    String compared = compared(f);
    if (!compared.isEmpty()) {
      out.add(new Paragraph(compared, false));
    }
    if (!f.remedy().isBlank()) {
      out.add(new Paragraph("Remedy: " + f.remedy(), true));
    }
    return out;
  }

  private static void finding(Page page, Said f) {
    page.line("  " + f.severity() + " ".repeat(6 - f.severity().length()) + f.title());
    f.lines().forEach(p -> page.wrapped(8, p.hanging() ? 10 : 8, p.words()));
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

  private String about(About about, List<Integer> passes) {
    List<String> parts = new ArrayList<>();
    if (!passes.isEmpty()) {
      List<String> numbers = passes.stream().distinct().map(n -> Integer.toString(n)).toList();
      parts.add((numbers.size() == 1 ? "pass " : "passes ") + Figures.list(numbers));
    }
    about.ingredient().ifPresent(i -> parts.add(catalog.ingredient(i).name()));
    about
        .product()
        .map(catalog::product)
        // An active brought by a product of its own name needs no second word.
        .filter(p -> about.ingredient().isEmpty() || !p.isSingle())
        .ifPresent(p -> parts.add(p.name()));
    about.weed().ifPresent(w -> parts.add(catalog.weed(w).name()));
    about.neighbor().ifPresent(parts::add);
    return String.join(" · ", parts);
  }
}
