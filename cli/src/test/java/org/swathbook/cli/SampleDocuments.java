package org.swathbook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.audit.FieldLedger;
import org.swathbook.audit.OpenIntervals;
import org.swathbook.audit.PlanAgainstJournal;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.SiteAudit;
import org.swathbook.audit.WhatIf;
import org.swathbook.audit.WhatIfAudit;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.Scouting;
import org.swathbook.book.SprayRecord;
import org.swathbook.book.WeedPressure;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.book.file.JournalWriter;
import org.swathbook.book.file.MixWords;
import org.swathbook.book.file.ObservationReader;
import org.swathbook.book.file.WatchFile;
import org.swathbook.calibration.Calibration;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.review.Change;
import org.swathbook.catalog.review.Lint;
import org.swathbook.catalog.review.Provenance;
import org.swathbook.check.CatalogImpact;
import org.swathbook.check.DayLoads;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MixJudge;
import org.swathbook.check.MixMending;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.json.AuditJson;
import org.swathbook.cli.json.CalibrationJson;
import org.swathbook.cli.json.CatalogListJson;
import org.swathbook.cli.json.CheckJson;
import org.swathbook.cli.json.CompareJson;
import org.swathbook.cli.json.DiffJson;
import org.swathbook.cli.json.EntryJson;
import org.swathbook.cli.json.EscapesJson;
import org.swathbook.cli.json.ImpactJson;
import org.swathbook.cli.json.ImportJson;
import org.swathbook.cli.json.KeepJson;
import org.swathbook.cli.json.LedgerJson;
import org.swathbook.cli.json.LintJson;
import org.swathbook.cli.json.LoadJson;
import org.swathbook.cli.json.LoadOrderJson;
import org.swathbook.cli.json.PlanJson;
import org.swathbook.cli.json.PlannedJson;
import org.swathbook.cli.json.RecordJson;
import org.swathbook.cli.json.RulesJson;
import org.swathbook.cli.json.SeasonJson;
import org.swathbook.cli.json.WhatIfJson;
import org.swathbook.cli.report.ImportedPass;
import org.swathbook.cli.report.LoadOfDay;
import org.swathbook.cli.report.RecordedPass;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.DueLook;
import org.swathbook.escapes.EscapeJudge;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Observation;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleBook;
import org.swathbook.tank.LoadSheet;

/** A document of every command, which together hold every key that can occur. */
final class SampleDocuments {
  private SampleDocuments() {}

  static Map<String, String> byCommand() {
    Book book = Samples.book();
    ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
    WrittenCatalog catalog = CatalogOption.load(CatalogPlace.STARTER);
    Map<String, String> all =
        new TreeMap<>(
            Map.of(
                "catalogList",
                CatalogListJson.of(catalog, null),
                "catalogSources",
                CatalogListJson.sources(Provenance.of(catalog)),
                "catalogShow",
                EntryJson.of(
                    catalog.catalog(),
                    catalog.find(EntryKind.INGREDIENT, "metribuzin").orElseThrow()),
                "catalogLint",
                LintJson.of(Samples.TODAY, Lint.remarks(catalog, Samples.TODAY)),
                "catalogDiff",
                DiffJson.of(
                    "a",
                    "b",
                    List.of(
                        new Change(
                            "crop", "corn", "", "name", Optional.of("x"), Optional.empty()))),
                "plan",
                PlanJson.of(
                    book,
                    head,
                    List.of(
                        SamplePlans.recommended().timed(5),
                        SamplePlans.notRecommended(),
                        SamplePlans.refused(),
                        SamplePlans.asked())),
                "season",
                SeasonJson.of(
                    book,
                    head,
                    Samples.field(),
                    Samples.outcome("Sample", 3),
                    SampleJudgement.of(),
                    Samples.calendar(),
                    SampleStress.results()),
                "rules",
                RulesJson.of(RuleBook.pages())));
    all.put(
        "catalogImpact",
        ImpactJson.of(
            head,
            List.of(
                new CatalogImpact.Hit(
                    Samples.field(),
                    Optional.of("Sample"),
                    Optional.empty(),
                    SampleJudgement.of().findings().get(0).rule(),
                    Optional.empty(),
                    Optional.of(SampleJudgement.of().findings().get(0))))));
    all.put("planCompare", CompareJson.of(book, head, SamplePlans.compared()));
    all.put("planKeep", KeepJson.of(book, head, SamplePlans.kept()));
    all.put("check", check(book, head));
    all.put("load", load(book, head));
    all.put("calibrate", calibrate());
    all.put("loadOrder", loadOrder(book, head));
    all.put("record", record(book, head));
    all.put("queue", SampleQueue.document(book, head));
    all.put("order", SampleOrder.document(book, head));
    all.put("audit", audit(head));
    all.put("auditSites", auditSites(head));
    all.put("auditWhatIf", auditWhatIf(head));
    all.put("auditPlanned", auditPlanned(head));
    all.put("escapes", escapes(head));
    all.put("escapesDue", escapesDue(head));
    all.put("recordImport", recordImport(book, head));
    all.put(
        "checkProgram",
        CheckJson.ofProgram(
            book, head, Samples.field(), Samples.usedTwice(), SampleJudgement.of()));
    return all;
  }

  /** A tank that can be mended, so that every key is there. */
  private static String check(Book book, ReportHead head) {
    SprayJob job =
        MixWords.read(
            book,
            Samples.field().id().value(),
            LocalDate.of(2027, 6, 8),
            OptionalDouble.of(15),
            List.of("glyphosate 0.75 lb ae/acre"));
    MixJudge judge = MixJudge.of(book, Samples.field(), job, Samples.TODAY, Optional.empty());
    JudgedMix judged = judge.judge(job);
    return CheckJson.of(
        book,
        head,
        Samples.field(),
        withNeighbor(judged),
        MixMending.of(judge, judged),
        Optional.of(
            new OpenHours(
                List.of(
                    new OpenHours.Span(
                        LocalDateTime.of(2027, 6, 8, 9, 0), LocalDateTime.of(2027, 6, 8, 11, 0))),
                List.of("hours to the next rain"))));
  }

  private static JudgedMix withNeighbor(JudgedMix judged) {
    Judgement j = judged.judgement();
    List<Finding> findings = new ArrayList<>(j.findings());
    findings.add(SampleJudgement.downwind());
    return new JudgedMix(
        judged.job(),
        judged.facts(),
        new Judgement(j.verdict(), findings, j.asks(), j.brokenHouseRules(), j.tanks()));
  }

  /** A row of the journal, written by hand. */
  static Application row(Book book) {
    return new Application(
        "A-27-001",
        "1",
        LocalDate.of(2027, 6, 8),
        Samples.field().id(),
        2027,
        OptionalDouble.of(70),
        MixWords.dose(book, "glyphosate 0.75 lb ae/acre"),
        "",
        "soybean",
        "V3",
        SprayRecord.EMPTY,
        "");
  }

  private static JournalWriter.Written written(Application row) {
    return new JournalWriter.Written(
        List.of("A-27-001/1"), row.field().value(), List.of(row), List.of(row), List.of("endTime"));
  }

  private static String record(Book book, ReportHead head) {
    Application row = row(book);
    return RecordJson.of(
        book,
        head,
        new RecordedPass(
            Samples.field(),
            row.date(),
            written(row),
            Optional.of(SampleJudgement.of()),
            FederalRecord.of(Samples.field(), row.date(), List.of(row))));
  }

  private static String recordImport(Book book, ReportHead head) {
    return ImportJson.of(head, ImportedPass.of(book, written(row(book))), List.of("endTime"));
  }

  private static String auditSites(ReportHead head) {
    Book demo = new BookLoader().load(ProgramProcess.CLI.resolve("../demo-data"));
    return AuditJson.of(
        demo.catalog(), head, SiteAudit.of(demo, List.of(demo.findField("OB-3").orElseThrow())));
  }

  /** Glyphosate into a post pass of corn: allowed, and more than one driver weed. */
  private static String auditWhatIf(ReportHead head) {
    Book demo = new BookLoader().load(ProgramProcess.CLI.resolve("../demo-data"));
    return WhatIfJson.of(
        head,
        List.of(
            WhatIfAudit.of(
                demo,
                List.of(demo.findField("ND-4").orElseThrow()),
                new WhatIf.SecondFoliarSite())));
  }

  /** A program with one pass, made, beside the corn of 2026, and a count written by hand. */
  private static String auditPlanned(ReportHead head) {
    Book demo = new BookLoader().load(ProgramProcess.CLI.resolve("../demo-data"));
    LocalDate day = LocalDate.of(2026, 5, 2);
    Program program =
        new Program(
            "Sample",
            demo.findField("ND-1").orElseThrow().id(),
            List.of(
                new Pass(
                    new Anchor.OnDate(day),
                    Mix.of(List.of(MixWords.dose(demo, "acetochlor 1.9 lb ai/acre"))))));
    PlannedAndApplied made = PlanAgainstJournal.of(demo, 2026, program).compared().orElseThrow();
    WeedPressure weed = demo.weedsOf(program.field()).get(0);
    return PlannedJson.of(
        head,
        new PlannedAndApplied(
            made.field(),
            made.season(),
            made.program(),
            made.passes(),
            made.accounts(),
            List.of(new PlannedAndApplied.Seen(weed, day, 40)),
            made.notes()));
  }

  /** The observation of the demo book, in which survivors are many and suspect. */
  private static String escapes(ReportHead head) {
    Path folder = ProgramProcess.CLI.resolve("../demo-data").normalize();
    Book demo = new BookLoader().load(folder);
    BookPaths paths = new BookPaths(folder);
    Observation seen =
        ObservationReader.read(paths.find(BookPaths.Kind.OBSERVATION, "nd-1-june"), paths, demo);
    return EscapesJson.of(
        head,
        demo.findField("ND-1").orElseThrow(),
        EscapeJudge.judge(demo, seen, seen.seen()),
        List.of(
            new WatchFile.Entry(
                seen.field(), seen.weeds().get(0).weed(), Site.of(4), seen.seen(), "sample")));
  }

  private static String escapesDue(ReportHead head) {
    LocalDate day = LocalDate.of(2027, 6, 8);
    return EscapesJson.due(
        head,
        List.of(
            new DueLook(
                Samples.field(),
                day,
                Set.of("glyphosate"),
                day.plusDays(14),
                day.plusDays(21),
                DueLook.When.DUE,
                List.of(
                    new Scouting(
                        day.plusDays(15),
                        Samples.field().id(),
                        "",
                        Optional.of(new WeedId("AMAPA")),
                        Optional.empty(),
                        Optional.of(new ScoutedCount(2, OptionalDouble.empty())),
                        Optional.empty(),
                        0)))));
  }

  private static String audit(ReportHead head) {
    Book demo = new BookLoader().load(ProgramProcess.CLI.resolve("../demo-data"));
    LocalDate day = LocalDate.of(2026, 11, 1);
    Map<Field, List<ActiveLedger>> ledgers = new LinkedHashMap<>();
    demo.fields().forEach(f -> ledgers.put(f, FieldLedger.of(demo, f, day)));
    ActiveLedger open =
        new ActiveLedger(
            demo.catalog().ingredients().iterator().next(),
            List.of(),
            1,
            OptionalInt.empty(),
            new OpenIntervals(
                Optional.of(day.atStartOfDay()),
                Optional.of(day),
                Map.of(Commodity.GRAIN, day),
                Map.of(demo.fields().get(0).crop(), day)),
            List.of());
    ledgers.put(demo.fields().get(0), List.of(open));
    return LedgerJson.of(head, ledgers);
  }

  private static String loadOrder(Book book, ReportHead head) {
    SprayJob job =
        MixWords.read(
            book,
            Samples.field().id().value(),
            LocalDate.of(2027, 6, 8),
            OptionalDouble.empty(),
            List.of("glyphosate 0.75 lb ae/acre"));
    return LoadOrderJson.of(
        head,
        List.of(
            new LoadOfDay("one", Samples.field(), List.of("wind")),
            new LoadOfDay("other", Samples.field(), List.of())),
        DayLoads.of(book, List.of(job, job)));
  }

  private static String calibrate() {
    return CalibrationJson.of(
        new Calibration(
            20,
            OptionalDouble.of(10),
            204,
            OptionalDouble.of(15),
            new Calibration.Caught(17),
            OptionalDouble.of(40),
            OptionalDouble.of(1.28)));
  }

  /** A sheet with a product, an adjuvant and a last load. */
  private static String load(Book book, ReportHead head) {
    SprayJob typed =
        MixWords.read(
            book,
            Samples.field().id().value(),
            LocalDate.of(2027, 6, 8),
            OptionalDouble.of(15),
            List.of("glyphosate 0.75 lb ae/acre", "ammonium-sulfate 8.5 lb/100 gal"));
    SprayJob job =
        typed.with(
            typed
                .sprayer()
                .with(
                    new SprayerTank(
                        OptionalDouble.of(1200),
                        Optional.of(List.of(IngredientId.of("dicamba"))),
                        Optional.of(TankTerms.Rinse.TRIPLE_RINSE))));
    JudgedMix judged =
        MixJudge.of(book, Samples.field(), job, Samples.TODAY, Optional.empty()).judge(job);
    return LoadJson.of(
        book,
        head,
        Samples.field(),
        judged,
        Optional.of(
            LoadSheet.of(
                book,
                job,
                judged.facts().actives().stream().map(ActiveUse::partner).toList(),
                76,
                1200)));
  }
}
