package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** The same parent active too soon after its last application. */
public final class RepeatIntervalRule implements SequenceRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("repeat-interval"),
          Severity.BLOCK,
          "Has the active been on this ground too short a time ago?",
          "Whole days since the last application of any form of the active are fewer than the"
              + " interval; the application day is day 0, and day n is legal when n is at least the"
              + " interval. Both the dates that a plan prints and the median spray days must keep it.",
          List.of(Say.COMMON_PRACTICE),
          "2,4-D choline 8 days after the first, where 12 are needed",
          "2,4-D choline on day 12");

  /** No interval between two applications runs longer across two seasons (common practice). */
  private static final long LONGEST_DAYS = 60;

  @Override
  public RuleCard card() {
    return CARD;
  }

  private record Least(int days, Source source) {}

  /** The last application before a pass, and the whole days between. */
  private record Since(LedgerEntry last, long days) {}

  @Override
  public void judge(SequenceFacts facts, Findings out) {
    Set<String> done = new TreeSet<>();
    for (Dose dose : facts.mix().doses()) {
      for (ActiveDose active : dose.actives()) {
        Ingredient i = active.ingredient();
        if (!done.add(i.id().value())) {
          continue;
        }
        Optional<Since> since =
            Stream.of(
                    since(facts, i, facts.ledger(), facts.date()),
                    since(facts, i, facts.plannedLedger(), facts.plannedDate()))
                .flatMap(Optional::stream)
                .min((a, b) -> Long.compare(a.days(), b.days()));
        if (since.isPresent()) {
          About about = facts.about().withIngredient(i.id()).withProduct(dose.product().id());
          judge(facts, dose, i, since.get(), about, out);
        }
      }
    }
  }

  private static Optional<Since> since(
      SequenceFacts facts, Ingredient i, Ledger ledger, LocalDate on) {
    return ledger
        .lastApplication(i.capGroup(), on)
        .map(e -> new Since(e, e.daysTo(on)))
        .filter(s -> s.last().season() == facts.book().season() || s.days() <= LONGEST_DAYS);
  }

  private void judge(
      SequenceFacts facts, Dose dose, Ingredient i, Since since, About about, Findings out) {
    List<Use> here =
        LabelUses.fitting(i, facts.field(), facts.positions(), dose.product().formulation());
    if (here.stream().anyMatch(u -> u.repeatDays().isNone())) {
      return;
    }
    Optional<Least> least = Optional.empty();
    for (Use u : here) {
      if (u.repeatDays() instanceof Stated.Value<Integer> v
          && (least.isEmpty() || v.value() < least.get().days())) {
        least = Optional.of(new Least(v.value(), v.source()));
      }
    }
    if (least.isEmpty()) {
      here.stream()
          .findFirst()
          .ifPresent(
              u ->
                  out.ask(
                      this,
                      about,
                      () ->
                          new Lookup(
                              "least days between two applications of " + i.name(),
                              Where.use(i, u, "repeat", "minimum interval between applications"))));
      return;
    }
    LedgerEntry last = since.last();
    long days = since.days();
    if (days < least.get().days()) {
      Least l = least.get();
      LocalDate first = last.date().plusDays(l.days());
      out.block(
          this,
          about,
          () ->
              Text.of(
                      Say.start(i)
                          + ": "
                          + Say.days(days)
                          + " after the application of "
                          + Say.date(last.date())
                          + ", where "
                          + l.days()
                          + " are needed.",
                      l.source().text())
                  .compared(Say.days(days), Say.days(l.days()))
                  .cleared("on or after " + Say.date(first) + ", or another active"));
    }
  }
}
