package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.TankTerms;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Mix;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.InHundredGallons;
import org.swathbook.tank.TankNeeds;

/** The adjuvants of a tank as the labels of what is in it ask for them together. */
final class FittedAdjuvants {
  private FittedAdjuvants() {}

  /** What the labels ask for together, and of what was there all that none refuses. */
  static Mix of(Mix mix, List<ActiveUse> actives) {
    List<Adjuvant> needed =
        TankNeeds.of(actives.stream().map(ActiveUse::partner).toList()).adjuvants();
    List<Adjuvant> out = new ArrayList<>();
    for (Adjuvant a : mix.adjuvants()) {
      Optional<AdjuvantKind> kind = AdjuvantKind.find(a.kind());
      boolean refused =
          kind.isPresent()
              && actives.stream()
                  .anyMatch(
                      u ->
                          u.terms()
                              .tank()
                              .adjuvantRefused()
                              .find()
                              .filter(r -> r.contains(kind.get()))
                              .isPresent());
      if (!refused) {
        out.add(a);
      }
    }
    for (Adjuvant a : needed) {
      if (isMetByAnother(a, out, actives)) {
        continue;
      }
      out.removeIf(o -> isLess(o, a, mix.gallonsPerAcre()));
      if (out.stream().noneMatch(o -> o.kind().equals(a.kind()))) {
        out.add(a);
      }
    }
    return new Mix(mix.doses(), out, mix.gallonsPerAcre());
  }

  /** Whether another kind that is there does for every label that this one would serve. */
  private static boolean isMetByAnother(
      Adjuvant needed, List<Adjuvant> held, List<ActiveUse> actives) {
    Optional<AdjuvantKind> kind = AdjuvantKind.find(needed.kind());
    if (kind.isEmpty() || held.stream().anyMatch(h -> h.kind().equals(needed.kind()))) {
      return false;
    }
    List<TankTerms.AdjuvantNeed> served =
        actives.stream()
            .flatMap(u -> u.terms().tank().adjuvantNeeded().find().stream())
            .flatMap(List::stream)
            .filter(n -> n.anyOf().contains(kind.get()))
            .toList();
    return !served.isEmpty()
        && served.stream()
            .allMatch(
                n ->
                    held.stream()
                        .flatMap(h -> AdjuvantKind.find(h.kind()).stream())
                        .anyMatch(n.anyOf()::contains));
  }

  /** Whether it is less of the same kind; false where that cannot be told. */
  private static boolean isLess(Adjuvant one, Adjuvant than, OptionalDouble gallonsPerAcre) {
    if (!one.kind().equals(than.kind())) {
      return false;
    }
    Optional<Quantity> a = InHundredGallons.least(one.rate(), gallonsPerAcre);
    Optional<Quantity> b = InHundredGallons.least(than.rate(), gallonsPerAcre);
    return a.isPresent()
        && b.isPresent()
        && a.get().unit().dimension() == b.get().unit().dimension()
        && Quantity.exceeds(b.get().si(), a.get().si());
  }

  /** What has changed, {@code add crop-oil 1 % v/v, leave nis out}; empty where nothing has. */
  static String words(Mix before, Mix fitted) {
    List<String> parts = new ArrayList<>();
    for (Adjuvant a : fitted.adjuvants()) {
      if (!before.adjuvants().contains(a)) {
        parts.add("add " + a.kind() + " " + a.rate());
      }
    }
    for (Adjuvant a : before.adjuvants()) {
      if (!fitted.adjuvants().contains(a)) {
        parts.add("leave " + a.kind() + " out");
      }
    }
    return String.join(", ", parts);
  }

  /** The same behind what else is changed. */
  static String words(String change, Mix before, Mix fitted) {
    String more = words(before, fitted);
    return more.isEmpty() ? change : change + ", " + more;
  }
}
