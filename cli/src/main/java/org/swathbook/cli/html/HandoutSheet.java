package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.PlanVersion;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ProgramLedger;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;
import org.swathbook.tank.LongestReentry;
import org.swathbook.tank.Partner;

/** One field of the grower's handout. */
final class HandoutSheet {
  private final Book book;
  private final Field field;
  private final PlannedProgram program;
  private final SeasonOutcome outcome;
  private final Optional<SeasonCalendar> calendar;

  /** Where the field stands in the JSON of the plan, and its first program. */
  private final String of;

  private final String at;

  private HandoutSheet(
      Book book,
      Field field,
      PlannedProgram program,
      Optional<SeasonCalendar> calendar,
      String of) {
    this.book = book;
    this.field = field;
    this.program = program;
    this.outcome = program.outcome();
    this.calendar = calendar;
    this.of = of;
    this.at = of + "/programs/0";
  }

  /**
   * @param earlier the version that the book keeps
   * @param at where the field stands in the JSON of the plan
   */
  static HandoutPage.Sheet of(
      Book book,
      PlannedField plan,
      Optional<SeasonCalendar> calendar,
      Optional<Program> earlier,
      String at) {
    Field field = plan.field();
    String line = ProgramWords.fieldLine(book, field);
    if (plan.isRefused()) {
      return new HandoutPage.Sheet(
          line,
          "NOTHING IS PLANNED: nothing legal was found for this field; ask your adviser why.",
          fight(book, field),
          lost(book, field),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          "none",
          List.of());
    }
    PlannedProgram first = plan.programs().get(0);
    HandoutSheet sheet = new HandoutSheet(book, field, first, calendar, at);
    return new HandoutPage.Sheet(
        line,
        (first.recommended() ? "Recommended" : "NOT recommended, the least bad that was found")
            + "; what rules say of it: "
            + first.judgement().verdict().word()
            + ".",
        fight(book, field),
        lost(book, field),
        sheet.passes(),
        sheet.binds(),
        sheet.spoils(),
        sheet.marks().money(),
        PlanVersion.of(first.outcome().program()),
        changes(earlier, first.outcome().program()));
  }

  private static List<String> changes(Optional<Program> earlier, Program now) {
    if (earlier.isEmpty()) {
      return List.of("The book keeps no earlier version of this field's program.");
    }
    List<String> out = PlanVersion.changes(earlier.get(), now);
    return out.isEmpty() ? List.of("None: it is the version that the book keeps.") : out;
  }

  private static List<String> fight(Book book, Field field) {
    List<String> out = new ArrayList<>();
    for (List<String> row : ProgramWords.weedsOf(book, field)) {
      out.add(row.get(0) + ", " + row.get(2) + (row.get(3).isEmpty() ? "" : ", " + row.get(3)));
    }
    return out;
  }

  private static List<String> lost(Book book, Field field) {
    List<String> out = new ArrayList<>();
    for (List<String> row : ProgramWords.weedsOf(book, field)) {
      if (row.get(4).startsWith("resists") || row.get(4).contains(Say.SUSPECTED)) {
        out.add(row.get(0) + " " + row.get(4));
      }
    }
    return out.isEmpty() ? List.of("The book lists no resistance in this field.") : out;
  }

  private ProgramMarks marks() {
    return new ProgramMarks(
        book, outcome, new ProgramWords(book, field, outcome, program.judgement()), at, of);
  }

  private String pass(PassOutcome p, String key) {
    return at + "/passes/" + p.index() + "/" + key;
  }

  private List<HandoutPage.Going> passes() {
    List<PassPart> words = marks().passes();
    List<HandoutPage.Going> out = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      out.add(new HandoutPage.Going(words.get(p.index()), date(p), signs(p)));
    }
    return out;
  }

  private Marked date(PassOutcome p) {
    if (p.made()) {
      return Marked.of(ProgramWords.date(p.planned()) + ": made", pass(p, "date"));
    }
    return Marked.of(
        "From "
            + ProgramWords.date(p.planned())
            + ", on the first day fit to spray: by past weather "
            + ProgramWords.day(p.earliest())
            + " to "
            + ProgramWords.day(p.latest()),
        pass(p, "date"),
        pass(p, "dateRange/0"),
        pass(p, "dateRange/1"));
  }

  private List<Marked> signs(PassOutcome p) {
    List<Marked> out = new ArrayList<>();
    if (p.made()) {
      return out;
    }
    String crop = book.catalog().crop(field.crop()).name();
    out.add(
        Marked.of(
            p.cropStage().endsWith("planted")
                ? "The crop: " + p.cropStage() + "."
                : "The crop: " + crop + " at about " + p.cropStage() + ".",
            pass(p, "cropStage")));
    for (PassWeed w : p.weeds()) {
      WeedPressure pressure = outcome.weed(w.weed()).pressure();
      if (pressure.driver().isDriver() && w.stands()) {
        String size = pass(p, "weedHeightIn/" + w.weed().value());
        out.add(
            Marked.of(
                pressure.weed().name()
                    + ": the plan counts on "
                    + Numbers.decimals(100 * book.house().sizePercentile(), 0)
                    + " % of the plants not above "
                    + ProgramWords.inches(w.p90Cm())
                    + " in (over the years "
                    + ProgramWords.inches(w.p90LowCm())
                    + " to "
                    + ProgramWords.inches(w.p90HighCm())
                    + "). When they grow ahead of that, call before the date.",
                "-",
                size + "/p90",
                size + "/p90Low",
                size + "/p90High"));
      }
    }
    return out;
  }

  private List<String> binds() {
    List<String> out = new ArrayList<>();
    outcome.passes().stream().filter(p -> !p.made()).forEach(p -> bind(p, out));
    intervals(ProgramLedger.of(book, field, outcome), out);
    return out;
  }

  private void bind(PassOutcome p, List<String> out) {
    String pass = "Pass " + (p.index() + 1);
    List<Partner> partners = new ArrayList<>();
    for (ActiveDose a : p.mix().actives()) {
      partners.add(new Partner(a.ingredient(), a.ingredient().terms()));
    }
    LongestReentry entry = LongestReentry.of(partners);
    StringBuilder line =
        new StringBuilder(
            pass
                + ": nobody enters for "
                + (entry.hours().isEmpty()
                    ? "a time that is NOT KNOWN; read the labels"
                    : (entry.unknown().isEmpty() ? "" : "at least ")
                        + Numbers.decimals(entry.hours().getAsDouble(), 1)
                        + " hours")
                + (entry.unknown().isEmpty()
                    ? "."
                    : "; NOT KNOWN of " + String.join(", ", entry.unknown()) + "."));
    calendar.stream()
        .flatMap(c -> c.windows().stream())
        .filter(w -> w.pass() == p.index())
        .flatMap(w -> w.open().stream())
        .filter(s -> s.years() == outcome.years().size())
        .filter(s -> !p.planned().isBefore(s.from()) && !p.planned().isAfter(s.to()))
        .findFirst()
        .ifPresent(
            s ->
                line.append(" By past weather its labels leave it open until ")
                    .append(ProgramWords.day(s.to()))
                    .append(" in every year; after that they close it in some."));
    out.add(line.toString());
  }

  /** Harvest and next crops after all that is planned, by the strictest active. */
  private void intervals(List<ActiveLedger> ledger, List<String> out) {
    Map<String, LocalDate> until = new LinkedHashMap<>();
    Map<String, String> by = new LinkedHashMap<>();
    Map<String, Set<String>> unknown = new LinkedHashMap<>();
    for (ActiveLedger a : ledger) {
      String name = a.ingredient().name();
      a.until()
          .harvest()
          .forEach((c, d) -> later(until, by, "No " + c.name().toLowerCase(Locale.ROOT), d, name));
      a.until()
          .nextCrop()
          .forEach(
              (c, d) ->
                  later(
                      until,
                      by,
                      "No "
                          + book.catalog().findCrop(c.value()).map(Crop::name).orElse(c.value())
                          + " planted",
                      d,
                      name));
      a.notKnown().stream()
          .filter(n -> !n.equals("re-entry"))
          .forEach(n -> unknown.computeIfAbsent(n, k -> new TreeSet<>()).add(name));
    }
    until.forEach(
        (what, day) ->
            out.add(
                what
                    + (day.getYear() > 9999 ? " at all" : " before " + ProgramWords.date(day))
                    + " ("
                    + by.get(what)
                    + "), if every pass goes on its median day."));
    unknown.forEach(
        (what, of) -> out.add("NOT KNOWN: " + what + " of " + String.join(", ", of) + "."));
    if (!ledger.isEmpty()) {
      field.neighbors().forEach(n -> out.add("Nearby: " + n + "; keep off it what drifts."));
    }
  }

  private static void later(
      Map<String, LocalDate> until,
      Map<String, String> by,
      String what,
      LocalDate day,
      String name) {
    LocalDate known = until.get(what);
    if (known == null || day.isAfter(known)) {
      until.put(what, day);
      by.put(what, name);
    }
  }

  private List<Marked> spoils() {
    Set<Marked> out = new LinkedHashSet<>();
    int years = outcome.years().size();
    for (PassOutcome p : outcome.passes()) {
      if (!p.missedYears().isEmpty()) {
        out.add(
            Marked.of(
                "Pass "
                    + (p.index() + 1)
                    + " would have found no day inside its windows in "
                    + p.missedYears().size()
                    + " of "
                    + years
                    + " past years.",
                pass(p, "pass"),
                pass(p, "missedYears"),
                "-"));
      }
    }
    for (WeedOutcome w : outcome.weeds()) {
      if (w.pressure().driver().isDriver()) {
        weed(w, years, out);
      }
    }
    YearOutcome worst = LossByYear.worst(outcome);
    out.add(
        Marked.of(
            "The worst of the years, "
                + worst.year()
                + ", would have cost $"
                + ProgramWords.money(LossByYear.of(book, field).in(worst))
                + " an acre in yield; the mean is $"
                + ProgramWords.money(outcome.loss())
                + ".",
            at + "/worstYear",
            at + "/worstYearLossPerAcre",
            at + "/lossPerAcre"));
    List<Finding> findings = program.judgement().findings();
    for (int i = 0; i < findings.size(); i++) {
      Finding f = findings.get(i);
      if (f.severity() == Severity.WARN || f.severity() == Severity.BLOCK) {
        String finding = at + "/findings/" + i;
        out.add(
            f.about().pass().isEmpty()
                ? Marked.of(f.message(), finding + "/message")
                : Marked.of(
                    "Pass " + (f.about().pass().getAsInt() + 1) + ": " + f.message(),
                    finding + "/message",
                    finding + "/about/pass"));
      }
    }
    int asks = program.judgement().asks().size();
    if (asks > 0) {
      out.add(
          Marked.of(
              asks
                  + (asks == 1 ? " thing is" : " things are")
                  + " not known and to be looked up before spraying; your adviser has the list.",
              at + "/asks"));
    }
    return new ArrayList<>(out);
  }

  private void weed(WeedOutcome w, int years, Set<Marked> out) {
    String name = w.pressure().weed().name();
    String code = w.pressure().weed().id().value();
    for (PassOutcome p : outcome.passes()) {
      String layer = pass(p, "layers/" + code);
      LayerSummary.of(outcome, book.season(), p.index(), w.pressure().weed().id())
          .filter(l -> l.withLayer() < years)
          .ifPresent(
              l ->
                  out.add(
                      Marked.of(
                          "The soil layer of pass "
                              + (p.index() + 1)
                              + " on "
                              + name
                              + " would not have held in "
                              + (years - l.withLayer())
                              + " of "
                              + years
                              + " past years.",
                          pass(p, "pass"),
                          layer + "/years-" + layer + "/yearsWithLayer",
                          layer + "/years")));
    }
    w.weakestSite()
        .ifPresent(
            s ->
                out.add(
                    Marked.of(
                        "If site "
                            + s.number()
                            + " no longer worked on "
                            + name
                            + " here, control would be "
                            + ProgramWords.percent(w.controlPctWithoutWeakest())
                            + " % in place of "
                            + ProgramWords.percent(w.controlPct())
                            + " %.",
                        at + "/weakestSite/" + code + "/site",
                        at + "/weakestSite/" + code + "/controlPctWithoutIt",
                        at + "/controlPct/" + code)));
    out.add(
        Marked.of(
            "About "
                + ProgramWords.count(w.survivorsPerAcre())
                + " plants of "
                + name
                + " an acre that came up in time to matter live to harvest, mean of the years: look"
                + " for them, and pull or chop what sets seed.",
            at + "/survivorsPerAcre/" + code + "/beforeNeededUntil"));
  }
}
