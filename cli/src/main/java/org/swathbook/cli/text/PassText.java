package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Site;
import org.swathbook.check.JudgedTank;
import org.swathbook.check.TankDroplets;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.report.PlannedDay;
import org.swathbook.measure.Numbers;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.tank.UnmetNeed;

/** One pass: when, what, at what rate, and what it meets. */
final class PassText {
  private final Book book;
  private final Field field;
  private final SeasonOutcome outcome;

  PassText(Book book, Field field, SeasonOutcome outcome) {
    this.book = book;
    this.field = field;
    this.outcome = outcome;
  }

  void on(Page page, PassOutcome pass, JudgedTank judged) {
    PassWords words = words(pass, judged);
    page.apart("Pass " + words.number() + "  " + words.when(), words.money());
    page.wrapped(2, 4, words.timing());
    Table mix = new Table(4, "llll");
    words.mix().forEach(m -> mix.row(m.product(), m.rate(), m.active(), m.site()));
    mix.on(page);
    words.tank().forEach(t -> page.wrapped(4, 6, t));
    for (PassWords.Met met : words.met()) {
      page.wrapped(4, 6, met.weed() + ": " + met.standing());
      met.lines().forEach(l -> page.wrapped(6, 8, l));
    }
    page.blank();
  }

  PassWords words(PassOutcome pass, JudgedTank judged) {
    List<PassWords.Part> mix = new ArrayList<>();
    for (Dose d : pass.mix().doses()) {
      String product = d.product().name();
      String rate = Numbers.decimals(d.rate().amount(), 2) + " " + d.rate().unitText();
      for (ActiveDose a : d.actives()) {
        mix.add(new PassWords.Part(product, rate, active(a), "site " + a.ingredient().site()));
        product = "";
        rate = "";
      }
    }
    List<String> tank = new ArrayList<>();
    String carrier = tank(pass.mix(), judged.droplets());
    if (!carrier.isEmpty()) {
      tank.add(carrier);
    }
    judged.unmet().forEach(u -> tank.add(unmet(u)));
    List<PassWords.Met> met = new ArrayList<>();
    for (PassWeed w : pass.weeds()) {
      if (outcome.weed(w.weed()).pressure().driver().isDriver()) {
        met.add(met(pass, w));
      }
    }
    return new PassWords(
        pass.index() + 1,
        Figures.date(pass.planned()) + ", " + fromPlanting(PlannedDay.afterPlanting(field, pass)),
        pass.cost()
            .map(m -> "products " + Figures.money(m) + " $/acre")
            .orElse("a product has no price"),
        timing(pass),
        mix,
        tank,
        met);
  }

  static String active(ActiveDose a) {
    return a.ingredient().name()
        + " "
        + Numbers.decimals(a.lbPerAcre(), 3)
        + " lb "
        + a.rate().basis().symbol()
        + "/acre";
  }

  static String fromPlanting(int days) {
    return days == 0
        ? "at planting"
        : Figures.counted(Math.abs(days), "day", "days")
            + (days < 0 ? " before" : " after")
            + " planting";
  }

  private String timing(PassOutcome pass) {
    if (pass.made()) {
      return "MADE on this day, as the journal has it; crop " + pass.cropStage();
    }
    if (pass.missedYears().size() == outcome.years().size()) {
      return "MISSED in every year: no day fit to spray in its window";
    }
    return "sprayed "
        + Figures.day(pass.timing().medianDate())
        + " (median; "
        + Figures.day(pass.earliest())
        + " to "
        + Figures.day(pass.latest())
        + " over the years); crop "
        + pass.cropStage()
        + (pass.missedYears().isEmpty()
            ? "; never missed"
            : "; MISSED in " + Figures.years(pass.missedYears()));
  }

  private static String tank(Mix mix, TankDroplets droplets) {
    List<String> parts = new ArrayList<>();
    Map<String, List<String>> rates = new LinkedHashMap<>();
    for (Adjuvant a : mix.adjuvants()) {
      rates.computeIfAbsent(a.kind(), k -> new ArrayList<>()).add(a.rate());
    }
    rates.forEach((kind, of) -> parts.add(kind + " " + rate(of)));
    if (mix.gallonsPerAcre().isPresent()) {
      parts.add("carrier " + Numbers.decimals(mix.gallonsPerAcre().getAsDouble(), 1) + " gal/acre");
    }
    droplets.words().ifPresent(w -> parts.add("droplets " + w));
    if (!droplets.unknown().isEmpty()) {
      parts.add("droplet class not known of " + Figures.list(droplets.unknown()));
    }
    return String.join("; ", parts);
  }

  /** Of several rates of one kind the one that is more at the spray volume governs. */
  private static String rate(List<String> rates) {
    return String.join(" or ", rates) + (rates.size() > 1 ? ", whichever is more" : "");
  }

  private static String unmet(UnmetNeed u) {
    return "NOT MET: "
        + u.of().name()
        + " asks for "
        + UnmetNeed.words(u.need())
        + "; refused by "
        + Figures.list(u.refusedBy());
  }

  private PassWords.Met met(PassOutcome pass, PassWeed w) {
    List<String> lines = new ArrayList<>();
    lines.add(sites(w));
    LayerSummary.of(outcome, book.season(), pass.index(), w.weed())
        .ifPresent(l -> lines.add(layer(l)));
    return new PassWords.Met(outcome.weed(w.weed()).pressure().weed().name(), standing(w), lines);
  }

  private String standing(PassWeed w) {
    if (!w.stands()) {
      return "none standing to speak of in the median year";
    }
    return Figures.density(w.medianPerM2())
        + " plants/m² up; half to "
        + Figures.inches(w.p50Cm())
        + " in, "
        + Numbers.decimals(100 * book.house().sizePercentile(), 0)
        + " % to "
        + Figures.inches(w.p90Cm())
        + " in (over the years "
        + Figures.inches(w.p90LowCm())
        + " to "
        + Figures.inches(w.p90HighCm())
        + ")";
  }

  static String sites(PassWeed w) {
    List<String> parts = new ArrayList<>();
    if (w.stands()) {
      parts.add("effective foliar sites: " + counted(w.foliar()));
    }
    parts.add("effective soil sites: " + counted(w.soil()));
    return String.join("; ", parts);
  }

  /** {@code 2 (4, 22), half: 14, half in the cold: 10, resisted: 9, suspected (watch list): 5}. */
  private static String counted(List<SiteControl> sites) {
    List<Site> effective =
        sites.stream().filter(SiteControl::effective).map(SiteControl::site).toList();
    List<Site> half =
        sites.stream().filter(s -> s.half() && !s.slowed()).map(SiteControl::site).toList();
    List<Site> slowed =
        sites.stream().filter(s -> s.half() && s.slowed()).map(SiteControl::site).toList();
    List<Site> struck =
        sites.stream().filter(s -> s.struck() && !s.watched()).map(SiteControl::site).toList();
    List<Site> watched =
        sites.stream().filter(SiteControl::watched).map(SiteControl::site).toList();
    StringBuilder out = new StringBuilder().append(effective.size());
    if (!effective.isEmpty()) {
      out.append(" (").append(numbers(effective)).append(')');
    }
    if (!half.isEmpty()) {
      out.append(", half: ").append(numbers(half));
    }
    if (!slowed.isEmpty()) {
      out.append(", half in the cold: ").append(numbers(slowed));
    }
    if (!struck.isEmpty()) {
      out.append(", resisted: ").append(numbers(struck));
    }
    if (!watched.isEmpty()) {
      out.append(", ").append(Say.SUSPECTED).append(": ").append(numbers(watched));
    }
    return out.toString();
  }

  private static String numbers(List<Site> sites) {
    return String.join(", ", sites.stream().map(Site::toString).toList());
  }

  private static String layer(LayerSummary l) {
    String some =
        l.withLayer() < l.years()
            ? "; NONE in "
                + (l.years() - l.withLayer())
                + " of "
                + Figures.counted(l.years(), "year", "years")
            : "";
    return "residual layer "
        + Figures.day(l.from())
        + " to "
        + Figures.day(l.to())
        + " (median; shortest "
        + Figures.counted(l.shortestDays(), "day", "days")
        + ", "
        + l.shortestYear()
        + some
        + ")";
  }
}
