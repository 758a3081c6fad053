package org.swathbook.book.file;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.book.Book;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvTable;
import org.swathbook.source.Mark;
import org.swathbook.source.Nearest;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;

/**
 * Passes from a table that another program, or a spreadsheet, has written. Rows of one id are a
 * pass; where there are no ids, rows of one field, date, start and mix are.
 */
public final class JournalImport {
  private static final Pattern HALF_DAY =
      Pattern.compile("(\\d{1,2}:\\d{2})\\s*([AaPp])\\.?[Mm]\\.?");

  private static final int DIGITS = 6;

  private final Book book;
  private final JournalMap map;
  private final Problems problems = new Problems();

  private JournalImport(Book book, JournalMap map) {
    this.book = book;
    this.map = map;
  }

  /**
   * @param map how the table is to be read; empty for one with the journal's own columns
   * @throws ProblemsException with everything that is wrong with table or map
   */
  public static List<NewPass> read(Path csv, Optional<Path> map, BookPaths paths, Book book) {
    Problems problems = new Problems();
    Optional<JournalMap> read =
        map.map(m -> JournalMap.read(paths.nameOf(m), BookFiles.bytes(m, paths.nameOf(m))));
    CsvTable table =
        new CsvReader()
            .read(
                paths.nameOf(csv),
                bytes(csv, paths.nameOf(csv)),
                CsvColumns.required(new String[0]).andOthers(),
                problems);
    problems.throwIfAny();
    JournalImport all =
        new JournalImport(book, read.orElseGet(() -> JournalMap.own(table.header().names())));
    return all.passes(table, read.isPresent());
  }

  private static byte[] bytes(Path csv, String name) {
    try {
      return Files.readAllBytes(csv);
    } catch (IOException e) {
      throw BookFiles.unreadable(name, e, "name a table of sprayings");
    }
  }

  private List<NewPass> passes(CsvTable table, boolean mapped) {
    checkHeader(table, mapped);
    Map<List<String>, List<NewPass.Line>> byPass = new LinkedHashMap<>();
    for (CsvRow row : table.rows()) {
      NewPass.Line line = line(row);
      byPass.computeIfAbsent(pass(line.cells()), k -> new ArrayList<>()).add(line);
    }
    if (table.rows().isEmpty()) {
      problems.add(table.header().mark(), "the table has no row", "name one with sprayings in it");
    }
    problems.throwIfAny();
    return byPass.values().stream()
        .map(
            lines ->
                new NewPass(
                    Optional.ofNullable(lines.get(0).cells().get("id")).filter(t -> !t.isEmpty()),
                    season(lines.get(0).cells()),
                    lines))
        .toList();
  }

  private int season(Map<String, String> cells) {
    try {
      return Texts.whole(cells.getOrDefault("season", ""));
    } catch (MeasureException e) {
      // The journal's reader tells it, with the place of the cell.
      return book.season();
    }
  }

  private static List<String> pass(Map<String, String> cells) {
    String id = cells.getOrDefault("id", "");
    return id.isEmpty()
        ? List.of(
            "",
            cells.getOrDefault("field", "").toLowerCase(Locale.ROOT),
            cells.getOrDefault("date", ""),
            cells.getOrDefault("startTime", ""),
            cells.getOrDefault("mix", ""))
        : List.of(id);
  }

  /** Nothing of a table is passed over that nobody said to leave out. */
  private void checkHeader(CsvTable table, boolean mapped) {
    List<String> theirs = table.header().names();
    for (String name : theirs) {
      if (!map.columns().containsKey(name) && !map.ignored().contains(name)) {
        boolean corrects = !mapped && name.equals("corrects");
        if (!corrects || table.rows().stream().anyMatch(r -> !r.text(name).isEmpty())) {
          problems.add(
              table.header().mark(),
              corrects
                  ? "a row of the table corrects another"
                  : "nothing says what the column '" + name + "' is",
              corrects
                  ? "record corrections one by one, with --corrects"
                  : mapped
                      ? "name it in the map, under columns or ignore"
                      : "write a map (--map), or " + Nearest.hint(name, JournalMap.OURS));
        }
      }
    }
    for (String name : map.columns().keySet()) {
      if (!theirs.contains(name)) {
        problems.add(
            table.header().mark(),
            "the table has no column '" + name + "', which the map names",
            Nearest.hint(name, theirs));
      }
    }
  }

  private NewPass.Line line(CsvRow row) {
    Map<String, String> cells = new LinkedHashMap<>(map.always());
    Map<String, String> from = new LinkedHashMap<>();
    map.columns()
        .forEach(
            (theirs, target) -> {
              from.put(target.column(), theirs);
              String text = row.text(theirs);
              if (!text.isEmpty()) {
                cells.put(target.column(), cell(row.mark(theirs), target, text));
              }
              if (target.column().equals("rate") && target.unit().isPresent()) {
                cells.putIfAbsent("unit", target.unit().get());
              }
            });
    if (cells.containsKey(JournalMap.TOTAL)) {
      // Where the rate stands that the reader may find fault with.
      from.putIfAbsent("rate", from.getOrDefault(JournalMap.TOTAL, ""));
    }
    Function<String, Mark> where = c -> row.mark(from.getOrDefault(c, ""));
    rateOfTotal(cells, where);
    seasonByDate(cells, where);
    cropOfTheSeason(cells);
    return new NewPass.Line(cells, where);
  }

  /** The rate that a total makes with its acres; a total may stand in a unit of its own column. */
  private void rateOfTotal(Map<String, String> cells, Function<String, Mark> where) {
    String total = cells.remove(JournalMap.TOTAL);
    if (total == null) {
      return;
    }
    Mark at = where.apply(JournalMap.TOTAL);
    if (!cells.getOrDefault("rate", "").isEmpty()) {
      problems.add(at, "both a rate and a total stand here", "ignore one of the two columns");
      return;
    }
    String unit =
        map.columns().values().stream()
            .filter(t -> t.column().equals(JournalMap.TOTAL))
            .flatMap(t -> t.unit().stream())
            .findFirst()
            .orElse(cells.getOrDefault("unit", ""));
    String acres = cells.getOrDefault("acres", "");
    if (acres.isEmpty() || unit.isEmpty()) {
      problems.add(
          at,
          "a total of "
              + total
              + " makes no rate without "
              + (acres.isEmpty() ? "acres" : "a unit"),
          acres.isEmpty()
              ? "fill the column of the acres that it went on"
              : "name its unit in the map, as '{to: total, unit: gal}'");
      return;
    }
    try {
      double amount = Texts.number(total);
      double on = Texts.number(acres);
      if (!(amount > 0) || !(on > 0)) {
        boolean noTotal = !(amount > 0);
        problems.add(
            noTotal ? at : where.apply("acres"),
            "'" + (noTotal ? total : acres) + "' is not above zero, so there is no rate",
            "write what was sprayed on how many acres, or leave the row out");
        return;
      }
      cells.put("rate", PassCells.number(significant(amount / on)));
      cells.put("unit", unit + "/acre");
    } catch (MeasureException e) {
      problems.add(at, e, "12.5");
    }
  }

  /** Nobody measures finer; a number of fifteen digits would only look as if somebody had. */
  static double significant(double value) {
    return new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
  }

  private String cell(Mark mark, JournalMap.Target target, String theirs) {
    String text = map.word(target.column(), theirs);
    try {
      return switch (target.column()) {
        case "date" -> map.dates().parse(text).toString();
        case "startTime", "endTime" -> time(text);
        default -> target.number(text);
      };
    } catch (MeasureException e) {
      problems.add(mark, e, "2027-06-08");
      return text;
    }
  }

  private static String time(String text) {
    Matcher m = HALF_DAY.matcher(text);
    if (!m.matches()) {
      return text;
    }
    LocalTime t = Texts.time(m.group(1));
    boolean after = m.group(2).equalsIgnoreCase("p");
    if (t.getHour() < 1 || t.getHour() > 12) {
      throw new MeasureException("'" + text + "' is no time; write it as 2:30 PM or 14:30");
    }
    return t.withHour(t.getHour() % 12 + (after ? 12 : 0)).toString();
  }

  /** In September and October stubble of one season and burndown of the next are sprayed. */
  private void seasonByDate(Map<String, String> cells, Function<String, Mark> where) {
    String date = cells.getOrDefault("date", "");
    if (cells.containsKey("season")) {
      return;
    }
    LocalDate day;
    try {
      day = Texts.date(date);
    } catch (MeasureException e) {
      // Told with its cell already; what the map says of every row is told by the journal's reader.
      return;
    }
    int month = day.getMonthValue();
    if (month == 9 || month == 10) {
      problems.add(
          where.apply("date"),
          "a spraying of " + day + " may be for the crop of this year or of the next",
          "add a column for the season, the year of that crop's harvest");
    } else {
      cells.put("season", Integer.toString(day.getYear() + (month > 10 ? 1 : 0)));
    }
  }

  /** That of the field, for the season of the book; of others the table has to say it. */
  private void cropOfTheSeason(Map<String, String> cells) {
    if (!cells.containsKey("crop")
        && Integer.toString(book.season()).equals(cells.getOrDefault("season", ""))) {
      book.findField(cells.getOrDefault("field", ""))
          .ifPresent(f -> cells.put("crop", f.crop().value()));
    }
  }
}
