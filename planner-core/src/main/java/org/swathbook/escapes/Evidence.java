package org.swathbook.escapes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.control.Antagonism;
import org.swathbook.control.FoliarReach;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Observation;
import org.swathbook.program.PlantCounts;
import org.swathbook.program.SeenWeed;
import org.swathbook.program.SurvivorPattern;
import org.swathbook.rules.Say;

/**
 * Weighs signs of resistance against signs of a failed application. Signs: Norsworthy et al. 2012,
 * Weed Science 60 (special issue), 31-62, and lists of North Dakota State and Kansas State
 * extension; their weights of one or two are ours (default).
 */
final class Evidence {
  /**
   * Height up to which plants should be sprayed, cm: Norsworthy et al. 2012, where none is rated.
   */
  private static final double SMALL_CM = 10;

  private static final String SPRAYED_AT = "it was sprayed at ";

  private final Observation seen;
  private final SeenWeed weed;
  private final Book book;
  private final List<Ingredient> working;
  private final List<String> evidenceFor = new ArrayList<>();
  private final List<String> evidenceAgainst = new ArrayList<>();
  private final List<String> plain = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();
  private final List<Site> suspects = new ArrayList<>();
  private int score;

  private Evidence(Book book, Observation seen, SeenWeed weed, List<Ingredient> working) {
    this.book = book;
    this.seen = seen;
    this.weed = weed;
    this.working = working;
  }

  /** Of a weed of which plants live on. */
  static Suspicion of(
      Book book, Observation seen, SeenWeed weed, List<Ingredient> working, WeatherSince since) {
    Evidence e = new Evidence(book, seen, weed, working);
    e.species();
    e.pattern();
    e.size();
    e.expected();
    e.conditions();
    e.antagonism();
    e.weather(since);
    e.history();
    return new Suspicion(
        e.level(), e.evidenceFor, e.evidenceAgainst, e.plain, e.suspects, e.unknown);
  }

  private Suspicion.Level level() {
    if (evidenceFor.isEmpty()) {
      return evidenceAgainst.isEmpty() && !unknown.isEmpty()
          ? Suspicion.Level.NOT_JUDGED
          : Suspicion.Level.NONE;
    }
    return score <= 0
        ? Suspicion.Level.SLIGHT
        : score <= 2 ? Suspicion.Level.MODERATE : Suspicion.Level.STRONG;
  }

  private void speaksFor(int weight, String what) {
    score += weight;
    evidenceFor.add(what);
  }

  private void speaksAgainst(int weight, String what, boolean plainCause) {
    score -= weight;
    evidenceAgainst.add(what);
    if (plainCause) {
      plain.add(what);
    }
  }

  private void species() {
    List<String> living = othersAlive();
    if (!living.isEmpty()) {
      // What was counted outweighs what was ticked.
      speaksAgainst(2, "other weeds that the mix controls live too: " + Say.list(living), false);
    } else if (weed.otherSpeciesControlled().isEmpty()) {
      unknown.add("whether the other weeds that the mix controls are dead");
    } else if (weed.otherSpeciesControlled().get()) {
      speaksFor(2, "the other weeds that the mix controls are dead");
    } else {
      speaksAgainst(2, "other weeds that the mix controls live too", false);
    }
    if (weed.sameSpeciesDeadBeside().isEmpty()) {
      unknown.add("whether dead plants of the same weed stand beside live ones of its size");
    } else if (weed.sameSpeciesDeadBeside().get()) {
      speaksFor(
          2,
          "dead plants of the same weed stand beside live ones"
              + (isRange() ? ", with every degree of injury between" : ""));
    }
  }

  /** Other weeds of this look that the mix should have controlled and of which plants live on. */
  private List<String> othersAlive() {
    return seen.weeds().stream()
        .filter(w -> !w.weed().equals(weed.weed()))
        .filter(w -> w.plants().regrowing() + w.plants().untouched() > 0)
        .filter(
            w ->
                Readings.working(book, seen.mix(), w.weed()).stream()
                    .anyMatch(i -> Readings.works(book, i, w.weed())))
        .map(w -> book.catalog().weed(w.weed()).name())
        .toList();
  }

  /** From dead by way of injured to living on: plants of unlike response under one spray. */
  private boolean isRange() {
    PlantCounts p = weed.plants();
    return p.dead() > 0 && p.collapsed() + p.stalled() > 0 && p.regrowing() + p.untouched() > 0;
  }

  private void weather(WeatherSince since) {
    if (since.isCool()) {
      speaksAgainst(
          1, "it was cool after the spraying, and plants in the cold take up little", true);
    }
  }

  /** A partner of the tank that took control from one that was counted on. */
  private void antagonism() {
    for (Ingredient loser : working) {
      Antagonism.of(seen.mix(), book.catalog().weed(weed.weed()), book.catalog().interactions())
          .stream()
          .filter(a -> a.affected().id().equals(loser.id()))
          .findFirst()
          .ifPresent(
              a ->
                  speaksAgainst(
                      1, loser.name() + " loses control to a partner of this tank", true));
    }
  }

  private void pattern() {
    if (weed.pattern().isEmpty()) {
      unknown.add("how the survivors lie in the field");
      return;
    }
    SurvivorPattern p = weed.pattern().get();
    switch (p) {
      case SCATTERED -> speaksFor(1, "survivors are scattered, with no pattern of the sprayer");
      case PATCHES -> speaksFor(1, "survivors stand in patches");
      case STRIPS ->
          speaksAgainst(
              3,
              "survivors stand in strips: coverage, a nozzle, the boom, an overlap or wheel tracks",
              true);
      case FIELD_EDGE ->
          speaksAgainst(2, "survivors stand along the field edge: a missed or turned end", true);
      case WHOLE_FIELD ->
          speaksAgainst(1, "survivors stand all over the field: rate, mix or weather", false);
    }
  }

  /** The tallest that any working partner was rated at. */
  private void size() {
    double limitCm =
        working.stream()
            .flatMap(
                i ->
                    book
                        .catalog()
                        .response(weed.weed(), i.id(), Response.Timing.POST)
                        .find()
                        .stream())
            .flatMapToDouble(r -> r.controlHeightCm().stream())
            .max()
            .orElse(SMALL_CM);
    if (weed.sprayedAtCm().isEmpty()) {
      unknown.add("how tall it was when sprayed");
    } else if (weed.sprayedAtCm().getAsDouble() > limitCm * (1 + 1e-9)) {
      speaksAgainst(
          2,
          SPRAYED_AT
              + Say.inches(weed.sprayedAtCm().getAsDouble())
              + ", taller than the "
              + Say.inches(limitCm)
              + " up to which it is controlled",
          true);
    } else {
      speaksFor(0, "it was sprayed in size, at " + Say.inches(weed.sprayedAtCm().getAsDouble()));
    }
  }

  /**
   * What each site should have done to plants of that height at that rate: below what the house
   * calls effective, survivors were to be expected, and are no sign against the site.
   */
  private void expected() {
    Map<Site, Double> most = new TreeMap<>();
    for (Dose dose : seen.mix().doses()) {
      for (ActiveDose a : dose.actives()) {
        if (working.contains(a.ingredient())) {
          most.merge(a.ingredient().site(), pct(dose, a), Math::max);
        }
      }
    }
    double asked = 100 * book.house().effectiveSite();
    // Too tall a plant was said to be one already, and is not weighed twice.
    boolean tooTall = evidenceAgainst.stream().anyMatch(e -> e.startsWith(SPRAYED_AT));
    most.forEach(
        (site, pct) -> {
          if (!Quantity.exceeds(asked, pct)) {
            suspects.add(site);
          }
        });
    most.forEach(
        (site, pct) -> {
          if (Quantity.exceeds(asked, pct)) {
            speaksAgainst(
                suspects.isEmpty() && !tooTall ? 2 : 0,
                "site "
                    + site
                    + " does "
                    + Say.pct(Math.rint(pct))
                    + " by the model at "
                    + Say.inches(weed.sprayedAtCm().orElse(0))
                    + " and that rate, so that some live through it is to be expected",
                suspects.isEmpty());
          }
        });
  }

  /** Percent; all where the height or the figure is not known, so that nothing is excused by it. */
  private double pct(Dose dose, ActiveDose active) {
    return weed.sprayedAtCm().isEmpty()
        ? 100
        : 100
            * FoliarReach.ofDose(
                    book.catalog(),
                    book.findField(seen.field().value()).orElseThrow(),
                    active.ingredient(),
                    dose.product().formulation(),
                    active.kgPerHa(),
                    book.catalog().weed(weed.weed()),
                    weed.sprayedAtCm().getAsDouble())
                .orElse(1);
  }

  private void conditions() {
    if (seen.conditions().coverage().isEmpty()) {
      unknown.add("how well leaves were covered");
    } else if (seen.conditions().coverage().get().equals("poor")) {
      speaksAgainst(2, "leaves were poorly covered", true);
    }
    if (seen.conditions().rate().isEmpty()) {
      unknown.add("whether the rate was as planned");
    } else if (seen.conditions().rate().get().equals("below")) {
      speaksAgainst(2, "the rate was below the planned one", true);
    }
    if (seen.conditions().soil().isEmpty()) {
      unknown.add("how moist the soil was");
    } else if (seen.conditions().soil().get().equals("dry")) {
      speaksAgainst(1, "the soil was dry, and dry plants take up little", true);
    }
  }

  private void history() {
    List<Site> sites = working.stream().map(Ingredient::site).distinct().sorted().toList();
    for (WeedPressure p : book.weedsOf(seen.field())) {
      if (p.weed().id().equals(weed.weed())) {
        for (Ingredient i : working) {
          p.listed().stream()
              // What an earlier look noted is not a second witness of what it saw itself.
              .filter(r -> !r.isWatched() && r.concerns(i))
              .findFirst()
              .ifPresent(
                  r ->
                      speaksFor(
                          1,
                          "resistance to "
                              + r.site().map(s -> "site " + s).orElseGet(i::name)
                              + " is listed for it in this field"));
        }
      }
    }
    for (Site site : sites) {
      List<Integer> seasons =
          book.journal().of(seen.field()).stream()
              .filter(a -> a.season() < book.season())
              .filter(
                  a ->
                      a.dose().actives().stream().anyMatch(d -> d.ingredient().site().equals(site)))
              .map(a -> a.season())
              .distinct()
              .sorted()
              .toList();
      if (!seasons.isEmpty()) {
        speaksFor(
            seasons.size() > 1 ? 1 : 0,
            "site "
                + site
                + " was sprayed here in "
                + seasons.stream().map(String::valueOf).collect(Collectors.joining(" and "))
                + " too");
      }
    }
  }
}
