package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Journal;
import org.swathbook.catalog.Slug;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvTable;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Writes passes and corrections into the journal of a book. The journal as it would be is read by
 * the journal's own reader before it is written, so that nothing goes in which does not come out
 * again. {@link JournalFile} says what outlives what.
 */
public final class JournalWriter {
  private static final Pattern DIGITS = Pattern.compile("\\d{1,9}");

  /** Whether what the journal has already may go in once more. */
  public enum Again {
    REFUSED,
    ALLOWED
  }

  /**
   * What went into the journal.
   *
   * @param keys {@code ID/LINE} of every new row
   * @param field of the first new row, as written
   * @param rows as the journal now has them; a row that only voids another is none
   * @param passes all rows of their passes that now count, those that stood there among them
   * @param addedColumns columns that the file did not have before
   */
  public record Written(
      List<String> keys,
      String field,
      List<Application> rows,
      List<Application> passes,
      List<String> addedColumns) {

    public Written {
      keys = List.copyOf(keys);
      rows = List.copyOf(rows);
      passes = List.copyOf(passes);
      addedColumns = List.copyOf(addedColumns);
    }

    /** Ids of the passes, each once. */
    public List<String> ids() {
      return keys.stream().map(k -> k.substring(0, k.indexOf('/'))).distinct().toList();
    }
  }

  private final Book book;
  private final Path folder;
  private final List<NewRow> rows = new ArrayList<>();
  private List<Application> read = List.of();
  private List<Application> passes = List.of();

  private JournalWriter(BookPaths paths, Book book) {
    this.book = book;
    this.folder = paths.book();
  }

  /**
   * Adds all passes or none.
   *
   * @throws ProblemsException with everything that is wrong; then nothing is written
   */
  public static Written passes(BookPaths paths, Book book, List<NewPass> passes, Again again) {
    return new JournalWriter(paths, book).write(t -> newRows(t, passes), again);
  }

  /**
   * Adds a row that corrects another.
   *
   * @throws ProblemsException with everything that is wrong; then nothing is written
   */
  public static Written correct(BookPaths paths, Book book, Correction correction) {
    JournalWriter writer = new JournalWriter(paths, book);
    return writer.write(t -> List.of(writer.correcting(t, correction)), Again.ALLOWED);
  }

  private Written write(JournalFile.Rows made, Again again) {
    List<String> added =
        JournalFile.append(
            folder,
            table -> {
              rows.addAll(made.of(table));
              return rows;
            },
            (there, more, problems) -> check(there, more, problems, again));
    return new Written(
        rows.stream().map(NewRow::key).toList(), rows.get(0).text("field"), read, passes, added);
  }

  private void check(CsvTable there, JournalText more, Problems problems, Again again) {
    FieldList fields = new FieldList();
    for (Field f : book.fields()) {
      fields.add(f.id().value());
      fields.put(f);
    }
    Journal journal =
        new ApplicationsReader(new Names(book.catalog()), fields, book.prices(), problems)
            .read(there, more);
    Set<String> keys = rows.stream().map(NewRow::key).collect(Collectors.toSet());
    read = journal.applications().stream().filter(a -> keys.contains(key(a))).toList();
    Set<String> ids = rows.stream().map(r -> r.text("id")).collect(Collectors.toSet());
    passes = journal.applications().stream().filter(a -> ids.contains(a.pass())).toList();
    if (again == Again.REFUSED) {
      new SameAgain(journal, rows).tell(problems);
    }
  }

  static String key(Application a) {
    return a.pass() + "/" + a.line();
  }

  private static List<NewRow> newRows(CsvTable journal, List<NewPass> passes) {
    Set<String> taken = new TreeSet<>();
    Map<String, Integer> counters = new HashMap<>();
    journal.rows().forEach(r -> taken.add(r.text("id")));
    Problems problems = new Problems();
    List<NewRow> out = new ArrayList<>();
    for (NewPass pass : passes) {
      String id = pass.id().orElseGet(() -> nextId(pass.season(), taken, counters));
      if (!taken.add(id)) {
        problems.add(
            pass.lines().get(0).where().apply("id"),
            "the journal has a pass '" + id + "' already",
            "give it another id, or none for the next of the season");
      }
      for (int i = 0; i < pass.lines().size(); i++) {
        Map<String, String> cells = new HashMap<>(pass.lines().get(i).cells());
        cells.put("id", id);
        cells.put("line", Integer.toString(i + 1));
        out.add(new NewRow(cells, pass.lines().get(i).where()));
      }
    }
    problems.throwIfAny();
    return out;
  }

  /**
   * {@code A-27-004} where {@code A-27-003} is the highest of the season. A long import counts on
   * and does not look through all ids for each of its passes; an id that it brings along itself may
   * be higher, and is passed over.
   */
  private static String nextId(int season, Set<String> taken, Map<String, Integer> counters) {
    String start = "A-" + Integer.toString(100 + season % 100).substring(1) + "-";
    int number = counters.computeIfAbsent(start, s -> highest(s, taken));
    String id;
    do {
      number++;
      String digits = Integer.toString(number);
      id = start + "0".repeat(Math.max(0, 3 - digits.length())) + digits;
    } while (taken.contains(id));
    counters.put(start, number);
    return id;
  }

  private static int highest(String start, Set<String> taken) {
    return taken.stream()
        .filter(id -> id.startsWith(start))
        .map(id -> id.substring(start.length()))
        .filter(n -> DIGITS.matcher(n).matches())
        .mapToInt(Integer::parseInt)
        .max()
        .orElse(0);
  }

  private NewRow correcting(CsvTable journal, Correction c) {
    CsvRow old = target(journal, c);
    Map<String, String> cells = new LinkedHashMap<>();
    ApplicationsReader.COLUMNS.forEach(column -> cells.put(column, old.text(column)));
    cells.put("corrects", old.text("id") + "/" + old.text("line"));
    cells.put("line", nextLine(journal, old.text("id")));
    String product = c.changed().getOrDefault("product", old.text("product"));
    if (!Slug.of(product).equals(Slug.of(old.text("product")))) {
      // The number was that of another product.
      cells.put("epaRegNo", "");
    }
    cells.putAll(c.changed());
    if (c.voids()) {
      cells.put("rate", "0");
    }
    if (book.findField(cells.getOrDefault("field", "")).isEmpty()) {
      throw ProblemsException.of(
          c.where().apply("corrects"),
          c.target() + " names no field of the book",
          "name the row that it corrects, or record the pass anew");
    }
    return new NewRow(cells, c.where());
  }

  private static CsvRow target(CsvTable journal, Correction c) {
    String wanted = c.target().strip();
    List<CsvRow> hits =
        journal.rows().stream()
            .filter(
                r ->
                    wanted.contains("/")
                        ? wanted.equals(r.text("id") + "/" + r.text("line"))
                        : wanted.equals(r.text("id")))
            .toList();
    if (hits.size() == 1) {
      return hits.get(0);
    }
    Mark at = c.where().apply("corrects");
    throw hits.isEmpty()
        ? ProblemsException.of(
            at,
            "no row of the journal is '" + wanted + "'",
            "write id and line of the row that is wrong, as A-27-001/2")
        : ProblemsException.of(
            at,
            "the pass " + wanted + " has " + hits.size() + " lines",
            "say which one is wrong, as " + wanted + "/" + hits.get(0).text("line"));
  }

  private static String nextLine(CsvTable journal, String id) {
    List<String> lines =
        journal.rows().stream()
            .filter(r -> r.text("id").equals(id))
            .map(r -> r.text("line"))
            .toList();
    IntStream numbers =
        lines.stream().filter(n -> DIGITS.matcher(n).matches()).mapToInt(Integer::parseInt);
    OptionalInt highest = numbers.max();
    return Integer.toString(Math.max(highest.orElse(0), lines.size()) + 1);
  }

  /** The row of the journal that a correction is to name; empty when there is none such. */
  public static Optional<Application> find(Book book, String target) {
    String wanted = target.strip();
    List<Application> hits =
        book.journal().applications().stream()
            .filter(a -> wanted.equals(wanted.contains("/") ? key(a) : a.pass()))
            .toList();
    return hits.size() == 1 ? Optional.of(hits.get(0)) : Optional.empty();
  }
}
