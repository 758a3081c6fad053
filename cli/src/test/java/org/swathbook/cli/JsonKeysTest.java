package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Keys that scripts rely on: one that goes missing here breaks somebody's script. */
class JsonKeysTest {
  /** Of all documents, which are made once. */
  private static Set<String> keys = Set.of();

  @BeforeAll
  static void readTheDocuments() {
    keys = JsonPaths.of(SampleDocuments.byCommand());
  }

  @Test
  void plan() {
    assertThat(keys)
        .contains(
            "plan.format",
            "plan.today",
            "plan.fields",
            "field.field",
            "field.refusal",
            "refusal.rules",
            "refusal.relaxations",
            "refusal.limits",
            "limit.key",
            "limit.met",
            "relaxation.rule",
            "relaxation.from",
            "relaxation.to",
            "relaxation.netPerAcre",
            "relaxation.controlPct",
            "field.programs",
            "program.name",
            "program.recommended",
            "program.verdict",
            "program.passes",
            "pass.at",
            "pass.daysAfterPlanting",
            "pass.date",
            "pass.dateRange",
            "pass.weedHeightIn",
            "pass.weedHeightIn.WEED",
            "pass.weedHeightIn.WEED.p50",
            "pass.weedHeightIn.WEED.p90",
            "pass.cropStage",
            "pass.mix",
            "dose.product",
            "dose.ingredients",
            "dose.sites",
            "dose.rate",
            "dose.unit",
            "pass.adjuvants",
            "pass.gallonsPerAcre",
            "pass.droplets",
            "pass.foliarSites",
            "pass.foliarSites.WEED",
            "pass.soilSites",
            "pass.soilSites.WEED",
            "program.costPerAcre",
            "program.lossPerAcre",
            "program.netPerAcre",
            "program.controlPct",
            "program.controlPct.WEED",
            "program.worstYearControlPct.WEED",
            "program.exposedEmergencePct.WEED",
            "program.survivorsPerAcre.WEED.beforeNeededUntil",
            "program.survivorsPerAcre.WEED.all",
            "program.seedReturn.WEED.seedsPerM2",
            "program.seedReturn.WEED.seedbankFactor",
            "program.weakestSite.WEED.site",
            "program.weakestSite.WEED.controlPctWithoutIt",
            "program.emergenceMetPct.WEED.none",
            "program.emergenceMetPct.WEED.one",
            "program.emergenceMetPct.WEED.twoOrMore",
            "program.windowConfidencePct",
            "program.breaksHouseRules",
            "program.findings",
            "program.asks",
            "ask.rule",
            "ask.what",
            "ask.about",
            "field.search",
            "search.options",
            "search.dates",
            "search.effort",
            "search.labels",
            "search.combined",
            "search.exact",
            "search.gap",
            "search.gapOfAll",
            "search.proved",
            "search.frontExact",
            "search.frontPasses",
            "search.millis");
  }

  @Test
  void season() {
    assertThat(keys)
        .contains(
            "season.format",
            "season.field",
            "season.program",
            "season.years",
            "year.year",
            "year.passes",
            "yearPass.date",
            "yearPass.missed",
            "yearPass.cropStage",
            "yearPass.weeds",
            "yearPassWeed.weed",
            "yearPassWeed.heightInP50",
            "yearPassWeed.heightInP90",
            "year.layers",
            "layer.ingredient",
            "layer.weed",
            "layer.from",
            "layer.to",
            "year.gaps",
            "gap.weed",
            "gap.from",
            "gap.to",
            "gap.emergencePct",
            "year.controlPct",
            "year.controlPct.WEED",
            "year.lossPerAcre",
            "season.summary",
            "season.stress",
            "stress.name",
            "stress.controlPct",
            "stress.controlPct.WEED",
            "stress.netPerAcre",
            "stress.breaks",
            "season.findings");
  }

  @Test
  void load() {
    assertThat(keys)
        .contains(
            "load.format",
            "load.acres",
            "load.gallonsPerAcre",
            "load.loads",
            "tankLoad.gallons",
            "tankLoad.acres",
            "tankLoad.waterGallons",
            "tankLoad.products",
            "loadedProduct.product",
            "loadedProduct.amount",
            "loadedProduct.unit",
            "tankLoad.adjuvants",
            "load.order",
            "mixingStep.step",
            "mixingStep.what",
            "mixingStep.formulation",
            "mixingStep.source",
            "load.cleanOut",
            "cleanOut.before",
            "cleanOut.after",
            "load.reentryHours",
            "load.cautions");
  }

  @Test
  void findings() {
    assertThat(keys)
        .contains(
            "finding.rule",
            "finding.severity",
            "finding.message",
            "finding.limit",
            "finding.actual",
            "finding.source",
            "finding.remedy",
            "finding.about",
            "about.ingredient",
            "about.weed",
            "about.pass",
            "about.neighbor");
  }

  @Test
  void rules() {
    assertThat(keys)
        .contains(
            "rules.format",
            "rules.rules",
            "rule.id",
            "rule.severity",
            "rule.question",
            "rule.source",
            "rule.trips",
            "rule.silent");
  }

  @Test
  void audit() {
    assertThat(keys)
        .contains(
            "auditSites.format",
            "auditSites.fields",
            "seasonSites.field",
            "seasonSites.weed",
            "seasonSites.season",
            "seasonSites.sitesApplied",
            "seasonSites.foliarSitesPerPass",
            "seasonSites.soilSitesPerPass",
            "seasonSites.effectiveSites",
            "seasonSites.effectiveSiteNumber",
            "seasonSites.dominantSite",
            "seasonSites.dominantShare",
            "seasonSites.singleSiteExposedPct",
            "seasonSites.streakYears",
            "seasonSites.weakestSite",
            "seasonSites.rank",
            "seasonSites.reason",
            "auditSites.findings",
            "journalFinding.field",
            "journalFinding.application",
            "journalFinding.rule",
            "journalFinding.about",
            "auditSites.growers",
            "auditSites.acresOnOneEffectiveSitePct");
  }

  @Test
  void escapes() {
    assertThat(keys)
        .contains(
            "escapes.format",
            "escapes.field",
            "escapes.weeds",
            "escapedWeed.weed",
            "escapedWeed.reading",
            "reading.dead",
            "reading.dying",
            "reading.undecided",
            "reading.recovering",
            "reading.missed",
            "escapedWeed.controlledPct",
            "escapedWeed.controlledLowPct",
            "escapedWeed.controlledHighPct",
            "suspicion.level",
            "suspicion.for",
            "suspicion.against",
            "escapes.action",
            "escapes.lookAgain",
            "escapes.respray",
            "respray.mix",
            "respray.earliest",
            "respray.latest",
            "respray.controlPct",
            "respray.costPerAcre",
            "respray.savesPerAcre");
  }

  @Test
  void order() {
    assertThat(keys)
        .contains(
            "order.format",
            "order.lines",
            "orderLine.grower",
            "orderLine.product",
            "orderLine.needed",
            "orderLine.unit",
            "orderLine.onHand",
            "orderLine.packages",
            "orderLine.packageSize",
            "orderLine.cost");
  }

  @Test
  void queue() {
    assertThat(keys)
        .contains(
            "queue.format",
            "queue.queue",
            "queuedPass.field",
            "queuedPass.pass",
            "queuedPass.state",
            "queuedPass.date",
            "queuedPass.lastDay",
            "queuedPass.findings");
  }
}
