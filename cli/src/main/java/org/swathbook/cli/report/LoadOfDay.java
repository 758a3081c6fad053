package org.swathbook.cli.report;

import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;

/**
 * One of several loads of a day.
 *
 * @param name of its mix
 * @param blockedBy ids of the rules that block it, each once; none when it is not blocked
 */
public record LoadOfDay(String name, Field field, List<String> blockedBy) {
  public LoadOfDay {
    blockedBy = List.copyOf(blockedBy);
  }

  public static LoadOfDay of(String name, Field field, Judgement judgement) {
    return new LoadOfDay(
        name,
        field,
        judgement.findings().stream()
            .filter(f -> f.severity() == Severity.BLOCK)
            .map(Finding::rule)
            .map(r -> r.value())
            .distinct()
            .toList());
  }

  public boolean isBlocked() {
    return !blockedBy.isEmpty();
  }
}
