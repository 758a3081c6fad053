package org.swathbook.rules.stewardship;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** A driver weed much of which is still to come, and nothing in the soil against it. */
public final class NoResidualRule implements ProgramRule {
  private static final double MUCH = 0.2;

  /** Share still to come behind a pass over the crop from which a layer belongs into it. */
  private static final double MUCH_BEHIND_A_POST = 0.1;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("no-residual"),
          Severity.WARN,
          "Is there any layer where much is still to come up?",
          "More than 20 % of a driver weed comes up after planting, in the mean of the weather years,"
              + " and in most years no layer of the season holds it. Or a pass over the crop carries"
              + " no soil active that is effective on it while, in that mean, more than 10 % of its emergence comes later, before"
              + " the rows close, where no layer of the season holds it, and a label lists a soil"
              + " active that is effective on it there: the cheapest such is named.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate twice on Palmer amaranth",
          "kochia nearly all of which is up before planting, with a burndown alone");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    int w = 0;
    for (WeedOutcome weed : facts.season().weeds()) {
      double toCome = toCome(facts, w++);
      WeedId id = weed.pressure().weed().id();
      if (weed.pressure().driver().isDriver() && toCome > MUCH && !hasLayer(facts, id)) {
        out.warn(
            this,
            About.PROGRAM.withWeed(id),
            () ->
                Text.of(
                        Say.share(toCome)
                            + " of "
                            + weed.pressure().weed().name()
                            + " comes up after planting, and nothing in the soil holds it.",
                        Say.COMMON_PRACTICE)
                    .compared(Say.share(toCome) + ", no layer", "a layer above " + Say.share(MUCH))
                    .cleared(layer(facts, weed.pressure())));
      } else if (weed.pressure().driver().isDriver()) {
        postWithoutLayer(facts, weed.pressure(), w - 1, out);
      }
    }
  }

  private static String layer(ProgramFacts facts, WeedPressure pressure) {
    Set<Site> sites = new TankOffers(facts.book(), facts.traces()).soilSites(pressure);
    return sites.isEmpty()
        ? "several partners together that hold it in part, or row cultivation: no active of the"
            + " catalog holds it by itself in this crop, trait and soil"
        : "a residual of site "
            + String.join(" or ", sites.stream().map(Site::toString).toList())
            + " at its full rate, at planting or with the first post";
  }

  /** The first pass over the crop that leaves much of a weed to come with nothing in the soil. */
  private void postWithoutLayer(ProgramFacts facts, WeedPressure pressure, int weed, Findings out) {
    for (PassOutcome pass : facts.season().passes()) {
      PassFacts of = facts.of(pass);
      WeedId id = pressure.weed().id();
      if (pass.made() || !of.isInCrop() || carriesOne(of, pressure)) {
        continue;
      }
      double bare = bareAfter(facts, pass, weed, id);
      Optional<SoilOffer> offer =
          bare > MUCH_BEHIND_A_POST ? SoilOffer.cheapest(of, pressure) : Optional.empty();
      if (offer.isPresent()) {
        out.warn(
            this,
            About.PROGRAM.withPass(pass.index()).withWeed(id),
            () -> postText(pressure, bare, offer.get()));
        return;
      }
    }
  }

  private static Text postText(WeedPressure pressure, double bare, SoilOffer offer) {
    Ingredient i = offer.active();
    return Text.of(
            Say.share(bare)
                + " of "
                + pressure.weed().name()
                + " comes up after this pass and before the rows close, with no layer to hold it, and the pass carries none.",
            Say.COMMON_PRACTICE)
        .compared(Say.share(bare) + ", no layer", "a layer above " + Say.share(MUCH_BEHIND_A_POST))
        .cleared(
            "a layer with this pass: "
                + i.name()
                + " from "
                + Say.rate(offer.dose().actives().get(0).rate())
                + offer.price().map(m -> ", $" + m + " an acre").orElse("")
                + " is the cheapest that its label lists here, where the season's limits leave room");
  }

  /** Whether the tank has a soil active that is effective on the weed, as an offer would be. */
  private static boolean carriesOne(PassFacts facts, WeedPressure pressure) {
    return facts.pass().mix().actives().stream()
        .anyMatch(a -> SoilOffer.isEffective(facts, pressure, a.ingredient()));
  }

  /** Share of the emergence after a pass and before the rows close that no layer holds, mean. */
  private static double bareAfter(ProgramFacts facts, PassOutcome pass, int weed, WeedId id) {
    double sum = 0;
    int years = facts.traces().years().size();
    for (int y = 0; y < years; y++) {
      SeasonTrace trace = facts.traces().years().get(y);
      CohortSet set = trace.cohorts(weed);
      List<LayerSpan> layers =
          facts.season().years().get(y).layers().stream().filter(l -> l.weed().equals(id)).toList();
      int sprayed = pass.timing().years().get(y).day();
      double bare = 0;
      double all = 0;
      for (int c = 0; c < set.count(); c++) {
        int up = set.emergedOn(c);
        boolean held = layers.stream().anyMatch(l -> l.fromDay() <= up && up <= l.toDay());
        all += set.perM2(c);
        bare += up > sprayed && up < trace.canopyDay() && !held ? set.perM2(c) : 0;
      }
      sum += all > 0 ? bare / all : 0;
    }
    return sum / years;
  }

  private static double toCome(ProgramFacts facts, int weed) {
    double sum = 0;
    for (SeasonTrace trace : facts.traces().years()) {
      CohortSet set = trace.cohorts(weed);
      double later = 0;
      double all = 0;
      for (int c = 0; c < set.count(); c++) {
        all += set.perM2(c);
        later += set.emergedOn(c) > trace.plantingDay() ? set.perM2(c) : 0;
      }
      sum += all > 0 ? later / all : 0;
    }
    return sum / facts.traces().years().size();
  }

  private static boolean hasLayer(ProgramFacts facts, WeedId weed) {
    long with =
        facts.season().years().stream()
            .filter(y -> y.layers().stream().anyMatch(l -> l.weed().equals(weed)))
            .count();
    return 2 * with >= facts.season().years().size();
  }
}
