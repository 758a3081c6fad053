package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.Rule;
import org.swathbook.rules.Say;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/** Days from a spraying to what is taken off the field, for one kind of harvest after another. */
record CommodityIntervals(Rule rule, UseFacts facts, Use use, Findings out) {

  void judge(Iterable<Commodity> of) {
    for (Commodity commodity : of) {
      Stated<HarvestLimit> limit = use.harvestLimit(commodity);
      if (limit instanceof Stated.Value<HarvestLimit> v) {
        judge(facts, commodity, v.value(), v.source(), out);
      } else if (limit.isUnknown() && matters(facts, commodity)) {
        out.ask(
            rule,
            facts.about(),
            () ->
                new Lookup(
                    "days from "
                        + facts.ingredient().name()
                        + " to "
                        + word(commodity)
                        + " of "
                        + facts.cropName(),
                    Where.use(
                        facts.ingredient(),
                        use,
                        "intervals." + commodity.name().toLowerCase(Locale.ROOT),
                        "preharvest and grazing intervals")));
      }
    }
  }

  /** Grain is months away from what is sprayed before emergence; feed may not be. */
  private static boolean matters(UseFacts facts, Commodity commodity) {
    return facts.isInCrop() || commodity != Commodity.GRAIN;
  }

  private void judge(
      UseFacts facts, Commodity commodity, HarvestLimit limit, Source source, Findings out) {
    if (limit.refused()) {
      out.block(
          rule,
          facts.about(),
          () ->
              Text.of(
                      Say.start(facts.ingredient())
                          + ": the label refuses "
                          + word(commodity)
                          + " of treated "
                          + facts.cropName()
                          + ", and the field is used for it.",
                      source.text())
                  .compared(word(commodity), "refused")
                  .cleared("another active, or grain only"));
      return;
    }
    LocalDate earliest = facts.date().plusDays(limit.days());
    Optional<LocalDate> harvest = facts.field().harvestDate();
    if (harvest.isEmpty()) {
      if (limit.days() > 0 && facts.isInCrop()) {
        out.note(
            rule,
            facts.about(),
            () ->
                Text.of(
                        Say.start(facts.ingredient())
                            + ": no "
                            + word(commodity)
                            + " before "
                            + Say.date(earliest)
                            + " ("
                            + Say.days(limit.days())
                            + ").",
                        source.text())
                    .compared("no harvest date", Say.days(limit.days())));
      }
      return;
    }
    long days = ChronoUnit.DAYS.between(facts.date(), harvest.get());
    if (days >= 0 && days < limit.days()) {
      out.block(
          rule,
          facts.about(),
          () ->
              Text.of(
                      Say.start(facts.ingredient())
                          + " needs "
                          + Say.days(limit.days())
                          + " before "
                          + word(commodity)
                          + " of "
                          + facts.cropName()
                          + "; this pass leaves "
                          + days
                          + ".",
                      source.text())
                  .compared(Say.days(days), Say.days(limit.days()))
                  .cleared(
                      "harvest on or after "
                          + Say.date(earliest)
                          + ", or an active with a shorter interval"));
    } else if (days >= limit.days()) {
      YearShare share = share(facts, harvest.get(), limit.days());
      if (share.isRisky()) {
        out.warn(
            rule,
            facts.about(),
            () ->
                Text.of(
                        Say.start(facts.ingredient())
                            + ": "
                            + share.missedWords()
                            + " weather delays this pass until fewer than the "
                            + Say.days(limit.days())
                            + " before "
                            + word(commodity)
                            + " are left.",
                        source.text())
                    .compared(Say.days(days) + " in the median year", Say.days(limit.days()))
                    .cleared("an earlier pass, or a later harvest"));
      }
    }
  }

  private static YearShare share(UseFacts facts, LocalDate harvest, int needed) {
    List<SeasonTrace> years = facts.traces().years();
    int met = 0;
    for (int y = 0; y < years.size(); y++) {
      LocalDate sprayed = years.get(y).bookDateOf(facts.timing().years().get(y).day());
      if (ChronoUnit.DAYS.between(sprayed, harvest) >= needed) {
        met++;
      }
    }
    return new YearShare(met, years.size());
  }

  private static String word(Commodity commodity) {
    return switch (commodity) {
      case GRAIN -> "harvest";
      case FORAGE -> "forage harvest";
      case SILAGE -> "silage harvest";
      case HAY -> "haymaking";
      case GRAZING -> "grazing";
    };
  }
}
