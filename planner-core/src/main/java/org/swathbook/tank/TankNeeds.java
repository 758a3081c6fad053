package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.Terms;
import org.swathbook.program.Adjuvant;

/**
 * What the labels of all partners ask for together, whatever their order.
 *
 * @param adjuvants by kind. A kind stands once for each unit in which labels state its rate, at the
 *     largest rate in that unit: of several rates of one kind the one that is more governs, and
 *     which that is depends on the spray volume
 * @param unmet needs whose every kind some partner refuses, by active
 * @param gallonsPerAcre the largest least or advised spray volume that is stated, as far as no
 *     label states a highest below it; empty when none is
 */
public record TankNeeds(
    List<Adjuvant> adjuvants, List<UnmetNeed> unmet, OptionalDouble gallonsPerAcre) {

  public TankNeeds {
    adjuvants = List.copyOf(adjuvants);
    unmet = List.copyOf(unmet);
  }

  /**
   * The fewest kinds that meet all needs that can be met, and of those the ones labels name first.
   */
  public static TankNeeds of(List<Partner> partners) {
    Set<AdjuvantKind> refused = refused(partners);
    List<AdjuvantNeed> open = new ArrayList<>();
    List<UnmetNeed> unmet = new ArrayList<>();
    for (Partner p : partners) {
      for (AdjuvantNeed need : p.terms().tank().adjuvantNeeded().find().orElse(List.of())) {
        if (refused.containsAll(need.anyOf())) {
          unmet.add(new UnmetNeed(p.ingredient(), need, refusing(need, partners)));
        } else {
          open.add(need);
        }
      }
    }
    return new TankNeeds(
        adjuvants(open, chosen(open, refused)),
        unmet.stream().distinct().sorted(TankNeeds::order).toList(),
        gallons(partners));
  }

  private static OptionalDouble gallons(List<Partner> partners) {
    OptionalDouble least = largest(partners, Terms::carrierMinGalPerAcre);
    OptionalDouble advised = largest(partners, Terms::carrierAdvisedGalPerAcre);
    if (advised.isEmpty()) {
      return least;
    }
    double most =
        partners.stream()
            .flatMap(p -> p.terms().carrierMaxGalPerAcre().find().stream())
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return OptionalDouble.of(Math.max(least.orElse(0), Math.min(most, advised.getAsDouble())));
  }

  private static OptionalDouble largest(
      List<Partner> partners, Function<Terms, Stated<Double>> volume) {
    return partners.stream()
        .flatMap(p -> volume.apply(p.terms()).find().stream())
        .mapToDouble(Double::doubleValue)
        .max();
  }

  private static int order(UnmetNeed a, UnmetNeed b) {
    int c = a.of().id().compareTo(b.of().id());
    c = c != 0 ? c : UnmetNeed.words(a.need()).compareTo(UnmetNeed.words(b.need()));
    // one active may both advise and insist on the same, in two uses of its label
    return c != 0 ? c : Boolean.compare(a.need().refusedWithout(), b.need().refusedWithout());
  }

  private static Set<AdjuvantKind> refused(Collection<Partner> partners) {
    Set<AdjuvantKind> out = EnumSet.noneOf(AdjuvantKind.class);
    for (Partner p : partners) {
      p.terms().tank().adjuvantRefused().find().ifPresent(out::addAll);
    }
    return out;
  }

  private static List<String> refusing(AdjuvantNeed need, List<Partner> partners) {
    return partners.stream()
        .filter(p -> refused(List.of(p)).stream().anyMatch(need.anyOf()::contains))
        .map(p -> p.ingredient().name())
        .distinct()
        .sorted()
        .toList();
  }

  /** Every set is tried of the kinds that meet a need and are refused by none: they are few. */
  private static Set<AdjuvantKind> chosen(List<AdjuvantNeed> needs, Set<AdjuvantKind> refused) {
    Set<AdjuvantKind> best = EnumSet.noneOf(AdjuvantKind.class);
    needs.forEach(n -> best.addAll(n.anyOf()));
    best.removeAll(refused);
    AdjuvantKind[] all = best.toArray(AdjuvantKind[]::new);
    int bestPlaces = Integer.MAX_VALUE;
    for (int bits = 0; bits < 1 << all.length; bits++) {
      if (Integer.bitCount(bits) > best.size()) {
        continue;
      }
      Set<AdjuvantKind> kinds = EnumSet.noneOf(AdjuvantKind.class);
      for (int k = 0; k < all.length; k++) {
        if ((bits >> k & 1) == 1) {
          kinds.add(all[k]);
        }
      }
      if (needs.stream().anyMatch(n -> Collections.disjoint(kinds, n.anyOf()))) {
        continue;
      }
      int places = needs.stream().mapToInt(n -> place(n, kinds)).sum();
      if (kinds.size() < best.size() || places < bestPlaces) {
        best.clear();
        best.addAll(kinds);
        bestPlaces = places;
      }
    }
    return best;
  }

  /** Where the first of these kinds stands in the need's own order. */
  private static int place(AdjuvantNeed need, Set<AdjuvantKind> kinds) {
    int place = 0;
    for (AdjuvantKind k : need.anyOf()) {
      if (kinds.contains(k)) {
        return place;
      }
      place++;
    }
    throw new IllegalStateException("no kind of " + kinds + " meets " + need);
  }

  private static List<Adjuvant> adjuvants(List<AdjuvantNeed> needs, Set<AdjuvantKind> kinds) {
    Map<AdjuvantKind, Map<String, AdjuvantRate>> rates = new EnumMap<>(AdjuvantKind.class);
    for (AdjuvantNeed need : needs) {
      AdjuvantKind kind = List.copyOf(need.anyOf()).get(place(need, kinds));
      AdjuvantRate rate = AdjuvantRate.of(need.rate(kind).orElse(Adjuvant.RATE_OF_THE_LABEL));
      rates
          .computeIfAbsent(kind, k -> new TreeMap<>())
          .merge(rate.unit(), rate, AdjuvantRate::larger);
    }
    List<Adjuvant> out = new ArrayList<>();
    rates.forEach(
        (kind, byUnit) ->
            byUnit.values().forEach(r -> out.add(new Adjuvant(kind.spelling(), r.written()))));
    return out;
  }
}
