package org.swathbook.rules.label;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.StateLimit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
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

/** A use that is registered for some states or years only. */
public final class RegistrationStatusRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("registration-status"),
          Severity.BLOCK,
          "Is the use registered in this state and in this year?",
          "The use names label years and the pass lies outside them, or it names states and the"
              + " field's is not among them or is refused. A field that names no state is asked.",
          List.of(
              "US federal law on pesticides (FIFRA): a registration holds for its years and states;"
                  + " from memory"),
          "dicamba over soybean a year after the last of its label years; a use for Kansas alone in"
              + " a Nebraska field",
          "dicamba over soybean in a label year");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    if (use.registration().years() instanceof Stated.Value<Registration.LabelYears> years) {
      int year = facts.date().getYear();
      if (year < years.value().first() || year > years.value().last()) {
        out.block(this, facts.about(), () -> outOfYears(facts, year, years));
      }
    }
    StateLimit states = use.registration().states();
    if (states.only().isEmpty() && states.refused().isEmpty()) {
      return;
    }
    if (facts.field().state().isEmpty()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "state of the field: " + facts.ingredient().name() + " is not registered in all",
                  Where.field("state")));
    } else if (!allows(states, facts.field().state().get())) {
      out.block(this, facts.about(), () -> outOfStates(facts, states));
    }
  }

  private static boolean allows(StateLimit states, String state) {
    return (states.only().isEmpty() || holds(states.only(), state))
        && !holds(states.refused(), state);
  }

  private static boolean holds(Set<String> states, String state) {
    String code = state.strip().toUpperCase(Locale.ROOT);
    return states.stream().anyMatch(s -> s.strip().toUpperCase(Locale.ROOT).equals(code));
  }

  private static Text outOfYears(
      UseFacts facts, int year, Stated.Value<Registration.LabelYears> years) {
    String limit = years.value().first() + " to " + years.value().last();
    return Text.of(
            Say.start(facts.ingredient())
                + " on "
                + facts.cropName()
                + " "
                + facts.when()
                + " is registered for "
                + limit
                + " only; this pass is in "
                + year
                + ".",
            years.source().text())
        .compared(Integer.toString(year), limit)
        .cleared("the current label, if the use was registered anew; or another active");
  }

  private static Text outOfStates(UseFacts facts, StateLimit states) {
    String limit =
        states.only().isEmpty()
            ? "not in " + words(states.refused())
            : "in " + words(states.only()) + " only";
    String state = facts.field().state().orElseThrow();
    return Text.of(
            Say.start(facts.ingredient())
                + " on "
                + facts.cropName()
                + " "
                + facts.when()
                + " is registered "
                + limit
                + "; this field is in "
                + state
                + ".",
            "the catalog's registration of the use")
        .compared(state, limit)
        .cleared("another active");
  }

  private static String words(Set<String> states) {
    return states.stream().sorted().collect(Collectors.joining(", "));
  }
}
