package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;

/** A calendar day after which a use is over, whatever the crop's stage. */
public final class CutoffDateRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("cutoff-date"),
          Severity.BLOCK,
          "Is the last calendar date of this use over?",
          "The pass comes after the last date of the first row that names the field's state or all"
              + " states; the last date itself is legal. Where the field names no state, the"
              + " earliest date of any row decides what is safe, and the state is asked in between.",
          List.of(
              "US Environmental Protection Agency 2020 and state rules as reported by DTN 2024,"
                  + " dicamba over soybean"),
          "dicamba over soybean on 5 Jul, where 30 Jun is the last date",
          "dicamba over soybean on 20 Jun");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()
        || !(facts.chosen().get().registration().cutoffs()
            instanceof Stated.Value<List<Registration.Cutoff>> rows)) {
      return;
    }
    Optional<String> state = facts.field().state();
    if (state.isPresent()) {
      rows.value().stream()
          .filter(c -> holds(c, state.get()))
          .findFirst()
          .ifPresent(c -> judge(facts, c.last(), rows.source(), out));
      return;
    }
    LocalDate earliest = date(facts, rows.value(), true);
    LocalDate latest = date(facts, rows.value(), false);
    boolean everywhere = rows.value().stream().anyMatch(c -> c.states().isEmpty());
    if (everywhere && facts.date().isAfter(latest)) {
      judge(facts, MonthDay.from(latest), rows.source(), out);
    } else if (facts.date().isAfter(earliest)) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "state of the field, on which the last date of "
                      + facts.ingredient().name()
                      + " depends",
                  Where.field("state")));
    }
  }

  private static boolean holds(Registration.Cutoff row, String state) {
    String code = state.strip().toUpperCase(Locale.ROOT);
    return row.states().isEmpty()
        || row.states().stream().anyMatch(s -> s.strip().toUpperCase(Locale.ROOT).equals(code));
  }

  private static LocalDate date(UseFacts facts, List<Registration.Cutoff> rows, boolean earliest) {
    return rows.stream()
        .map(c -> c.last().atYear(facts.date().getYear()))
        .reduce((a, b) -> a.isBefore(b) == earliest ? a : b)
        .orElse(facts.date());
  }

  private void judge(UseFacts facts, MonthDay lastDay, Source source, Findings out) {
    LocalDate last = lastDay.atYear(facts.date().getYear());
    if (facts.date().isAfter(last)) {
      out.block(
          this,
          facts.about(),
          () ->
              Text.of(
                      Say.start(facts.ingredient())
                          + " on "
                          + facts.cropName()
                          + " ends on "
                          + Say.date(last)
                          + "; this pass is on "
                          + Say.date(facts.date())
                          + ".",
                      source.text())
                  .compared(Say.date(facts.date()), Say.date(last))
                  .cleared("on or before " + Say.date(last) + ", or another active"));
    }
  }
}
