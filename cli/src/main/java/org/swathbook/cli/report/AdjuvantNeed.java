package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.tank.LoadAmounts;
import org.swathbook.tank.LoadSize;

/**
 * What the passes to come take of an adjuvant. The book has no prices of adjuvants.
 *
 * @param amount gallons or pounds; empty when no pass says how much
 * @param notKnown passes of which it is not known, with what they say
 */
public record AdjuvantNeed(
    String grower, String kind, Optional<Quantity> amount, List<String> notKnown) {

  public AdjuvantNeed {
    notKnown = List.copyOf(notKnown);
  }

  /** By grower, in the order of the fields, then by kind as they first come. */
  public static List<AdjuvantNeed> of(List<OrderedField> fields, LocalDate today) {
    Map<List<Object>, AdjuvantNeed> of = new LinkedHashMap<>();
    for (OrderedField f : fields) {
      for (PassOutcome pass : f.outcome().passes()) {
        for (Adjuvant a :
            OrderReport.isToCome(pass, today) ? pass.mix().adjuvants() : List.<Adjuvant>of()) {
          add(of(f.field(), pass, a), of);
        }
      }
    }
    return new ArrayList<>(of.values());
  }

  /** What the first programs of a grower's fields take, all passes still to come. */
  public static List<AdjuvantNeed> ofPlans(List<PlannedField> plans) {
    Map<List<Object>, AdjuvantNeed> of = new LinkedHashMap<>();
    for (PlannedField plan : plans) {
      List<PassOutcome> passes =
          plan.isRefused() ? List.of() : plan.programs().get(0).outcome().passes();
      for (PassOutcome pass : passes) {
        for (Adjuvant a : pass.made() ? List.<Adjuvant>of() : pass.mix().adjuvants()) {
          add(of(plan.field(), pass, a), of);
        }
      }
    }
    return new ArrayList<>(of.values());
  }

  private static void add(AdjuvantNeed n, Map<List<Object>, AdjuvantNeed> of) {
    Object unit = n.amount.<Object>map(Quantity::unit).orElse("");
    of.merge(List.of(n.grower, n.kind, unit), n, AdjuvantNeed::plus);
  }

  private static AdjuvantNeed of(Field field, PassOutcome pass, Adjuvant a) {
    double gallons = pass.mix().gallonsPerAcre().orElse(0) * field.acres();
    // Without a volume, a rate on the area is still known; one in the spray is not.
    Optional<Quantity> amount =
        gallons > 0 || !a.rate().matches("(?i).*(v/v|/\\s*100\\s*gal.*)")
            ? LoadAmounts.ofAdjuvant(
                a.rate(), new LoadSize(gallons > 0 ? gallons : 1, field.acres()))
            : Optional.empty();
    return new AdjuvantNeed(
        field.grower(),
        a.kind(),
        amount.map(AdjuvantNeed::bought),
        amount.isPresent()
            ? List.of()
            : List.of(field.id() + " pass " + (pass.index() + 1) + ", " + a.rate()));
  }

  private static Quantity bought(Quantity amount) {
    Unit unit = amount.unit().dimension() == Dimension.MASS ? Unit.POUND : Unit.GALLON;
    return new Quantity(amount.in(unit), unit);
  }

  private AdjuvantNeed plus(AdjuvantNeed more) {
    List<String> unknown = new ArrayList<>(notKnown);
    unknown.addAll(more.notKnown);
    return new AdjuvantNeed(
        grower,
        kind,
        amount.flatMap(a -> more.amount.map(b -> new Quantity(a.value() + b.value(), a.unit()))),
        unknown);
  }
}
