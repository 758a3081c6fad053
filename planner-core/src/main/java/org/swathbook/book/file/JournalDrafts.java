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

  /** A row as read. It has an application, or problems, or neither when it only voids another. */
  static final class Draft {
    final int row;
    final String line;
    final Lines pass;
    final @Nullable Application application;
    final List<Problem> problems;

    /** Line of the file in which a later row stands that takes its place; 0 for none. */
    int replacedInRow;

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
    private final List<Draft> drafts = new ArrayList<>(3);
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
      for (Draft d : drafts) {
        if (d.line.equals(line)) {
          return Optional.of(d);
        }
      }
      return Optional.empty();
    }

    private void add(Draft draft) {
      drafts.add(draft);
      if (byLine != null) {
        byLine.putIfAbsent(draft.line, draft);
      } else if (drafts.size() > FEW_LINES) {
        Map<String, Draft> index = new HashMap<>();
        drafts.forEach(d -> index.putIfAbsent(d.line, d));
        byLine = index;
      }
    }
  }

  Lines pass(String id) {
    return byPass.computeIfAbsent(id, Lines::new);
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
        ? pass.drafts
        : pass.find(wanted.substring(slash + 1)).map(List::of).orElse(List.of());
  }

  List<Draft> rows() {
    return rows;
  }
}
