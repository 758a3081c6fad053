package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.season.SeasonWalk;

/**
 * What a changed catalog breaks or frees: programs that are planned and applications of the season
 * that were made, judged under the one and under the other.
 */
public final class CatalogImpact {

  /**
   * A rule whose word on something changed.
   *
   * @param program its name; empty for an application
   * @param application the id of its pass in the journal; empty for a program
   * @param before the gravest finding of that rule under the first catalog; empty for none
   */
  public record Hit(
      Field field,
      Optional<String> program,
      Optional<String> application,
      RuleId rule,
      Optional<Finding> before,
      Optional<Finding> after) {}

  private CatalogImpact() {}

  /** Hits of a program; of notes only those that were more, or become more. */
  public static List<Hit> ofProgram(
      Book before, Book after, Field field, Program inBefore, Program inAfter, LocalDate today) {
    return hits(
        field,
        Optional.of(inAfter.name()),
        Optional.empty(),
        program(before, field, inBefore, today),
        program(after, field, inAfter, today));
  }

  private static List<Finding> program(Book book, Field field, Program program, LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, field, today);
    return ProgramJudge.judge(book, traces, SeasonWalk.walk(book, traces, program), today)
        .findings();
  }

  /** Hits of what the journal holds of the season of a field, pass by pass. */
  public static List<Hit> ofJournal(Book before, Book after, Field field) {
    List<Hit> out = new ArrayList<>();
    Set<String> passes = new LinkedHashSet<>();
    for (Application a : after.journal().of(field.id())) {
      if (a.season() == after.season()) {
        passes.add(a.pass());
      }
    }
    for (String pass : passes) {
      out.addAll(
          hits(
              field,
              Optional.empty(),
              Optional.of(pass),
              applied(before, field, pass),
              applied(after, field, pass)));
    }
    return out;
  }

  private static List<Finding> applied(Book book, Field field, String pass) {
    List<Application> rows =
        book.journal().of(field.id()).stream().filter(a -> a.pass().equals(pass)).toList();
    if (rows.isEmpty()) {
      return List.of();
    }
    Mix mix = Mix.of(rows.stream().map(Application::dose).toList());
    LocalDate date = rows.get(0).date();
    TraceSet traces = TraceBuilder.build(book, field, date);
    var timing = Timings.on(traces, date);
    Findings out = Findings.all();
    for (UseFacts facts : UseJudge.facts(book, traces, 0, timing, mix)) {
      out.addAll(UseJudge.judge(facts));
    }
    out.addAll(
        SequenceJudge.judge(
            book, field, List.of(new DatedMix(0, date, PassPositions.of(traces, timing), mix))));
    return out.withoutPass().sorted();
  }

  private static List<Hit> hits(
      Field field,
      Optional<String> program,
      Optional<String> application,
      List<Finding> before,
      List<Finding> after) {
    Set<RuleId> rules = new java.util.TreeSet<>();
    before.forEach(f -> rules.add(f.rule()));
    after.forEach(f -> rules.add(f.rule()));
    List<Hit> out = new ArrayList<>();
    for (RuleId rule : rules) {
      Optional<Finding> was = gravest(before, rule);
      Optional<Finding> is = gravest(after, rule);
      boolean same = was.map(Finding::severity).equals(is.map(Finding::severity));
      boolean matters =
          was.filter(CatalogImpact::isMore).isPresent()
              || is.filter(CatalogImpact::isMore).isPresent();
      if (!same && matters) {
        out.add(new Hit(field, program, application, rule, was, is));
      }
    }
    return out;
  }

  private static boolean isMore(Finding f) {
    return f.severity() != Severity.NOTE;
  }

  private static Optional<Finding> gravest(List<Finding> all, RuleId rule) {
    return all.stream()
        .filter(f -> f.rule().equals(rule))
        .min(java.util.Comparator.comparing(Finding::severity));
  }
}
