package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Journal;
import org.swathbook.book.Prices;
import org.swathbook.book.SprayRecord;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.Dose;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvTable;
import org.swathbook.source.Mark;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/**
 * Reads {@code applications.csv}, the journal. Nothing in it is ever overwritten: a row that
 * corrects another stands in its place, or voids it with a rate of 0. What is wrong with a row that
 * was corrected is nobody's problem any more.
 */
final class ApplicationsReader {
  static final Table TABLE =
      new Table(
          "applications.csv",
          CsvColumns.required("id", "line", "date", "field", "season", "product", "rate", "unit")
              .andOptional(
                  "corrects",
                  "startTime",
                  "endTime",
                  "acres",
                  "epaRegNo",
                  "mix",
                  "crop",
                  "cropStage",
                  "target",
                  "applicator",
                  "certNo",
                  "windMph",
                  "windFrom",
                  "tempF",
                  "insecticide",
                  "note"));

  /** All of them, in the order in which a row is told: what, when, where, how, by whom. */
  static final List<String> COLUMNS =
      List.of(
          "id",
          "line",
          "corrects",
          "date",
          "startTime",
          "endTime",
          "field",
          "season",
          "acres",
          "product",
          "epaRegNo",
          "rate",
          "unit",
          "mix",
          "crop",
          "cropStage",
          "target",
          "applicator",
          "certNo",
          "windMph",
          "windFrom",
          "tempF",
          "note");

  /** Columns in which the rows of a pass differ. */
  private static final Set<String> OF_ONE_ROW =
      Set.of("id", "line", "corrects", "product", "epaRegNo", "rate", "unit");

  private final Names names;
  private final Problems problems;
  private final Column<String> ids = Column.ofNew("id", ApplicationsReader::key, "A-27-001");
  private final Column<String> lines = Column.of("line", ApplicationsReader::key, "1");
  private final Column<String> corrections = Column.ofText("corrects");
  private final Column<LocalDate> dates = Column.of("date", Texts::date, "2027-05-11");
  private final Column<FieldId> fields;
  private final Column<Integer> seasons = Column.of("season", Parsers.whole(1950, 2200), "2027");
  private final Column<OptionalDouble> acres = boxed("acres", Parsers::acres, "76.0");
  private final Column<String> rates = Column.ofText("rate");
  private final Column<String> crops;
  private final Column<String> positions = Column.ofText("cropStage");
  private final Map<String, Column<String>> stages = new HashMap<>();
  private final Column<LocalTime> starts = Column.of("startTime", Texts::time, "08:30");
  private final Column<LocalTime> ends = Column.of("endTime", Texts::time, "11:45");
  private final Column<String> epaRegNos = Column.ofText("epaRegNo");
  private final Column<String> mixes = Column.ofText("mix");
  private final Column<String> targets = Column.ofText("target");
  private final Column<String> applicators = Column.ofText("applicator");
  private final Column<String> certNos = Column.ofText("certNo");
  private final Column<OptionalDouble> winds = boxed("windMph", Parsers.number(0, 200), "7");
  private final Column<String> compass = Column.of("windFrom", Parsers::compass, "NW");
  private final Column<OptionalDouble> temperatures =
      boxed("tempF", Parsers.number(-60, 150), "68");
  private final Column<String> insecticides = Column.ofText("insecticide");
  private final Column<String> notes = Column.ofText("note");
  private final DoseCells doses;
  private final JournalDrafts drafts = new JournalDrafts();

  /** Problems of a row; a new one after each that has any. */
  private Problems none = new Problems();

  /** What the rows of a pass mostly share. */
  private record Spraying(
      LocalDate date,
      FieldId field,
      int season,
      OptionalDouble acres,
      String crop,
      String position,
      SprayRecord record,
      String note) {}

  private final AlikeCells ofPass =
      new AlikeCells(TABLE.columns().all().stream().filter(c -> !OF_ONE_ROW.contains(c)).toList());

  /** Of the row before; null where it could not be read. */
  private @Nullable Spraying spraying;

  private SprayRecord record = SprayRecord.EMPTY;

  ApplicationsReader(Names names, FieldList fields, Prices prices, Problems problems) {
    this.names = names;
    this.fields = Column.of("field", fields::parse, "ND-1");
    this.crops = Column.of("crop", t -> names.anyCrop(t).value(), "corn");
    this.problems = problems;
    this.doses = new DoseCells(new DoseParser(names, prices));
  }

  Journal read(Path book) {
    TABLE.read(book, problems, this::row);
    return journal();
  }

  /** The same from a table that was read already, with rows that are to follow it. */
  Journal read(CsvTable there, JournalText more) {
    there.rows().forEach(this::row);
    try (InputStream rows = more.rows()) {
      new CsvReader()
          .stream(TABLE.file(), rows, more.place(), TABLE.columns(), problems, this::row);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return journal();
  }

  private Journal journal() {
    List<Application> live = new ArrayList<>(drafts.size());
    // By first row of a pass, where its first row that counts is.
    @Nullable FieldId[] fieldOf = new FieldId[drafts.size()];
    for (int d = 0; d < drafts.size(); d++) {
      if (drafts.replacedIn(d) != 0) {
        continue;
      }
      if (!drafts.problems(d).isEmpty()) {
        problems.addAll(drafts.problems(d));
      }
      Application application = drafts.application(d);
      if (application != null) {
        live.add(application);
        int pass = drafts.pass(d);
        FieldId first = fieldOf[pass];
        if (first == null) {
          fieldOf[pass] = application.field();
        } else if (!first.equals(application.field())) {
          onTwoFields(drafts.row(d), application, first);
        }
      }
    }
    return new Journal(live);
  }

  private void onTwoFields(int row, Application a, FieldId first) {
    problems.add(
        new Mark(TABLE.file(), row, 1),
        "the pass " + a.pass() + " is on " + a.field() + " here and on " + first + " above",
        "give the pass of every field its own id");
  }

  private void row(CsvRow csv) {
    // Nearly all rows have none: one list serves them all.
    Problems own = none.isEmpty() ? none : new Problems();
    none = own;
    Row row = new Row(csv, own);
    Optional<String> id = row.need(ids);
    Optional<String> line = row.need(lines);
    if (id.isEmpty() || line.isEmpty()) {
      problems.addAll(own.sorted());
      return;
    }
    String pass = drafts.same(id.get());
    int target = corrected(row, pass, line.get());
    boolean voids = !row.isBlank(corrections) && isZero(row.text(rates));
    Application application = voids ? null : application(row, pass, line.get());
    List<Problem> wrong = own.isEmpty() ? List.of() : own.sorted();
    int first = drafts.add(row.line(), pass, line.get(), application, wrong);
    if (first != JournalDrafts.NONE) {
      problems.add(
          row.mark("line"),
          "the line "
              + drafts.key(first)
              + " stands here again, first in line "
              + drafts.row(first),
          "count the lines of a pass 1, 2, 3; to mend a row name it in 'corrects'");
    }
    if (target != JournalDrafts.NONE) {
      drafts.replace(target, row.line());
    }
  }

  /** A part of {@code ID/LINE}. */
  private static String key(String text) {
    if (text.contains("/")) {
      throw new MeasureException(
          "'" + text + "' holds a slash; write an id without one, as A-27-001");
    }
    return text;
  }

  /** The row above that this one corrects; problems of it are reported at once. */
  private int corrected(Row row, String pass, String line) {
    if (row.isBlank(corrections)) {
      return JournalDrafts.NONE;
    }
    String wanted = row.text(corrections);
    List<Integer> hits = drafts.find(wanted);
    if (hits.isEmpty()) {
      problems.add(
          row.mark("corrects"),
          "no row above is '" + wanted + "'",
          "write id and line of the row that is wrong, as A-27-001/2");
      return JournalDrafts.NONE;
    }
    if (hits.size() > 1) {
      problems.add(
          row.mark("corrects"),
          "the pass " + wanted + " has " + hits.size() + " lines",
          "say which one is wrong, as " + drafts.key(hits.get(0)));
      return JournalDrafts.NONE;
    }
    int hit = hits.get(0);
    if (drafts.replacedIn(hit) != 0) {
      problems.add(
          row.mark("corrects"),
          drafts.key(hit) + " is corrected already, in line " + drafts.replacedIn(hit),
          "correct the row in that line");
      return JournalDrafts.NONE;
    }
    return drafts.is(hit, pass, line) ? JournalDrafts.NONE : hit;
  }

  private static boolean isZero(String rate) {
    return rate.matches("0+(\\.0*)?");
  }

  /** Null of a row with problems. */
  private @Nullable Application application(Row row, String id, String line) {
    Optional<Dose> dose = doses.read(row);
    Spraying of = row.isAsBefore(ofPass) && spraying != null ? spraying : spraying(row);
    spraying = of;
    if (of == null || !row.isSound()) {
      return null;
    }
    return new Application(
        id,
        line,
        of.date,
        of.field,
        of.season,
        of.acres,
        dose.orElseThrow(),
        row.text(epaRegNos),
        of.crop,
        of.position,
        of.record,
        of.note);
  }

  /** Null where something of it could not be read. */
  private @Nullable Spraying spraying(Row row) {
    int before = row.problems();
    Optional<LocalDate> date = row.need(dates);
    Optional<FieldId> field = row.need(fields);
    Optional<Integer> season = row.need(seasons);
    Optional<OptionalDouble> treated = row.find(acres);
    Optional<String> crop = row.find(crops);
    if (crop.isPresent()) {
      row.find(stages(crop.get()));
    }
    SprayRecord record = record(row);
    if (date.isPresent() && season.isPresent() && !belongs(season.get(), date.get())) {
      row.problem(
          "season",
          "a spraying of " + date.get() + " cannot be for the season " + season.get(),
          "write the year of the crop's harvest; fall burndown belongs to the next season");
    }
    return row.problems() > before
        ? null
        : new Spraying(
            date.orElseThrow(),
            field.orElseThrow(),
            season.orElseThrow(),
            treated.orElse(OptionalDouble.empty()),
            crop.orElse(""),
            row.text(positions),
            record,
            row.text(notes));
  }

  private Column<String> stages(String crop) {
    Column<String> known = stages.get(crop);
    if (known == null) {
      known = Column.of("cropStage", new StageParser(names.catalog(), crop), "V6");
      stages.put(crop, known);
    }
    return known;
  }

  private SprayRecord record(Row row) {
    SprayRecord now =
        new SprayRecord(
            row.find(starts),
            row.find(ends),
            row.text(mixes),
            row.text(targets),
            row.text(applicators),
            row.text(certNos),
            row.find(winds).orElse(OptionalDouble.empty()),
            row.find(compass).orElse(""),
            row.find(temperatures).orElse(OptionalDouble.empty()),
            row.isBlank(insecticides)
                ? List.of()
                : row.all("insecticide", Texts::text, "organophosphate"));
    if (!now.equals(record)) {
      record = now;
    }
    return record;
  }

  /** From the summer before, when stubble is sprayed, to the end of the harvest year. */
  private static boolean belongs(int season, LocalDate date) {
    int year = date.getYear();
    return year == season || year == season - 1 && date.getMonthValue() >= 7;
  }

  private static Column<OptionalDouble> boxed(
      String name, TextParser<Double> number, String example) {
    return Column.of(name, t -> OptionalDouble.of(number.parse(t)), example);
  }
}
