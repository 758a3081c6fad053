package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.IngredientId;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.report.SeasonDays;
import org.swathbook.cli.report.YearPass;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;
import org.swathbook.stress.StressResult;

/** The result of {@code season}. Dates of a year are dates of that weather year. */
public final class SeasonJson {
  private final Book book;
  private final Field field;
  private final Crop crop;
  private final SeasonOutcome outcome;

  private SeasonJson(Book book, Field field, SeasonOutcome outcome) {
    this.book = book;
    this.field = field;
    this.crop = book.catalog().crop(field.crop());
    this.outcome = outcome;
  }

  /**
   * @param calendar what the chart of its page is drawn from
   * @param stress what happens when the season goes wrong; empty when that was not asked
   */
  public static String of(
      Book book,
      ReportHead head,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      SeasonCalendar calendar,
      List<StressResult> stress) {
    SeasonJson json = new SeasonJson(book, field, outcome);
    ObjectNode root = Json.document("season", head);
    FieldJson.into(root, field);
    root.put("program", outcome.program().name());
    ArrayNode years = root.putArray("years");
    outcome.years().forEach(y -> json.year(years.addObject(), y));
    CalendarJson.into(root.putObject("calendar"), calendar);
    ObjectNode summary = root.putObject("summary");
    summary.put("name", outcome.program().name());
    new ProgramJson(book, field).into(summary, outcome, judgement);
    if (!stress.isEmpty()) {
      new StressJson(book.catalog(), outcome).into(root.putArray("stress"), stress);
    }
    root.set("findings", new FindingJson(book.catalog()).findings(judgement.findings()));
    return Json.write(root);
  }

  private void year(ObjectNode node, YearOutcome year) {
    node.put("year", year.year());
    ArrayNode passes = node.putArray("passes");
    for (YearPass p : YearPass.of(outcome, year, field, crop)) {
      ObjectNode pass = passes.addObject();
      pass.put("date", p.date().map(Object::toString).orElse(null));
      pass.put("missed", p.missed());
      pass.put("cropStage", p.cropStage().orElse(null));
      ArrayNode weeds = pass.putArray("weeds");
      p.sizes()
          .forEach(
              s -> {
                ObjectNode weed = weeds.addObject();
                weed.put("weed", s.weed().value());
                weed.set("heightInP50", Json.inches(s.p50Cm()));
                weed.set("heightInP90", Json.inches(s.p90Cm()));
                weed.set("plantsPerM2", Json.fixed(s.perM2(), 2));
              });
    }
    layers(node.putArray("layers"), year);
    ArrayNode gaps = node.putArray("gaps");
    for (GapSpan g : year.gaps()) {
      ObjectNode gap = gaps.addObject();
      gap.put("weed", g.weed().value());
      gap.put("from", SeasonDays.date(year.year(), g.fromDay()).toString());
      gap.put("to", SeasonDays.date(year.year(), g.toDay()).toString());
      gap.set("emergencePct", Json.percent(100 * g.emergenceShare()));
    }
    ObjectNode control = node.putObject("controlPct");
    for (WeedOutcome w : outcome.weeds()) {
      Double pct = year.controlPct().get(w.pressure().weed().id());
      if (pct != null) {
        control.set(w.pressure().weed().id().value(), Json.percent(pct));
      }
    }
    ObjectNode exposed = node.putObject("exposedPct");
    for (WeedOutcome w : outcome.weeds()) {
      Double share = year.exposedShare().get(w.pressure().weed().id());
      if (share != null) {
        exposed.set(w.pressure().weed().id().value(), Json.percent(100 * share));
      }
    }
    node.set("lossPerAcre", Json.money(LossByYear.of(book, field).in(year)));
  }

  /** One row for each active of a layer, all with the layer's own dates. */
  private void layers(ArrayNode array, YearOutcome year) {
    for (LayerSpan l : year.layers()) {
      for (IngredientId i : l.ingredients()) {
        ObjectNode layer = array.addObject();
        layer.put("pass", l.pass() + 1);
        layer.put("ingredient", book.catalog().ingredient(i).name());
        layer.put("weed", l.weed().value());
        layer.put("from", SeasonDays.date(year.year(), l.fromDay()).toString());
        layer.put("to", SeasonDays.date(year.year(), l.toDay()).toString());
      }
    }
  }
}
