package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.program.FieldId;
import org.swathbook.source.Problem;

/**
 * Rows of a journal as they are read, findable by pass and line. Made for a million of them: a row
 * keeps no text of its own for that.
 */
final class JournalDrafts {
  /** Passes of more lines than that look them up. */
  private static final int FEW_LINES = 16;

  private final List<Draft> rows = new ArrayList<>();
  private final Map<String, Lines> byPass = new HashMap<>();

  /** Of the last row: the rows of a pass mostly stand together. */
  private @Nullable Lines last;

  /** A row as read. It has an application, or problems, or neither when it only voids another. */
  static final class Draft {
    final int row;
    final String line;
    final Lines pass;
    final @Nullable Application application;
    final List<Problem> problems;

    /** Line of the file in which a later row stands that takes its place; 0 for none. */
    int replacedInRow;

    /** The next row of the pass. */
    private @Nullable Draft next;

    Draft(
        int row,
        Lines pass,
        String line,
        @Nullable Application application,
        List<Problem> problems) {
      this.row = row;
      this.pass = pass;
      this.line = line;
      this.application = application;
      this.problems = problems;
    }

    /** {@code ID/LINE}. */
    String key() {
      return pass.id + "/" + line;
    }
  }

  /** What there is of a pass, in the order of the file. */
  static final class Lines {
    final String id;
    private @Nullable Draft first;
    private @Nullable Draft last;
    private int count;
    private @Nullable Map<String, Draft> byLine;

    /** Where its first row that counts is. */
    @Nullable FieldId field;

    private Lines(String id) {
      this.id = id;
    }

    /** The first row of a line. */
    private Optional<Draft> find(String line) {
      if (byLine != null) {
        return Optional.ofNullable(byLine.get(line));
      }
      for (Draft d = first; d != null; d = d.next) {
        if (d.line.equals(line)) {
          return Optional.of(d);
        }
      }
      return Optional.empty();
    }

    private void add(Draft draft) {
      if (last == null) {
        first = draft;
      } else {
        last.next = draft;
      }
      last = draft;
      count++;
      if (byLine != null) {
        byLine.putIfAbsent(draft.line, draft);
      } else if (count > FEW_LINES) {
        Map<String, Draft> index = new HashMap<>();
        all().forEach(d -> index.putIfAbsent(d.line, d));
        byLine = index;
      }
    }

    private List<Draft> all() {
      List<Draft> all = new ArrayList<>(count);
      for (Draft d = first; d != null; d = d.next) {
        all.add(d);
      }
      return all;
    }
  }

  Lines pass(String id) {
    Lines pass = last;
    if (pass == null || !pass.id.equals(id)) {
      pass = byPass.computeIfAbsent(id, Lines::new);
      last = pass;
    }
    return pass;
  }

  /** Puts a row in; what it returns stands there already with the same id and line. */
  Optional<Draft> add(Draft draft) {
    Optional<Draft> first = draft.pass.find(draft.line);
    rows.add(draft);
    draft.pass.add(draft);
    return first;
  }

  /** All rows of a pass, or the first one of {@code ID/LINE}. */
  List<Draft> find(String wanted) {
    int slash = wanted.indexOf('/');
    Lines pass = byPass.get(slash < 0 ? wanted : wanted.substring(0, slash));
    if (pass == null) {
      return List.of();
    }
    return slash < 0
        ? pass.all()
        : pass.find(wanted.substring(slash + 1)).map(List::of).orElse(List.of());
  }

  List<Draft> rows() {
    return rows;
  }
}
