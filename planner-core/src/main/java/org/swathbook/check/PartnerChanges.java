package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.catalog.Use;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerSetup;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PracticalRange;
import org.swathbook.rules.Say;

/** One more product in a tank, with the adjuvants and droplets that it then needs. */
record PartnerChanges(AgainstTank against) {
  /** Of what works on a weed of which something is said, in the order of the catalog. */
  List<MixChange> all() {
    List<MixChange> out = new ArrayList<>();
    Catalog catalog = against.facts().book().catalog();
    for (Product p : catalog.products()) {
      Ingredient active = catalog.ingredient(p.contents().get(0).ingredient());
      boolean there =
          against.facts().actives().stream().anyMatch(a -> a.ingredient().id().equals(active.id()));
      if (!p.isSingle() || there || !against.mayHelp(active)) {
        continue;
      }
      for (Use use :
          LabelUses.fitting(
              active,
              against.facts().field(),
              against.facts().positions(),
              p.formulation(),
              against.job().method())) {
        PracticalRange.of(p, use, against.facts().field())
            .map(PracticalRange::high)
            .ifPresent(rate -> out.add(adding(Doses.ofProduct(catalog, p, rate), use)));
      }
    }
    return out;
  }

  /** The product at its highest rate that the label allows here. */
  private MixChange adding(Dose dose, Use use) {
    List<ActiveUse> actives = new ArrayList<>(against.facts().actives());
    actives.add(new ActiveUse(dose, dose.actives().get(0), Optional.of(use)));
    SprayJob with = against.job().with(FittedAdjuvants.of(against.job().mix().plus(dose), actives));
    SprayJob fitted = withDroplets(with, actives);
    String words =
        FittedAdjuvants.words(
            "add " + dose.product().id() + " " + Say.productRate(dose.rate()),
            against.job().mix(),
            with.mix());
    return new MixChange(
        fitted.setup().droplets().equals(with.setup().droplets())
            ? words
            : words + ", " + fitted.setup().droplets().orElseThrow() + " droplets",
        fitted,
        Optional.of(dose.product().id()),
        false);
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
}
