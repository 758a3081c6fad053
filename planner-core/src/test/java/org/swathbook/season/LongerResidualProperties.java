package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.book.Book;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.control.FadeCurve;
import org.swathbook.measure.Rate;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.testing.Fixtures;

/**
 * Residuals with longer stated lengths never expose more. The fresh control is held: a table's
 * figure is the mean over the first 35 days, so with the figure held instead a longer, flatter
 * layer starts from a lower value and may indeed leave a little more in its first weeks.
 */
class LongerResidualProperties {
  private static final double ROUNDING = 1e-9;

  @Property(tries = 200)
  void aLongerStatedLengthNeverExposesMore(@ForAll long seed) {
    longer(new Random(seed));
  }

  @Property(tries = 2000)
  @Tag("slow")
  void oftenToo(@ForAll long seed) {
    longer(new Random(seed));
  }

  private static void longer(Random random) {
    Kernel as = Kernels.of(RandomPrograms.field(random));
    Catalog catalog = longer(1 + random.nextDouble());
    Kernel longer = Kernel.of(book(catalog), as.traces());
    List<Plan> plans = new ArrayList<>(RandomPrograms.plans(random, 2));
    plans.add(RandomPrograms.plan(random));
    plans.sort((a, b) -> Integer.compare(a.day(), b.day()));
    Score before = as.score(prepare(as, Fixtures.catalog(), plans));
    Score after = longer.score(prepare(longer, catalog, plans));
    for (int y = 0; y < before.years(); y++) {
      assertThat(after.lossShare(y)).isLessThanOrEqualTo(before.lossShare(y) + ROUNDING);
      for (int w = 0; w < as.traces().weeds().size(); w++) {
        assertThat(after.exposedShare(w, y))
            .isLessThanOrEqualTo(before.exposedShare(w, y) + ROUNDING);
        assertThat(after.controlPct(w, y))
            .isGreaterThanOrEqualTo(before.controlPct(w, y) - ROUNDING);
        assertThat(after.allSurvivorsPerM2(w, y))
            .isLessThanOrEqualTo(before.allSurvivorsPerM2(w, y) + ROUNDING);
      }
    }
  }

  private static List<PreparedPass> prepare(Kernel kernel, Catalog catalog, List<Plan> plans) {
    LocalDate planted = kernel.traces().field().plantDate();
    return plans.stream()
        .map(p -> kernel.prepare(mix(catalog, p), planted.plusDays(p.day())))
        .toList();
  }

  private static Mix mix(Catalog catalog, Plan plan) {
    return Mix.of(
        plan.lines().stream()
            .map(
                l -> {
                  Ingredient i = catalog.findIngredient(l.active()).orElseThrow();
                  return Doses.ofIngredient(
                      i, catalog.singles(i.id()).get(0), Rate.lbPerAcre(l.lb(), i.rateBasis()));
                })
            .toList());
  }

  /** The fixture catalog with every stated length raised and every fresh control held. */
  private static Catalog longer(double times) {
    Catalog c = Fixtures.catalog();
    List<Ingredient> ingredients =
        c.ingredients().stream().map(i -> withResidual(i, times)).toList();
    List<Response> responses = c.responses().stream().map(r -> held(c, r, times)).toList();
    return new Catalog(
        ingredients,
        List.copyOf(c.products()),
        List.copyOf(c.weeds()),
        List.copyOf(c.crops()),
        responses,
        c.interactions());
  }

  private static Residual stretched(Residual r, double times) {
    return new Residual(
        r.low(),
        (int) Math.ceil(r.lowDays() * times),
        r.high(),
        (int) Math.ceil(r.highDays() * times),
        r.activatingRainMm());
  }

  private static Ingredient withResidual(Ingredient i, double times) {
    return i.residual()
        .find()
        .map(
            r ->
                new Ingredient(
                    i.id(),
                    i.name(),
                    i.aliases(),
                    i.site(),
                    i.family(),
                    i.rateBasis(),
                    i.movement(),
                    i.capGroup(),
                    Stated.value(stretched(r, times), Source.NOT_GIVEN),
                    i.halfLifeDays(),
                    i.uses(),
                    i.usesComplete(),
                    i.rotation(),
                    i.terms(),
                    i.incorporation(),
                    i.sources(),
                    i.reviewed()))
        .orElse(i);
  }

  private static Response held(Catalog c, Response r, double times) {
    if (r.timing() != Response.Timing.PRE) {
      return r;
    }
    return c.ingredient(r.ingredient())
        .residual()
        .find()
        .map(
            old -> {
              double fresh = FadeCurve.fresh(r.emaxPct(), old);
              double perPoint = FadeCurve.fresh(1, stretched(old, times));
              return new Response(
                  r.weed(),
                  r.ingredient(),
                  r.timing(),
                  fresh / perPoint,
                  r.lowPct(),
                  r.highPct(),
                  r.controlHeightCm(),
                  r.source(),
                  r.confidence());
            })
        .orElse(r);
  }

  private static Book book(Catalog catalog) {
    Book b = Fixtures.book();
    return new Book(
        b.name(),
        b.season(),
        catalog,
        b.house(),
        b.crops(),
        b.passCost(),
        b.resprayExtra(),
        b.fields(),
        b.weeds(),
        b.journal(),
        b.pastSeasons(),
        b.prices(),
        b.stations(),
        b.notes());
  }
}
