package org.swathbook.rules.weather;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.book.Neighbor;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** Wind that blows toward what must not be hit. */
public final class SensitiveNeighborRule implements DayRule, PassRule {
  /** A quarter of a mile. */
  private static final double NEAR_FT = 1320;

  /** What lies farther is no neighbor (default, ours). */
  private static final double FAR_FT = 5280;

  /**
   * Parent actives of which every salt and ester counts, whatever buffer its label has or has not.
   */
  private static final Set<String> REFUSED_TOWARD = Set.of("2,4-D", "dicamba");

  private static final String PARTNER = ", or a partner of another site";

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("sensitive-neighbor"),
          Severity.BLOCK,
          "Does the wind blow toward a sensitive neighbor?",
          "The wind blows within 45 degrees of a listed neighbor: a block where it is nearer than the"
              + " downwind buffer of a partner's label, and, for every form of 2,4-D and dicamba and any"
              + " other growth regulator whose label has such a buffer, where it is tender plants or"
              + " people within a mile. Else a warning"
              + " within a quarter of a mile for sites 4 and 22, and for clomazone where its label's"
              + " distance is not known; within the distance that is known also in another wind, since"
              + " it leaves as vapor. A warning where the direction is not known and a neighbor is that"
              + " near. An ask for a buffer that the catalog does not state, of these and of contact"
              + " actives on leaves, where tender plants or people are downwind within a quarter of a"
              + " mile. In a plan, which has no wind yet, a note on each pass says from where it must"
              + " not blow.",
          List.of(
              "labels of dicamba and 2,4-D over tolerant crops: no spraying toward sensitive crops (from"
                  + " memory)",
              "labels of 2,4-D esters: vapor and drift injure grapes, tomatoes and cotton (from memory)",
              "PNW Weed Management Handbook, clomazone 300 ft from field crops, 1000 ft from orchards,"
                  + " gardens and landscapes",
              Say.COMMON_PRACTICE),
          "dicamba over soybean with wind from the southwest and a vineyard 1500 ft northeast",
          "the same field with wind from the north");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    List<String> neighbors = facts.pass().field().neighbors();
    if (neighbors.isEmpty()) {
      noneListed(facts, out);
    }
    OptionalDouble from = facts.job().weather().windFromDegrees();
    double acres = facts.pass().field().acres();
    for (String written : neighbors) {
      Neighbor n = Neighbor.parse(written);
      About about = facts.pass().about().withNeighbor(written.strip());
      for (ActiveUse a : facts.pass().actives()) {
        Stated<Double> buffer = feet(a, n);
        boolean downwind = from.isPresent() && n.isDownwind(from.getAsDouble());
        if (from.isEmpty()) {
          unknownWind(about, a, n, buffer, out);
        } else if (downwind) {
          downwind(about, a, n, buffer, acres, out);
        } else if (isClomazone(a) && n.isTender() && isInside(n, buffer)) {
          vapor(about, a, n, buffer, out);
        }
        if (buffer.isUnknown()
            && (downwind || from.isEmpty())
            && n.isTender()
            && n.distanceFt() <= NEAR_FT
            && hurtsNearby(a, n)) {
          Unknowns.ofLabel(
              this, facts, a, "distance downwind that the label keeps", "day.buffer", out);
        }
      }
    }
  }

  /** In a plan: which winds a pass has to wait out, and for the sake of whom. */
  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isPresent()) {
      return;
    }
    for (String written : facts.field().neighbors()) {
      Neighbor n = Neighbor.parse(written);
      List<ActiveUse> kept =
          facts.actives().stream().filter(a -> isKeptFrom(a, n, feet(a, n))).toList();
      if (!kept.isEmpty()) {
        out.note(this, facts.about().withNeighbor(written.strip()), () -> winds(n, kept));
      }
    }
  }

  private static Text winds(Neighbor n, List<ActiveUse> kept) {
    boolean vapor =
        kept.stream().anyMatch(a -> isClomazone(a) && n.isTender() && isInside(n, feet(a, n)));
    return Text.of(
        "Not with wind from "
            + n.windsToward()
            + ", which blows toward the neighbor '"
            + n.what()
            + "', "
            + Math.round(n.distanceFt())
            + " ft to the "
            + n.bearing()
            + ": "
            + Say.list(kept.stream().map(a -> a.ingredient().name()).distinct().toList())
            + " must not get there."
            + (vapor
                ? " Clomazone leaves the soil as vapor for days, whichever way the wind turns."
                : ""),
        kept.stream()
            .map(a -> feet(a, n))
            .filter(b -> b.find().isPresent())
            .findFirst()
            .map(Say::source)
            .orElse(Say.COMMON_PRACTICE));
  }

  /** Whether wind toward a neighbor stands in its way. */
  private static boolean isKeptFrom(ActiveUse a, Neighbor n, Stated<Double> buffer) {
    return isRefusedToward(a, n, buffer)
        || isInside(n, buffer)
        || n.distanceFt() <= driftsFt(a, buffer);
  }

  /** The list may be empty because nobody filled it. */
  private void noneListed(DayFacts facts, Findings out) {
    List<String> keeping =
        facts.pass().actives().stream()
            .filter(a -> a.terms().day().downwindBuffer().find().isPresent())
            .map(a -> a.ingredient().name())
            .distinct()
            .toList();
    if (!keeping.isEmpty()) {
      out.note(
          this,
          facts.pass().about(),
          () ->
              Text.of(
                  "No neighbor of this field is listed; labels keep a distance downwind for "
                      + Say.list(keeping)
                      + ", so look what lies there.",
                  "the labels' own buffers"));
    }
  }

  private void downwind(
      About about,
      ActiveUse a,
      Neighbor n,
      Stated<Double> buffer,
      double fieldAcres,
      Findings out) {
    boolean inside = isInside(n, buffer);
    boolean toward = isRefusedToward(a, n, buffer);
    if (inside || toward) {
      out.block(
          this,
          about.withIngredient(a.ingredient().id()),
          () ->
              text(a, n, buffer)
                  .compared(
                      Math.round(n.distanceFt()) + " ft downwind",
                      inside
                          ? Math.round(buffer.find().get()) + " ft"
                          : "no wind toward sensitive plants")
                  .cleared(
                      "wind that blows away from it"
                          + (inside && !toward
                              ? ", or "
                                  + BufferStrip.of(
                                          fieldAcres,
                                          buffer.find().get() - n.distanceFt(),
                                          n.bearingDegrees())
                                      .words()
                              : "")
                          + PARTNER));
    } else if (n.distanceFt() <= driftsFt(a, buffer)) {
      out.warn(
          this,
          about.withIngredient(a.ingredient().id()),
          () ->
              text(a, n, buffer)
                  .compared(Math.round(n.distanceFt()) + " ft downwind", "a quarter of a mile")
                  .cleared("wind that blows away from it" + PARTNER));
    }
  }

  /** What leaves the soil as vapor moves with the winds of later days as well. */
  private void vapor(About about, ActiveUse a, Neighbor n, Stated<Double> buffer, Findings out) {
    out.warn(
        this,
        about.withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    "The wind now blows past the neighbor '"
                        + n.what()
                        + "', "
                        + Math.round(n.distanceFt())
                        + " ft away, but "
                        + a.ingredient().name()
                        + " leaves the soil as vapor for days, whichever way the wind turns."
                        + which(a, n),
                    Say.source(buffer))
                .compared(
                    Math.round(n.distanceFt()) + " ft",
                    Math.round(buffer.find().orElseThrow()) + " ft")
                .cleared(
                    "that side left untreated to the label's distance, or an active of another"
                        + " site"));
  }

  private static Text text(ActiveUse a, Neighbor n, Stated<Double> buffer) {
    return Text.of(
        "The wind blows toward the neighbor '"
            + n.what()
            + "', "
            + Math.round(n.distanceFt())
            + " ft away, and "
            + a.ingredient().name()
            + " must not get there."
            + which(a, n),
        Say.source(buffer));
  }

  private void unknownWind(
      About about, ActiveUse a, Neighbor n, Stated<Double> buffer, Findings out) {
    if (isKeptFrom(a, n, buffer)) {
      out.warn(
          this,
          about.withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      "Where the wind comes from is not known; "
                          + n.what()
                          + ", "
                          + Math.round(n.distanceFt())
                          + " ft away, may lie downwind.",
                      Say.COMMON_PRACTICE)
                  .compared("direction unknown", "wind away from it")
                  .cleared("write windFrom into the job, and spray with wind away from it"));
    }
  }

  /** What the label keeps from such a neighbor. */
  private static Stated<Double> feet(ActiveUse a, Neighbor n) {
    return a.terms()
        .day()
        .downwindBuffer()
        .match(
            (b, source) -> Stated.value(b.feet(n.isFieldCrop()), source),
            Stated::<Double>none,
            Stated::<Double>unknown);
  }

  /** Which of two distances of a label holds here; empty where it has one for all. */
  private static String which(ActiveUse a, Neighbor n) {
    return a.terms()
        .day()
        .downwindBuffer()
        .find()
        .filter(b -> b.fieldCropsFt().isPresent())
        .map(
            b ->
                " Its label keeps "
                    + Math.round(b.fieldCropsFt().getAsDouble())
                    + " ft from field crops and "
                    + Math.round(b.downwindFt())
                    + " ft from orchards, gardens, homes and all else; this neighbor counts as "
                    + (n.isFieldCrop() ? "a field crop." : "the latter."))
        .orElse("");
  }

  private static boolean isInside(Neighbor n, Stated<Double> buffer) {
    return buffer.find().isPresent() && Quantity.exceeds(buffer.find().get(), n.distanceFt());
  }

  /**
   * Growth regulators that no wind may carry to tender plants or people, however far within reach.
   */
  private static boolean isRefusedToward(ActiveUse a, Neighbor n, Stated<Double> buffer) {
    return site(a) == 4
        && (buffer.find().isPresent() || REFUSED_TOWARD.contains(a.ingredient().capGroup()))
        && n.isTender()
        && n.distanceFt() <= FAR_FT;
  }

  /** How far downwind of it one is warned without a word of its label, ft; 0 where not at all. */
  private static double driftsFt(ActiveUse a, Stated<Double> buffer) {
    if (isClomazone(a)) {
      // Its label states how far; farther away nothing is asked of it.
      return buffer.isUnknown() ? NEAR_FT : 0;
    }
    return site(a) == 4 || site(a) == 22 ? NEAR_FT : 0;
  }

  /** Of which small amounts on a neighbor's leaves are seen, so that labels have buffers. */
  private static boolean hurtsNearby(ActiveUse a, Neighbor n) {
    return driftsFt(a, feet(a, n)) > 0
        || a.ingredient().isContact() && a.ingredient().hasFoliarActivity();
  }

  private static boolean isClomazone(ActiveUse a) {
    return a.ingredient().id().value().equals("clomazone");
  }

  private static int site(ActiveUse a) {
    return a.ingredient().site().number();
  }
}
