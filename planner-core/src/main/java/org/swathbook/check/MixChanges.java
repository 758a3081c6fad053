package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerSetup;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PracticalRange;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.Say;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseRule;
import org.swathbook.tank.InHundredGallons;
import org.swathbook.tank.Partner;
import org.swathbook.tank.TankNeeds;
import org.swathbook.tank.WaterConditioner;

/** The single changes of a tank and of a sprayer that may mend it; crop, weeds and day stay. */
final class MixChanges {
  /** Rates tried between the label's least and most, both among them (default). */
  private static final int RATES = 5;

  /** Spray volumes that are tried where no label names one (common practice, no source). */
  private static final double[] VOLUMES = {10, 15, 20};

  private final PassFacts facts;
  private final SprayJob job;
  private final List<Finding> against;

  MixChanges(JudgedMix judged) {
    this.facts = judged.facts();
    this.job = judged.job();
    this.against =
        judged.judgement().findings().stream()
            .filter(f -> f.severity() == Severity.BLOCK || f.severity() == Severity.WARN)
            .toList();
  }

  /**
   * Other rates, fewer products, other adjuvants, volume, droplets: what may clear something that
   * stands against the tank.
   */
  List<MixChange> ofWhatIsThere() {
    List<MixChange> out = new ArrayList<>();
    for (int d = 0; d < job.mix().doses().size(); d++) {
      if (isNamed(job.mix().doses().get(d))) {
        rates(d, out);
        if (isBlockedOnAnyDay(job.mix().doses().get(d))) {
          without(d, out);
        }
      }
    }
    Mix fitted = withAdjuvants(job.mix(), facts.actives());
    String words = adjuvantWords(fitted);
    if (!words.isEmpty()) {
      out.add(new MixChange(words, job.with(fitted)));
    }
    if (stands("water-quality")) {
      conditioned(out);
    }
    if (stands("carrier-volume")) {
      volumes(out);
    }
    if (stands("droplet-class")) {
      droplets(out);
    }
    return out;
  }

  private boolean stands(String rule) {
    return against.stream().anyMatch(f -> f.rule().value().equals(rule));
  }

  /** Whether something speaks of an active of the dose, or of the whole tank by a block. */
  private boolean isNamed(Dose dose) {
    return against.stream().anyMatch(f -> speaksOf(f, dose));
  }

  /** Whether a block that another hour or day would leave speaks of it. */
  private boolean isBlockedOnAnyDay(Dose dose) {
    return against.stream()
        .filter(f -> f.severity() == Severity.BLOCK && !DayBlocks.isOfTheDay(f))
        .anyMatch(f -> speaksOf(f, dose));
  }

  private static boolean speaksOf(Finding f, Dose dose) {
    return f.about()
        .ingredient()
        .map(i -> dose.actives().stream().anyMatch(a -> a.ingredient().id().equals(i)))
        .orElse(f.severity() == Severity.BLOCK);
  }

  /** Whether less of an active may answer it; a warning of weeds or of the day only grows. */
  private static boolean turnsOnAmount(Finding f) {
    return f.severity() == Severity.BLOCK
        || RuleBook.find(f.rule().value())
            .filter(r -> r instanceof SequenceRule || r instanceof UseRule u && u.readsAmount())
            .isPresent();
  }

  /** Whether an active is rated to work on a weed of which something is said. */
  private boolean mayHelp(Ingredient active) {
    return against.stream()
        .flatMap(f -> f.about().weed().stream())
        .anyMatch(weed -> Rated.works(facts, facts.pressure(weed), active));
  }

  /** One more product, at its highest rate that the label allows here. */
  List<MixChange> partners() {
    List<MixChange> out = new ArrayList<>();
    Catalog catalog = facts.book().catalog();
    for (Product p : catalog.products()) {
      Ingredient active = catalog.ingredient(p.contents().get(0).ingredient());
      boolean there =
          facts.actives().stream().anyMatch(a -> a.ingredient().id().equals(active.id()));
      if (!p.isSingle() || there || !mayHelp(active)) {
        continue;
      }
      for (Use use :
          LabelUses.fitting(
              active, facts.field(), facts.positions(), p.formulation(), job.method())) {
        PracticalRange.of(p, use, facts.field())
            .map(PracticalRange::high)
            .ifPresent(
                rate -> {
                  Dose dose = Doses.ofProduct(catalog, p, rate);
                  List<ActiveUse> actives = new ArrayList<>(facts.actives());
                  actives.add(new ActiveUse(dose, dose.actives().get(0), Optional.of(use)));
                  SprayJob with = job.with(withAdjuvants(job.mix().plus(dose), actives));
                  SprayJob fitted = withDroplets(with, actives);
                  String words =
                      withAdjuvantWords("add " + p.id() + " " + Say.productRate(rate), with.mix());
                  out.add(
                      new MixChange(
                          fitted.setup().droplets().equals(with.setup().droplets())
                              ? words
                              : words
                                  + ", "
                                  + fitted.setup().droplets().orElseThrow()
                                  + " droplets",
                          fitted,
                          Optional.of(p.id()),
                          false));
                });
      }
    }
    return out;
  }

  /**
   * The class that is chosen where every partner allows it and it wets what contact partners must
   * wet, else the coarsest that does.
   */
  private static SprayJob withDroplets(SprayJob job, List<ActiveUse> actives) {
    Optional<DropletRange> range = TankDroplets.of(actives).allowed();
    Optional<DropletClass> chosen = job.setup().droplets();
    if (range.isEmpty() || chosen.isEmpty()) {
      return job;
    }
    boolean contact = actives.stream().map(ActiveUse::ingredient).anyMatch(Ingredient::isContact);
    Optional<DropletClass> best = Optional.empty();
    for (DropletClass c : DropletClass.values()) {
      boolean wets = !contact || c.compareTo(DropletClass.VERY_COARSE) < 0;
      if (range.get().allows(c) && wets) {
        best = Optional.of(c);
        if (chosen.get() == c) {
          return job;
        }
      }
    }
    SprayerSetup s = job.setup();
    return best.isEmpty() ? job : job.with(s.with(best));
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
    boolean lessMayHelp = against.stream().anyMatch(f -> speaksOf(f, dose) && turnsOnAmount(f));
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

  /** Whether an active came with this very dose: the tank may hold another that is like it. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean isOf(ActiveUse active, Dose dose) {
    return active.dose() == dose;
  }

  private void without(int place, List<MixChange> out) {
    if (job.mix().doses().size() < 2) {
      return;
    }
    Dose dropped = job.mix().doses().get(place);
    List<Dose> doses = new ArrayList<>(job.mix().doses());
    doses.remove(place);
    List<ActiveUse> actives = facts.actives().stream().filter(a -> !isOf(a, dropped)).toList();
    Mix fitted = withAdjuvants(job.mix().with(doses), actives);
    out.add(
        new MixChange(
            withAdjuvantWords("leave " + dropped.product().id() + " out", fitted),
            job.with(fitted),
            Optional.of(dropped.product().id()),
            true));
  }

  /** With what takes the hardness out of the water. */
  private void conditioned(List<MixChange> out) {
    List<Partner> partners = facts.actives().stream().map(ActiveUse::partner).toList();
    Optional<Adjuvant> conditioner = WaterConditioner.of(job.carrier(), partners);
    if (conditioner.isEmpty() || job.mix().adjuvants().contains(conditioner.get())) {
      return;
    }
    List<Adjuvant> adjuvants = new ArrayList<>(job.mix().adjuvants());
    adjuvants.removeIf(a -> a.kind().equals(conditioner.get().kind()));
    adjuvants.add(conditioner.get());
    Mix mix = new Mix(job.mix().doses(), adjuvants, job.mix().gallonsPerAcre());
    out.add(new MixChange(adjuvantWords(mix), job.with(mix)));
  }

  /** What the labels ask for together, and of what was there all that none refuses. */
  static Mix withAdjuvants(Mix mix, List<ActiveUse> actives) {
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

  private String withAdjuvantWords(String words, Mix fitted) {
    String more = adjuvantWords(fitted);
    return more.isEmpty() ? words : words + ", " + more;
  }

  private String adjuvantWords(Mix fitted) {
    List<String> parts = new ArrayList<>();
    for (Adjuvant a : fitted.adjuvants()) {
      if (!job.mix().adjuvants().contains(a)) {
        parts.add("add " + a.kind() + " " + a.rate());
      }
    }
    for (Adjuvant a : job.mix().adjuvants()) {
      if (!fitted.adjuvants().contains(a)) {
        parts.add("leave " + a.kind() + " out");
      }
    }
    return String.join(", ", parts);
  }

  private void volumes(List<MixChange> out) {
    TreeSet<Double> volumes = new TreeSet<>();
    TankNeeds.of(facts.actives().stream().map(ActiveUse::partner).toList())
        .gallonsPerAcre()
        .ifPresent(volumes::add);
    for (double v : VOLUMES) {
      volumes.add(v);
    }
    double now = job.mix().gallonsPerAcre().orElse(0);
    for (double v : volumes) {
      if (v != now) {
        Mix mix = new Mix(job.mix().doses(), job.mix().adjuvants(), OptionalDouble.of(v));
        out.add(new MixChange("spray " + Numbers.decimals(v, 1) + " gal/acre", job.with(mix)));
      }
    }
  }

  private void droplets(List<MixChange> out) {
    TankDroplets.of(facts.actives())
        .allowed()
        .ifPresent(
            range -> {
              for (DropletClass c : DropletClass.values()) {
                if (range.allows(c) && !job.setup().droplets().equals(Optional.of(c))) {
                  out.add(
                      new MixChange(
                          "spray " + c + " droplets", job.with(job.setup().with(Optional.of(c)))));
                }
              }
            });
  }
}
