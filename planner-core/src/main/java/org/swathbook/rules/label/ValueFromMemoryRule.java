package org.swathbook.rules.label;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** Limits of a verdict that rest on memory, and those of them that nearly decide it. */
public final class ValueFromMemoryRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("value-from-memory"),
          Severity.WARN,
          "Which limits of this verdict rest on memory?",
          "One note names, by active, the kinds of limits of the uses in this tank that the catalog has"
              + " from memory. A warning where a remembered days-to-harvest or crop height is within"
              + " 10 % of what is met; at the loading pad also for days to planting, to the next crop and"
              + " between two applications, the crop's last stage, the height of a driver weed, soil pH"
              + " and organic matter, the hours without rain, and the wait after an insecticide on leaves.",
          List.of(Say.COMMON_PRACTICE),
          "70 days before harvest, from memory, with 72 days left",
          "an active all of whose limits have a source");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Map<String, SortedSet<String>> remembered = new TreeMap<>();
    for (ActiveUse a : facts.actives()) {
      if (a.use().isPresent()) {
        SortedSet<String> kinds = kinds(facts, a, a.use().get());
        if (!kinds.isEmpty()) {
          remembered.computeIfAbsent(a.ingredient().name(), n -> new TreeSet<>()).addAll(kinds);
        }
        harvest(facts, a, a.use().get(), out);
        height(facts, a, a.use().get(), out);
        if (facts.job().isPresent()) {
          CloseCalls.of(facts, a, a.use().get()).forEach(c -> close(facts, a, c, out));
        }
      }
    }
    if (!remembered.isEmpty()) {
      boolean inPlan = facts.job().isEmpty();
      out.note(this, facts.about(), () -> inPlan ? names(remembered) : note(remembered));
    }
  }

  /** In a plan the kinds would drown the rest; they stand in a check of the tank. */
  private static Text names(Map<String, SortedSet<String>> remembered) {
    return Text.of(
            "Some limits are from memory in the catalog: "
                + Say.list(new ArrayList<>(remembered.keySet()))
                + ".",
            "from memory")
        .cleared("hold them against the current label");
  }

  private static Text note(Map<String, SortedSet<String>> remembered) {
    List<String> parts = new ArrayList<>();
    remembered.forEach(
        (active, kinds) -> parts.add(active + " (" + String.join(", ", kinds) + ")"));
    return Text.of("From memory in the catalog: " + String.join("; ", parts) + ".", "from memory")
        .cleared("hold them against the current label");
  }

  private static SortedSet<String> kinds(PassFacts facts, ActiveUse a, Use use) {
    SortedSet<String> out = new TreeSet<>();
    add(out, "rate", use.rates());
    add(out, "crop stage", use.timing());
    add(out, "crop height", use.cropHeightCm());
    add(out, "days to planting", use.plantingInterval());
    add(out, "soil pH", use.soilPh());
    add(out, "season's cap", use.caps());
    add(out, "applications", use.applications());
    add(out, "days between", use.repeatDays());
    add(out, "weed height", use.weedHeights());
    add(out, "traits", use.traits());
    for (Commodity c : facts.field().uses()) {
      add(out, "days to harvest", use.harvestLimit(c));
    }
    for (CropId next : facts.field().nextCrops()) {
      add(out, "next crop", a.ingredient().rotationTo(next));
    }
    return out;
  }

  private static void add(SortedSet<String> out, String kind, Stated<?> stated) {
    if (stated.findSource().filter(Source::fromMemory).isPresent()) {
      out.add(kind);
    }
  }

  private void close(PassFacts facts, ActiveUse a, CloseCall c, Findings out) {
    out.warn(
        this,
        facts.about().withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    Say.start(a.ingredient())
                        + ": its limit of "
                        + c.what()
                        + ", "
                        + c.limit()
                        + ", rests on memory, and here it is "
                        + c.met()
                        + ".",
                    c.source())
                .compared(c.met(), c.limit())
                .cleared("read this limit on the current label"));
  }

  private void harvest(PassFacts facts, ActiveUse a, Use use, Findings out) {
    if (facts.field().harvestDate().isEmpty()) {
      return;
    }
    long left =
        ChronoUnit.DAYS.between(
            facts.pass().timing().medianDate(), facts.field().harvestDate().get());
    for (Commodity c : facts.field().uses().stream().sorted().toList()) {
      if (use.harvestLimit(c) instanceof Stated.Value<HarvestLimit> v
          && v.source().fromMemory()
          && !v.value().refused()
          && left >= v.value().days()
          && left - v.value().days() <= CloseCalls.CLOSE * v.value().days()) {
        out.warn(
            this,
            facts.about().withIngredient(a.ingredient().id()),
            () ->
                Text.of(
                        Say.start(a.ingredient())
                            + ": the "
                            + Say.days(v.value().days())
                            + " before harvest rest on memory, and "
                            + Say.days(left)
                            + " are left.",
                        v.source().text())
                    .compared(Say.days(left), Say.days(v.value().days()))
                    .cleared("read the interval on the current label"));
      }
    }
  }

  private void height(PassFacts facts, ActiveUse a, Use use, Findings out) {
    double cm = facts.pass().timing().medianHeightCm();
    if (facts.isInCrop()
        && use.cropHeightCm() instanceof Stated.Value<Limit> v
        && v.source().fromMemory()
        && v.value().most().isPresent()
        && v.value().allows(cm)
        && v.value().most().getAsDouble() - cm
            <= CloseCalls.CLOSE * v.value().most().getAsDouble()) {
      out.warn(
          this,
          facts.about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      Say.start(a.ingredient())
                          + ": its limit of crop height, "
                          + Say.inches(v.value().most().getAsDouble())
                          + ", rests on memory, and the crop is at "
                          + Say.inches(cm)
                          + ".",
                      v.source().text())
                  .compared(Say.inches(cm), Say.inches(v.value().most().getAsDouble()))
                  .cleared("read the height on the current label"));
    }
  }
}
