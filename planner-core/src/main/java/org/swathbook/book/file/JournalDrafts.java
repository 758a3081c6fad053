package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.source.Problem;

/**
 * Rows of a journal as they are read, findable by pass and line, each by its place among them. Made
 * for a million of them: they stand in columns, and neither a row nor a pass has an object for it,
 * which the collector of garbage would move about while the rest is read.
 */
final class JournalDrafts {
  static final int NONE = -1;

  /** Passes of more lines than that look them up. */
  private static final int FEW_LINES = 16;

  /** Of 2^32. */
  private static final int GOLDEN_RATIO = 0x9E3779B9;

  private int size;
  private final IntBlocks rows = new IntBlocks();
  private final Blocks<String> lines = new Blocks<>();

  /** None of a row that has problems, or only voids another. */
  private final Blocks<Application> applications = new Blocks<>();

  /** Line of the file in which a later row stands that takes its place; 0 for none. */
  private final IntBlocks replacedIn = new IntBlocks();

  /** Place of the first row of the pass. */
  private final IntBlocks first = new IntBlocks();

  /** Place of the next row of the pass; 0, where none comes behind another, at its end. */
  private final IntBlocks next = new IntBlocks();

  /** Of the first row of a pass: id of the pass, and the place of its last row so far. */
  private final Blocks<String> ids = new Blocks<>();

  private final IntBlocks last = new IntBlocks();

  private final Map<Integer, List<Problem>> problems = new HashMap<>();
  private final Map<Integer, Map<String, Integer>> longPasses = new HashMap<>();

  /**
   * Passes by the hash of the id, which is the upper half; the lower one is the place of the first
   * row, one further. 0 where none stands.
   */
  private long[] table = new long[1 << 7];

  private int bits = 7;

  private int passes;

  /** What was looked up at last, and where it stands or would. */
  private @Nullable String lastId;

  private int lastSlot;

  /** Pass of the last row: the rows of a pass mostly stand together. */
  private int lastPass = NONE;

  int size() {
    return size;
  }

  /** Its line in the file. */
  int row(int at) {
    return rows.get(at);
  }

  /** {@code ID/LINE}. */
  String key(int at) {
    return id(first.get(at)) + "/" + line(at);
  }

  private String id(int pass) {
    String id = ids.get(pass);
    if (id == null) {
      throw new IllegalStateException("no row begins a pass at " + pass);
    }
    return id;
  }

  @Nullable Application application(int at) {
    return applications.get(at);
  }

  List<Problem> problems(int at) {
    return problems.isEmpty() ? List.of() : problems.getOrDefault(at, List.of());
  }

  /** Place of the first row of its pass. */
  int pass(int at) {
    return first.get(at);
  }

  int replacedIn(int at) {
    return replacedIn.get(at);
  }

  void replace(int at, int byRow) {
    replacedIn.set(at, byRow);
  }

  /** Whether a row is of this pass and line. */
  boolean is(int at, String id, String line) {
    return line.equals(lines.get(at)) && id(first.get(at)).equals(id);
  }

  /** The id of a pass in the very text of its first row. */
  String same(String id) {
    int pass = pass(id);
    if (pass == NONE) {
      return id;
    }
    lastPass = pass;
    return id(pass);
  }

  /**
   * Puts a row in.
   *
   * @return place of the row that stands there already with the same id and line
   */
  int add(
      int row, String id, String line, @Nullable Application application, List<Problem> problems) {
    int at = size++;
    rows.set(at, row);
    lines.set(at, line);
    if (application != null) {
      applications.set(at, application);
    }
    if (!problems.isEmpty()) {
      this.problems.put(at, problems);
    }
    int pass = pass(id);
    lastPass = pass == NONE ? at : pass;
    if (pass == NONE) {
      begin(at, id);
      return NONE;
    }
    int there = find(pass, line);
    first.set(at, pass);
    next.set(last.get(pass), at);
    last.set(pass, at);
    Map<String, Integer> index = longPasses.get(pass);
    if (index != null) {
      index.putIfAbsent(line, at);
    }
    return there;
  }

  private void begin(int at, String id) {
    ids.set(at, id);
    first.set(at, at);
    last.set(at, at);
    passes++;
    if (2 * passes > table.length) {
      widen();
    }
    table[slot(id)] = (long) id.hashCode() << Integer.SIZE | at + 1;
  }

  private void widen() {
    long[] narrow = table;
    bits++;
    table = new long[1 << bits];
    lastId = null;
    for (long pass : narrow) {
      if (pass != 0) {
        int slot = firstSlot(hash(pass));
        while (table[slot] != 0) {
          slot = next(slot);
        }
        table[slot] = pass;
      }
    }
  }

  private static int hash(long pass) {
    return (int) (pass >>> Integer.SIZE);
  }

  /**
   * Ids that count up have hashes that do, which are scattered by the golden ratio (Knuth 1998, The
   * Art of Computer Programming 3, 6.4).
   */
  private int firstSlot(int hash) {
    return hash * GOLDEN_RATIO >>> Integer.SIZE - bits;
  }

  private int next(int slot) {
    return slot + 1 & table.length - 1;
  }

  /** Place of the first row of a pass. */
  private int pass(String id) {
    return lastPass != NONE && id.equals(ids.get(lastPass)) ? lastPass : (int) table[slot(id)] - 1;
  }

  /** Where a pass stands in the table, or would. */
  private int slot(String id) {
    // A row is looked up before it goes in.
    if (id.equals(lastId)) {
      return lastSlot;
    }
    int hash = id.hashCode();
    int slot = firstSlot(hash);
    while (table[slot] != 0
        && !(hash(table[slot]) == hash && id.equals(ids.get((int) table[slot] - 1)))) {
      slot = next(slot);
    }
    lastId = id;
    lastSlot = slot;
    return slot;
  }

  /** The first row of a line of a pass. */
  private int find(int pass, String line) {
    Map<String, Integer> index = longPasses.get(pass);
    if (index != null) {
      return index.getOrDefault(line, NONE);
    }
    int count = 0;
    for (int at = pass; at != NONE; at = after(at)) {
      if (line.equals(lines.get(at))) {
        return at;
      }
      count++;
    }
    if (count > FEW_LINES) {
      Map<String, Integer> made = new HashMap<>();
      all(pass).forEach(at -> made.putIfAbsent(line(at), at));
      longPasses.put(pass, made);
    }
    return NONE;
  }

  /** Places of all rows of a pass, or of the first one of {@code ID/LINE}. */
  List<Integer> find(String wanted) {
    int slash = wanted.indexOf('/');
    int pass = pass(slash < 0 ? wanted : wanted.substring(0, slash));
    if (pass == NONE) {
      return List.of();
    }
    if (slash < 0) {
      return all(pass);
    }
    int at = find(pass, wanted.substring(slash + 1));
    return at == NONE ? List.of() : List.of(at);
  }

  private List<Integer> all(int pass) {
    List<Integer> all = new ArrayList<>();
    for (int at = pass; at != NONE; at = after(at)) {
      all.add(at);
    }
    return all;
  }

  private int after(int at) {
    int place = next.get(at);
    return place == 0 ? NONE : place;
  }

  private String line(int at) {
    return Objects.requireNonNull(lines.get(at));
  }
}
