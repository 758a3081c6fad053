package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.audit.PassMatches.Due;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.audit.PlannedAndApplied.Kind;
import org.swathbook.audit.PlannedAndApplied.Seen;
import org.swathbook.audit.PlannedAndApplied.Stand;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Unit;
import org.swathbook.program.FieldId;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.weather.StationWeather;

/**
 * What became of a program: each pass beside the journal, and what was promised beside what the
 * season's own weather made of the plan and of the passes as they were sprayed.
 */
public final class PlanAgainstJournal {
  private final Book book;
  private final SprayedSeason season;
  private final Program program;
  private final List<String> notes = new ArrayList<>();

  private PlanAgainstJournal(Book book, SprayedSeason season, Program program) {
    this.book = book;
    this.season = season;
    this.program = program;
  }

  /**
   * The book with every field as it was in a season: of the book's own as it stands, of a past one
   * those that seasons.csv has. A program of that season is read with it.
   */
  public static Book bookOf(Book book, int season) {
    return season == book.season() ? book : PastBook.ofSeason(book, season);
  }

  /** The last season that the journal has of a field, the book's own among them. */
  public static Optional<Integer> lastSeason(Book book, FieldId field) {
    return book.journal().of(field).stream()
        .map(a -> a.season())
        .filter(s -> s <= book.season())
        .max(Integer::compare);
  }

  /**
   * @param program read with the book of that season, waiting for no weed that the field lacks
   * @return empty with the reason when the season cannot be walked
   */
  public static Result of(Book book, int season, Program program) {
    Field today = book.findField(program.field().value()).orElseThrow();
    Optional<PastSeason> row = row(book, today, season);
    if (row.isEmpty()) {
      return new Result(
          Optional.empty(), List.of("seasons.csv has no row of " + today.id() + " in " + season));
    }
    SprayedSeason.Found found =
        SprayedSeason.of(book, today, row.get(), new SharedTraces(book.catalog()));
    if (found.season().isEmpty()) {
      return new Result(Optional.empty(), found.remarks());
    }
    PlanAgainstJournal all = new PlanAgainstJournal(book, found.season().get(), program);
    all.notes.addAll(found.remarks());
    return new Result(Optional.of(all.compare()), List.of());
  }

  /**
   * @param why it is empty
   */
  public record Result(Optional<PlannedAndApplied> compared, List<String> why) {
    public Result {
      why = List.copyOf(why);
    }
  }

  private static Optional<PastSeason> row(Book book, Field today, int season) {
    if (season == book.season()) {
      return Optional.of(
          new PastSeason(
              today.id(),
              season,
              today.crop(),
              today.traits(),
              Optional.of(today.plantDate()),
              today.harvestDate(),
              today.tillage(),
              List.of()));
    }
    return book.pastSeasons().stream()
        .filter(p -> p.field().equals(today.id()) && p.season() == season)
        .findFirst();
  }

  private PlannedAndApplied compare() {
    List<Account> accounts = new ArrayList<>();
    promised().ifPresent(accounts::add);
    List<Pass> coming = new ArrayList<>();
    List<Due> due = new ArrayList<>();
    for (Pass p : program.passes()) {
      Optional<LocalDate> planned =
          Anchors.find(p.at(), season.traces(), season.past().house().sizePercentile());
      if (planned.isPresent()) {
        coming.add(p);
        due.add(new Due(fit(planned.get()), p.mix()));
      } else {
        notes.add("The pass '" + p.at() + "' never came due in the weather of that season.");
      }
    }
    SeasonOutcome inItsWeather =
        SeasonWalk.walk(season.past(), season.kernel(), program.with(coming));
    inItsWeather.passes().stream()
        .filter(p -> !p.missedYears().isEmpty())
        .forEach(
            p ->
                notes.add(
                    "The pass due on "
                        + Say.date(p.earliest())
                        + " would have missed its labels' windows in that season; as planned it"
                        + " counts as not made."));
    accounts.add(account(Kind.PLANNED, 1, inItsWeather.sums()));
    accounts.add(account(Kind.SPRAYED, 1, season.walk(season.passes())));
    return new PlannedAndApplied(
        season.field(),
        season.row().season(),
        program,
        PassMatches.of(due, season.passes(), season.past().house().queueDays()),
        accounts,
        seen(),
        notes);
  }

  /** First day fit for spraying at or after a date, else the date. */
  private LocalDate fit(LocalDate planned) {
    var trace = season.traces().years().get(0);
    int day = trace.firstSprayDay(trace.dayOf(planned));
    return day < trace.days() ? trace.bookDateOf(day) : planned;
  }

  /** Over the weather years that were known when the season was planned. */
  private Optional<Account> promised() {
    int year = season.row().season();
    Book then = before(season.past(), season.field(), year);
    List<Integer> years = then.station(season.field()).scenarioYears();
    if (years.isEmpty()) {
      notes.add(
          "Station "
              + season.field().station()
              + " has no full weather year before "
              + year
              + ": what was promised is not known.");
      return Optional.empty();
    }
    TraceSet traces = TraceBuilder.build(then, season.field());
    List<String> never =
        program.passes().stream()
            .map(Pass::at)
            .filter(a -> Anchors.find(a, traces, then.house().sizePercentile()).isEmpty())
            .map(a -> "'" + a + "'")
            .toList();
    if (!never.isEmpty()) {
      notes.add(
          "What was promised cannot be walked: in most weather years known by then "
              + String.join(" and ", never)
              + " does not come.");
      return Optional.empty();
    }
    return Optional.of(
        account(Kind.PROMISED, years.size(), SeasonWalk.walk(then, traces, program).sums()));
  }

  private static Book before(Book past, Field field, int year) {
    StationWeather all = past.station(field);
    LocalDate known = LocalDate.of(year - 1, 11, 1);
    Map<String, StationWeather> stations = new TreeMap<>(past.stations());
    stations.put(
        all.id(),
        new StationWeather(
            all.id(),
            all.days().stream().filter(d -> d.date().isBefore(known)).toList(),
            all.gaps()));
    return PastBook.withStations(past, stations);
  }

  private Account account(Kind kind, int years, SeasonSums sums) {
    boolean priced = book.crops().containsKey(season.field().crop());
    return new Account(
        kind,
        years,
        sums.cost(),
        priced ? sums.net() : Optional.empty(),
        season.drivers().stream().map(w -> stand(w, sums.weed(w.weed().id()))).toList());
  }

  private static Stand stand(WeedPressure weed, WeedOutcome w) {
    return new Stand(weed, w.controlPct(), w.allSurvivorsPerAcre(), w.metNonePct() + w.metOnePct());
  }

  /** The book's scoutings are of its own season; of past ones it keeps none. */
  private List<Seen> seen() {
    List<Made> made = season.passes();
    if (made.isEmpty() || season.row().season() != book.season()) {
      return List.of();
    }
    LocalDate after = made.get(made.size() - 1).date();
    List<Seen> out = new ArrayList<>();
    for (WeedPressure w : season.drivers()) {
      Map<LocalDate, List<ScoutedCount>> counts =
          book.scoutings().stream()
              .filter(s -> s.field().equals(season.field().id()) && s.date().isAfter(after))
              .filter(s -> s.weed().filter(w.weed().id()::equals).isPresent())
              .filter(s -> s.count().isPresent())
              .collect(
                  Collectors.groupingBy(
                      Scouting::date,
                      TreeMap::new,
                      Collectors.mapping(s -> s.count().orElseThrow(), Collectors.toList())));
      if (!counts.isEmpty()) {
        LocalDate last = ((TreeMap<LocalDate, List<ScoutedCount>>) counts).lastKey();
        double perM2 = ScoutedCount.meanPerM2(counts.getOrDefault(last, List.of()));
        out.add(new Seen(w, last, perM2 * Unit.ACRE.toSi(1)));
      }
    }
    return out;
  }
}
