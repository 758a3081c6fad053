package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedTank;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.report.PlannedDay;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.tank.UnmetNeed;

/** One pass of a walked program. */
final class PassJson {
  private final Book book;
  private final Field field;
  private final SeasonOutcome outcome;

  PassJson(Book book, Field field, SeasonOutcome outcome) {
    this.book = book;
    this.field = field;
    this.outcome = outcome;
  }

  ObjectNode of(PassOutcome pass, JudgedTank tank) {
    ObjectNode node = Json.NODES.objectNode();
    node.put("pass", pass.index() + 1);
    node.put("at", anchor(pass));
    node.put("daysAfterPlanting", PlannedDay.afterPlanting(field, pass));
    node.put("date", pass.planned().toString());
    node.put("made", pass.made());
    node.putArray("dateRange").add(pass.earliest().toString()).add(pass.latest().toString());
    node.put("medianDate", pass.timing().medianDate().toString());
    pass.missedYears().forEach(node.putArray("missedYears")::add);
    ObjectNode heights = node.putObject("weedHeightIn");
    for (PassWeed w : pass.weeds()) {
      if (w.stands()) {
        ObjectNode h = heights.putObject(w.weed().value());
        h.set("p50", Json.inches(w.p50Cm()));
        h.set("p90", Json.inches(w.p90Cm()));
        h.set("p90Low", Json.inches(w.p90LowCm()));
        h.set("p90High", Json.inches(w.p90HighCm()));
        h.set("plantsPerM2", Json.fixed(w.medianPerM2(), 2));
      }
    }
    node.put("cropStage", pass.cropStage());
    mix(node.putArray("mix"), pass.mix().doses());
    ArrayNode adjuvants = node.putArray("adjuvants");
    for (Adjuvant a : pass.mix().adjuvants()) {
      adjuvants.addObject().put("kind", a.kind()).put("rate", a.rate());
    }
    unmet(node.putArray("adjuvantsUnmet"), tank.unmet());
    node.set("gallonsPerAcre", Json.fixed(pass.mix().gallonsPerAcre().orElse(Double.NaN), 1));
    node.put("droplets", tank.droplets().words().orElse(null));
    node.set("dropletsUnknown", Json.texts(tank.droplets().unknown()));
    ObjectNode foliar = node.putObject("foliarSites");
    pass.weeds().forEach(w -> foliar.put(w.weed().value(), w.effectiveFoliarSites()));
    ObjectNode soil = node.putObject("soilSites");
    pass.weeds().forEach(w -> soil.put(w.weed().value(), w.effectiveSoilSites()));
    ObjectNode foliarControl = node.putObject("foliarSiteControl");
    pass.weeds().forEach(w -> sites(foliarControl.putArray(w.weed().value()), w.foliar(), true));
    ObjectNode soilControl = node.putObject("soilSiteControl");
    pass.weeds().forEach(w -> sites(soilControl.putArray(w.weed().value()), w.soil(), false));
    ObjectNode layers = node.putObject("layers");
    for (PassWeed w : pass.weeds()) {
      LayerSummary.of(outcome, book.season(), pass.index(), w.weed())
          .ifPresent(l -> layer(layers.putObject(w.weed().value()), l));
    }
    node.set("productsPerAcre", Json.money(pass.cost()));
    return node;
  }

  /** As the program writes it; its passes may stand there in another order than their dates. */
  private String anchor(PassOutcome pass) {
    return outcome.program().passes().stream()
        .filter(p -> p.mix().equals(pass.mix()))
        .min(Comparator.comparing(p -> outcome.program().passes().indexOf(p) != pass.index()))
        .map(p -> p.at().toString())
        .orElseThrow();
  }

  static void mix(ArrayNode mix, List<Dose> doses) {
    for (Dose d : doses) {
      ObjectNode node = mix.addObject();
      node.put("product", d.product().id().value());
      ArrayNode ingredients = node.putArray("ingredients");
      ArrayNode sites = node.putArray("sites");
      ArrayNode pounds = node.putArray("activeLbPerAcre");
      ArrayNode bases = node.putArray("activeBasis");
      for (ActiveDose a : d.actives()) {
        ingredients.add(a.ingredient().name());
        sites.add(a.ingredient().site().number());
        pounds.add(Json.fixed(a.lbPerAcre(), 4));
        bases.add(a.rate().basis().symbol());
      }
      node.set("rate", Json.fixed(d.rate().amount(), 2));
      node.put("unit", d.rate().unitText());
    }
  }

  private static void unmet(ArrayNode array, List<UnmetNeed> needs) {
    for (UnmetNeed u : needs) {
      ObjectNode node = array.addObject();
      node.put("askedBy", u.of().name());
      u.need().anyOf().forEach(k -> node.withArray("anyOf").add(k.spelling()));
      u.need().anyOf().forEach(k -> node.withArray("rates").add(u.need().rate(k).orElse(null)));
      node.set("refusedBy", Json.texts(u.refusedBy()));
    }
  }

  private static void sites(ArrayNode array, List<SiteControl> sites, boolean foliar) {
    for (SiteControl s : sites) {
      ObjectNode node = array.addObject();
      node.put("site", s.site().number());
      node.set("controlPct", Json.percent(s.controlPct()));
      node.put("effective", s.effective());
      node.put("half", s.half());
      if (foliar) {
        node.put("slowedByCold", s.slowed());
      }
      node.put("resisted", s.struck());
    }
  }

  private static void layer(ObjectNode node, LayerSummary l) {
    node.put("from", l.from().toString());
    node.put("to", l.to().toString());
    node.put("yearsWithLayer", l.withLayer());
    node.put("years", l.years());
    node.put("shortestDays", l.shortestDays());
    node.put("shortestYear", l.shortestYear());
  }
}
