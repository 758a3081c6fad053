package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.ledger.OneApplication;
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

/** More applications of a parent active in a season than its uses on this crop allow. */
public final class ApplicationCountRule implements SequenceRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("application-count"),
          Severity.BLOCK,
          "Is this one application of the active too many?",
          "Applications of the season up to and with this one are more than any use of the active, or of"
              + " this form of it, on the crop allows, or more in this part of the crop's life than its use there allows. What"
              + " went on within two days is one application.",
          List.of(Say.COMMON_PRACTICE),
          "a third glufosinate where two are allowed",
          "a second one made half on Monday, half on Tuesday");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(SequenceFacts facts, Findings out) {
    Set<String> done = new TreeSet<>();
    for (Dose dose : facts.mix().doses()) {
      for (ActiveDose active : dose.actives()) {
        if (done.add(active.ingredient().id().value())) {
          About about =
              facts
                  .about()
                  .withIngredient(active.ingredient().id())
                  .withProduct(dose.product().id());
          judge(facts, dose, active.ingredient(), about, out);
        }
      }
    }
  }

  private record Most(int count, Source source) {}

  private void judge(SequenceFacts facts, Dose dose, Ingredient i, About about, Findings out) {
    List<OneApplication> all =
        facts.ledger().applications(i.capGroup(), facts.book().season(), facts.date());
    if (all.size() < 2) {
      return;
    }
    List<LabelUses.Of> ofGroup =
        LabelUses.ofGroup(facts.book().catalog(), i.capGroup(), facts.field());
    List<Use> here =
        LabelUses.fitting(i, facts.field(), facts.positions(), dose.product().formulation());
    Optional<Use> unknown = here.stream().filter(u -> u.applications().isUnknown()).findFirst();
    if (unknown.isPresent()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "most applications of " + i.name() + " in a season of " + facts.field().crop(),
                  Where.use(i, unknown.get(), "applications", "maximum number of applications")));
      return;
    }
    Optional<Most> season = ofSeason(ofGroup.stream().map(LabelUses.Of::use).toList());
    if (season.isPresent() && all.size() > season.get().count()) {
      out.block(this, about, () -> text(i, all, season.get(), "a season", facts));
      return;
    }
    List<OneApplication> ofForm =
        all.stream()
            .filter(
                a ->
                    a.entries().stream().anyMatch(e -> e.active().ingredient().id().equals(i.id())))
            .toList();
    Optional<Most> form =
        ofSeason(
            ofGroup.stream()
                .filter(o -> o.ingredient().id().equals(i.id()))
                .map(LabelUses.Of::use)
                .toList());
    if (form.isPresent() && ofForm.size() > form.get().count()) {
      out.block(this, about, () -> text(i, ofForm, form.get(), "a season", facts));
      return;
    }
    if (here.stream().anyMatch(u -> u.applications().isNone())) {
      return;
    }
    List<OneApplication> inPhase =
        all.stream()
            .filter(
                a ->
                    a.entries().stream()
                        .anyMatch(
                            e ->
                                e.positions().isEmpty()
                                    || e.positions().stream()
                                        .anyMatch(facts.positions()::contains)))
            .toList();
    Optional<Most> phase = most(here);
    if (phase.isPresent() && inPhase.size() > phase.get().count()) {
      out.block(this, about, () -> text(i, inPhase, phase.get(), "this part of the season", facts));
    }
  }

  /** A use whose count nobody stated may allow more than those that state one. */
  private static Optional<Most> ofSeason(List<Use> uses) {
    boolean open = uses.stream().anyMatch(u -> !(u.applications() instanceof Stated.Value));
    return open ? Optional.empty() : most(uses);
  }

  private static Optional<Most> most(List<Use> uses) {
    Optional<Most> most = Optional.empty();
    for (Use u : uses) {
      if (u.applications() instanceof Stated.Value<Integer> v
          && (most.isEmpty() || v.value() > most.get().count())) {
        most = Optional.of(new Most(v.value(), v.source()));
      }
    }
    return most;
  }

  private static Text text(
      Ingredient i, List<OneApplication> all, Most most, String period, SequenceFacts facts) {
    String dates =
        all.stream().map(a -> Say.date(a.first())).distinct().collect(Collectors.joining(", "));
    return Text.of(
            Say.start(i)
                + ": "
                + all.size()
                + " applications ("
                + dates
                + ") where "
                + facts.book().catalog().crop(facts.field().crop()).name()
                + " may have "
                + most.count()
                + " in "
                + period
                + ".",
            most.source().text())
        .compared(Integer.toString(all.size()), Integer.toString(most.count()))
        .cleared("another active of a different site, or one pass fewer with this one");
  }
}
