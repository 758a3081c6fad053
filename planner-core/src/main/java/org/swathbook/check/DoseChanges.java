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
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Say;

/** Other rates of the products of a tank, and the tank without one. */
record DoseChanges(AgainstTank against) {
  /** Rates tried between the label's least and most, both among them (default). */
  private static final int RATES = 5;

  /** Of the products that something stands against, in the order of the tank. */
  List<MixChange> all() {
    List<MixChange> out = new ArrayList<>();
    for (int d = 0; d < tank().doses().size(); d++) {
      if (against.speaksOf(tank().doses().get(d))) {
        rates(d, out);
        if (against.isBlockedOnAnyDay(tank().doses().get(d))) {
          without(d, out);
        }
      }
    }
    return out;
  }

  private Mix tank() {
    return against.job().mix();
  }

  private void rates(int place, List<MixChange> out) {
    Dose dose = tank().doses().get(place);
    if (!dose.product().isSingle()) {
      return;
    }
    Optional<Use> use =
        against.facts().actives().stream()
            .filter(a -> isOf(a, dose))
            .findFirst()
            .flatMap(ActiveUse::use);
    if (use.isEmpty()
        || !(SoilRates.of(use.get(), against.facts().field()) instanceof SoilRates.Allowed a)) {
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
      List<Dose> doses = new ArrayList<>(tank().doses());
      doses.set(place, Doses.ofProduct(against.facts().book().catalog(), dose.product(), rate));
      out.add(
          new MixChange(
              (amount > now.amount() ? "raise " : "lower ")
                  + dose.product().id()
                  + " to "
                  + Say.productRate(rate),
              against.job().with(tank().with(doses)),
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
    if (tank().doses().size() < 2) {
      return;
    }
    Dose dropped = tank().doses().get(place);
    List<Dose> doses = new ArrayList<>(tank().doses());
    doses.remove(place);
    List<ActiveUse> actives =
        against.facts().actives().stream().filter(a -> !isOf(a, dropped)).toList();
    Mix fitted = FittedAdjuvants.of(tank().with(doses), actives);
    out.add(
        new MixChange(
            FittedAdjuvants.words("leave " + dropped.product().id() + " out", tank(), fitted),
            against.job().with(fitted),
            Optional.of(dropped.product().id()),
            true));
  }

  /** Whether an active came with this very dose: the tank may hold another that is like it. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean isOf(ActiveUse active, Dose dose) {
    return active.dose() == dose;
  }
}
