package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.program.Applicator;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** Products that only certified applicators may buy and apply. */
public final class RestrictedUseRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("restricted-use"),
          Severity.WARN,
          "Who may apply what is in this tank?",
          "An active of the pass is marked as restricted use: the note says that a certified"
              + " applicator must apply it or supervise, and that a record is to be kept. A warning"
              + " where the job, or the journal's row of that day and product, names an applicator"
              + " without the number of a certificate, or says that a training which the label asks"
              + " for was not had. Where nobody says whether it was, that is asked for on the day.",
          List.of("US federal rules on restricted-use pesticides; from memory"),
          "a tank with atrazine by an applicator who is named without a certificate",
          "a pass with glyphosate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  /** Whether a finding says that a product is for certified applicators. */
  public static boolean isNotice(Finding finding) {
    return finding.rule().equals(CARD.id()) && finding.severity() == Severity.NOTE;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Set<String> told = new TreeSet<>();
    Set<String> certified = new TreeSet<>();
    for (ActiveUse a : facts.actives()) {
      Ingredient i = a.ingredient();
      Stated<Boolean> restricted =
          a.use().map(u -> u.terms().restrictedUse()).orElse(i.terms().restrictedUse());
      if (!told.add(i.id().value())) {
        continue;
      }
      if (restricted.isUnknown()) {
        out.ask(
            this,
            facts.about().withIngredient(i.id()),
            () ->
                new Lookup(
                    "whether " + i.name() + " is a restricted-use product",
                    Where.ingredient(i, "restrictedUse", "first page")));
      } else if (restricted.find().orElse(false)) {
        certified.add(i.name());
        Optional<String> course = a.terms().training().find();
        out.note(
            this,
            facts.about().withIngredient(i.id()).withProduct(a.dose().product().id()),
            () ->
                Text.of(
                    Say.start(i)
                        + (course.isPresent()
                            ? " is a restricted-use product, for certified applicators who have had"
                                + " the training in "
                                + course.get()
                                + " that its label asks for, and wants a record with the"
                                + " certificate's number."
                            : " is a restricted-use product: a certified applicator applies it or"
                                + " supervises, and keeps a record with the certificate's number."),
                    Say.source(restricted)));
      }
      training(facts, a, restricted.find().orElse(false), out);
    }
    if (!certified.isEmpty()) {
      withoutCertificate(facts)
          .ifPresent(
              who -> out.warn(this, facts.about(), () -> text(who, new ArrayList<>(certified))));
    }
  }

  /** The course that a label asks for: unwritten of a restricted product, or not known of him. */
  private void training(PassFacts facts, ActiveUse a, boolean restricted, Findings out) {
    Ingredient i = a.ingredient();
    Stated<String> training = a.terms().training();
    About about = facts.about().withIngredient(i.id());
    if (training.isUnknown() && restricted) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "whether the label of " + i.name() + " asks for a training of its own",
                  Where.ingredient(i, "training", "first page")));
      return;
    }
    if (training.find().isEmpty() || facts.job().isEmpty()) {
      return;
    }
    String course = training.find().get();
    Optional<Applicator> who = facts.job().get().applicator();
    Optional<List<String>> had = who.flatMap(Applicator::trainings);
    if (had.isEmpty()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "whether "
                      + who.map(Applicator::name).orElse("the applicator")
                      + " has had the training in "
                      + course
                      + " that the label of "
                      + i.name()
                      + " asks for",
                  "the job: applicator, training"));
    } else if (!had.get().contains(course.toLowerCase(Locale.ROOT))) {
      out.warn(
          this,
          about.withProduct(a.dose().product().id()),
          () ->
              Text.of(
                      who.map(Applicator::name).orElse("The applicator")
                          + " has not had the training in "
                          + course
                          + " that the label of "
                          + i.name()
                          + " asks for.",
                      Say.source(training))
                  .compared("no training in " + course, "training in " + course)
                  .cleared("the course, or somebody who has had it"));
    }
  }

  /** Whom the job, or the journal's row of this very tank, names without a certificate. */
  private static Optional<String> withoutCertificate(PassFacts facts) {
    if (facts.job().isEmpty()) {
      return Optional.empty();
    }
    if (facts.job().get().applicator().isPresent()) {
      return facts.job().get().applicator().filter(a -> a.certNo().isBlank()).map(Applicator::name);
    }
    return facts.book().journal().of(facts.field().id()).stream()
        .filter(r -> r.date().equals(facts.job().get().date()))
        .filter(
            r ->
                facts.pass().mix().doses().stream()
                    .anyMatch(d -> d.product().id().equals(r.dose().product().id())))
        .map(Application::record)
        .filter(r -> !r.applicator().isBlank() && r.certNo().isBlank())
        .map(SprayRecord::applicator)
        .findFirst();
  }

  private static Text text(String who, List<String> actives) {
    return Text.of(
            who
                + " is named as the applicator without the number of a certificate, and "
                + Say.list(actives)
                + (actives.size() == 1 ? " is" : " are")
                + " for certified applicators, or for who works under one.",
            "US federal rules on restricted-use pesticides; from memory")
        .compared("no certificate named", "a certified applicator")
        .cleared("the number of the applicator's certificate, or that of who supervises");
  }
}
