package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Neighbor;
import org.swathbook.catalog.Crop;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.ProgramLedger;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Numbers;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Say;
import org.swathbook.rules.label.LabelConditionRule;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.rules.timing.PlantingWait;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.tank.LongestReentry;
import org.swathbook.tank.Partner;

/** What a grower is bound to by a program: who may enter when, harvest, next crops, neighbors. */
final class HandoutBinds {
  private final Book book;
  private final Field field;
  private final SeasonOutcome outcome;
  private final Judgement judgement;
  private final Optional<SeasonCalendar> calendar;

  HandoutBinds(
      Book book,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      Optional<SeasonCalendar> calendar) {
    this.book = book;
    this.field = field;
    this.outcome = outcome;
    this.judgement = judgement;
    this.calendar = calendar;
  }

  List<String> lines() {
    List<String> out = new ArrayList<>();
    outcome.passes().stream().filter(p -> !p.made()).forEach(p -> bind(p, out));
    if (calendar.isPresent() && outcome.passes().stream().anyMatch(p -> !p.made())) {
      out.add(
          "Open is meant by crop stage, height, calendar and days to planting. Days between two"
              + " sprayings, to harvest and to next crops hold besides: ask before a pass moves.");
    }
    judgement.findings().stream()
        .filter(RestrictedUseRule::isNotice)
        .map(Finding::message)
        .distinct()
        .forEach(out::add);
    judgement.asks().stream()
        .filter(LabelConditionRule::isOf)
        .map(a -> Say.start(a.what()) + ".")
        .distinct()
        .forEach(out::add);
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
    Optional<SeasonCalendar.Window> window =
        calendar.stream()
            .flatMap(c -> c.windows().stream())
            .filter(w -> w.pass() == p.index())
            .findFirst();
    window.flatMap(w -> openUntil(p, w)).ifPresent(line::append);
    out.add(line.toString());
    window.ifPresent(w -> w.waits().forEach(wait -> out.add(pass + ": " + beforePlanting(wait))));
  }

  /** Until when the labels leave a pass open in every year. */
  private Optional<String> openUntil(PassOutcome p, SeasonCalendar.Window window) {
    return window.open().stream()
        .filter(s -> s.years() == outcome.years().size())
        .filter(s -> !p.planned().isBefore(s.from()) && !p.planned().isAfter(s.to()))
        .findFirst()
        .map(
            s ->
                " By past weather its labels leave it open until "
                    + ProgramWords.day(s.to())
                    + " in every year"
                    + (s.to().equals(calendar.orElseThrow().to())
                        ? ", and perhaps longer."
                        : window.open().stream().anyMatch(o -> o.from().equals(s.to().plusDays(1)))
                            ? "; after that they close it in some."
                            : "; after that they close it in all."));
  }

  /** A wait, and the last day that leaves it; none is known where rain starts the clock. */
  private String beforePlanting(PlantingWait.Wait wait) {
    int days = wait.band().days();
    String plant =
        "plant no sooner than " + Say.days(days) + " after it (" + wait.ingredient().name() + ")";
    return wait.band().rainMm().isPresent()
        ? plant
            + ", counted once "
            + Say.inches(wait.band().rainMm().getAsDouble() / 10)
            + " of rain has fallen."
        : plant
            + "; for planting on "
            + ProgramWords.day(field.plantDate())
            + " its last day is "
            + ProgramWords.day(field.plantDate().minusDays(days))
            + ".";
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
      field
          .neighbors()
          .forEach(
              n ->
                  out.add(
                      "Nearby: "
                          + n
                          + "; keep off it what drifts: wind from "
                          + Neighbor.parse(n).windsToward()
                          + " blows toward it."));
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
}
