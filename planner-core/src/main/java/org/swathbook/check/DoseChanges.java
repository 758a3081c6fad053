package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.Say;

/** Other rates of the products of a tank, and the tank without one. */
final class DoseChanges {
  /** Rates tried between the label's least and most, both among them (default). */
  private static final int RATES = 5;

  private final PassFacts facts;
  private final SprayJob job;
  private final AgainstTank against;

  DoseChanges(JudgedMix judged, AgainstTank against) {
    this.facts = judged.facts();
    this.job = judged.job();
    this.against = against;
  }

  /** Of the products that something stands against, in the order of the tank. */
  List<MixChange> all() {
    List<MixChange> out = new ArrayList<>();
    for (int d = 0; d < job.mix().doses().size(); d++) {
      if (against.speaksOf(job.mix().doses().get(d))) {
        rates(d, out);
        if (against.isBlockedOnAnyDay(job.mix().doses().get(d))) {
          without(d, out);
        }
      }
    }
    return out;
  }

  private void rates(int place, List<MixChange> out) {
    Dose dose = job.mix().doses().get(place);
    if (!dose.product().isSingle()) {
      return;
    }
    Optional<Use> use =
        facts.actives().stream().filter(a -> isOf(a, dose)).findFirst().flatMap(ActiveUse::use);
    if (use.isEmpty() || !(SoilRates.of(use.get(), facts.field()) instanceof SoilRates.Allowed a)) {
      return;
    }
    double low = a.range().low().kgPerHa();
    double high = a.range().high().kgPerHa();
    TreeSet<Double> amounts = new TreeSet<>();
    for (int i = 0; i < RATES; i++) {
      Rate rate = practical(dose.product(), low + i * (high - low) / (RATES - 1), i == 0);
      if (rate.amount() > 0) {
        amounts.add(rate.amount());
      }
    }
    Rate now = dose.rate().like(dose.product().spoken());
    boolean lessMayHelp = against.mayAskForLess(dose);
    for (double amount : amounts) {
      if (Math.abs(amount - now.amount()) < 1e-9 || amount < now.amount() && !lessMayHelp) {
        continue;
      }
      Rate rate = new Rate(amount, now.unit(), now.area(), now.basis());
      List<Dose> doses = new ArrayList<>(job.mix().doses());
      doses.set(place, Doses.ofProduct(facts.book().catalog(), dose.product(), rate));
      out.add(
          new MixChange(
              (amount > now.amount() ? "raise " : "lower ")
                  + dose.product().id()
                  + " to "
                  + Say.productRate(rate),
              job.with(job.mix().with(doses)),
              Optional.of(dose.product().id()),
              false));
    }
  }

  private static Rate practical(Product product, double activeKgPerHa, boolean atLeast) {
    double perHa = product.contents().get(0).concentration().productPerHa(activeKgPerHa);
    Rate exact = Doses.productRate(product, perHa);
    return atLeast ? Say.practicalAtLeast(product, exact) : Say.practical(product, exact);
  }

  private void without(int place, List<MixChange> out) {
    if (job.mix().doses().size() < 2) {
      return;
    }
    Dose dropped = job.mix().doses().get(place);
    List<Dose> doses = new ArrayList<>(job.mix().doses());
    doses.remove(place);
    List<ActiveUse> actives = facts.actives().stream().filter(a -> !isOf(a, dropped)).toList();
    Mix fitted = FittedAdjuvants.of(job.mix().with(doses), actives);
    out.add(
        new MixChange(
            FittedAdjuvants.words("leave " + dropped.product().id() + " out", job.mix(), fitted),
            job.with(fitted),
            Optional.of(dropped.product().id()),
            true));
  }

  /** Whether an active came with this very dose: the tank may hold another that is like it. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean isOf(ActiveUse active, Dose dose) {
    return active.dose() == dose;
  }
}
