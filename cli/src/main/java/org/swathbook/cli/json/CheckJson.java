package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.DayBlocks;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MendedMix;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.report.ProgramLedger;
import org.swathbook.cli.report.RainFree;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SharedSite;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;

/** The result of {@code check}. */
public final class CheckJson {
  private final Book book;
  private final ObjectNode root;

  private CheckJson(Book book, ReportHead head, Field field) {
    this.book = book;
    this.root = Json.document("check", head);
    FieldJson.into(root, field);
  }

  public static String of(
      Book book,
      ReportHead head,
      Field field,
      JudgedMix judged,
      Optional<MendedMix> mended,
      Optional<OpenHours> open) {
    CheckJson json = new CheckJson(book, head, field);
    json.root.put("verdict", judged.judgement().verdict().word());
    JobJson.into(json.root.putObject("mix"), judged.job());
    json.seen(json.root.putObject("met"), judged);
    ArrayNode rainFree = json.root.putArray("rainFree");
    for (RainFree r : RainFree.of(judged)) {
      ObjectNode node = rainFree.addObject();
      node.put("ingredient", r.ingredient().name());
      node.set("hours", Json.fixed(r.hours().orElse(Double.NaN), 1));
    }
    json.judgement(json.root, judged.judgement());
    ArrayNode ofDay = json.root.putArray("blockedByTheDay");
    DayBlocks.of(judged.judgement()).stream()
        .map(f -> f.rule().value())
        .distinct()
        .forEach(ofDay::add);
    if (mended.isPresent()) {
      ObjectNode node = json.root.putObject("remedyMix");
      node.set("changes", Json.texts(mended.get().changes()));
      node.put("verdict", mended.get().mix().judgement().verdict().word());
      JobJson.into(node, mended.get().mix().job());
      json.judgement(node, mended.get().mix().judgement());
    }
    if (open.isPresent()) {
      ArrayNode hours = json.root.putArray("openHours");
      for (OpenHours.Span s : open.get().spans()) {
        hours.addObject().put("from", s.from().toString()).put("to", s.to().toString());
      }
      json.root.set("openHoursNotKnown", Json.texts(open.get().notKnown()));
    }
    return Json.write(json.root);
  }

  public static String ofProgram(
      Book book, ReportHead head, Field field, SeasonOutcome outcome, Judgement judgement) {
    CheckJson json = new CheckJson(book, head, field);
    json.root.put("verdict", judgement.verdict().word());
    json.root.put("program", outcome.program().name());
    json.judgement(json.root, judgement);
    json.root.set("breaksHouseRules", Json.texts(judgement.brokenNames()));
    ArrayNode shared = json.root.putArray("sharedSites");
    for (SharedSite s : SharedSite.of(outcome)) {
      ObjectNode node = shared.addObject();
      node.put("site", s.site());
      ArrayNode uses = node.putArray("uses");
      for (SharedSite.Use u : s.uses()) {
        uses.addObject()
            .put("pass", u.pass())
            .put("product", u.product().id().value())
            .put("ingredient", u.ingredient().name());
      }
    }
    LedgerJson.into(json.root.putArray("ledger"), field, ProgramLedger.of(book, field, outcome));
    return Json.write(json.root);
  }

  private void judgement(ObjectNode node, Judgement judgement) {
    FindingJson findings = new FindingJson(book.catalog());
    node.set("findings", findings.findings(judgement.findings()));
    node.set("asks", findings.asks(judgement.asks()));
  }

  /** Crop and weeds by which it was judged, with what was seen and what is modelled. */
  private void seen(ObjectNode node, JudgedMix judged) {
    node.put("cropStage", judged.facts().pass().cropStage());
    node.put("cropStageSeen", judged.job().scouted().cropStage().isPresent());
    node.set("cropHeightIn", Json.inches(judged.facts().pass().timing().medianHeightCm()));
    node.put("cropHeightSeen", judged.job().scouted().cropHeightCm().isPresent());
    ArrayNode weeds = node.putArray("weeds");
    for (PassWeed w : judged.facts().pass().weeds()) {
      ObjectNode weed = weeds.addObject();
      weed.put("weed", w.weed().value());
      weed.put("stands", w.stands());
      weed.set("heightInP90", Json.inches(w.p90Cm()));
      weed.put("seen", judged.job().scouted().weedHeightCm().containsKey(w.weed()));
      weed.put("foliarSites", w.effectiveFoliarSites());
      weed.put("soilSites", w.effectiveSoilSites());
    }
  }
}
