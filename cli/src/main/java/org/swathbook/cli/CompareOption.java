package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.work.FieldPlans;
import org.swathbook.cli.work.PassTimes;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.Effort;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Planner;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.plan.compare.LastSeason;
import org.swathbook.plan.keep.Wanting;
import org.swathbook.program.Program;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Programs of one field side by side. */
final class CompareOption {
  private static final String BEST = "best";
  private static final String LAST_YEAR = "last-year";

  private final CommandSpec command;
  private final Words typed;

  CompareOption(CommandSpec command) {
    this.command = command;
    typed =
        Words.optionOfMany(
            command,
            "--compare",
            "PROGRAM",
            "Hold programs of the field against the first one named: files or names in the folder"
                + " programs of the book, best for the planner's own, last-year for what the"
                + " journal sprayed. One alone is held against the planner's best.");
  }

  boolean isGiven() {
    return typed.isGiven();
  }

  /** The words as typed, each once; one alone stands behind the planner's best. */
  private List<String> words() {
    Set<String> words = new LinkedHashSet<>();
    typed.all().forEach(t -> words.add(isWord(t) ? t.strip().toLowerCase(Locale.ROOT) : t.strip()));
    if (words.size() > 1) {
      return List.copyOf(words);
    }
    if (words.contains(BEST)) {
      throw wrong("best alone has nothing to be held against; name another program");
    }
    return List.of(BEST, words.iterator().next());
  }

  /** The planner works for its own best alone. */
  void checkBest(EffortOption effort) {
    if (effort.isGiven() && !words().contains(BEST)) {
      throw wrong("--effort concerns best alone, which is not compared here");
    }
  }

  private static boolean isWord(String typed) {
    String word = typed.strip();
    return word.equalsIgnoreCase(BEST) || word.equalsIgnoreCase(LAST_YEAR);
  }

  /**
   * Reads, plans and walks what is to be compared.
   *
   * @param fields fields typed, which must be one
   * @param wishes what is asked of the planner's best
   * @param effort what it takes
   */
  ComparedField compare(
      Book book,
      BookPaths paths,
      List<Field> fields,
      PlanWishes wishes,
      Effort effort,
      LocalDate today) {
    if (fields.size() != 1) {
      throw wrong("programs of one field are compared; name the field, as plan ND-1 --compare");
    }
    Field field = fields.get(0);
    List<String> words = words();
    if (!wishes.equals(PlanWishes.NONE) && !words.contains(BEST)) {
      throw wrong("what is asked of a plan concerns best alone, which is not compared here");
    }
    // Files first: what is wrong with them is told before the planner works.
    List<Optional<WrittenProgram>> read =
        words.stream().map(w -> read(w, book, paths, field)).toList();
    if (words.contains(LAST_YEAR)) {
      LastSeason.missing(book, field)
          .ifPresent(
              why -> {
                throw wrong("last-year: " + why);
              });
    }
    TraceSet traces = TraceBuilder.build(book, field, today);
    PassTimes.check(
        read.stream().flatMap(Optional::stream).toList(), traces, book.house().sizePercentile());
    List<ComparedProgram.Named> programs = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (read.get(i).isPresent()) {
        Program written = read.get(i).orElseThrow().program();
        programs.add(standing(word, written, List.of(), book, wishes, traces, today));
      } else if (word.equals(BEST)) {
        best(book, wishes, effort, field, today, programs, notes);
      } else {
        LastSeason last = LastSeason.of(book, traces);
        programs.add(standing(word, last.program(), last.notes(), book, wishes, traces, today));
      }
    }
    return new ComparedField(
        field, ComparedProgram.of(book, traces, programs, today), List.copyOf(notes));
  }

  /** A program on what the journal has made of the season, with what it lacks of what is asked. */
  private static ComparedProgram.Named standing(
      String word,
      Program written,
      List<String> notes,
      Book book,
      PlanWishes wishes,
      TraceSet traces,
      LocalDate today) {
    SeasonSoFar.Standing s =
        SeasonSoFar.of(book, traces.field(), today).standing(book, traces, written, today);
    List<String> all = new ArrayList<>(notes);
    all.addAll(s.notes());
    new Wanting(book, wishes)
        .of(s.program()).stream().distinct().forEach(w -> all.add("Against what is asked: " + w));
    return new ComparedProgram.Named(word, false, word.equals(LAST_YEAR), s.program(), all);
  }

  private void best(
      Book book,
      PlanWishes wishes,
      Effort effort,
      Field field,
      LocalDate today,
      List<ComparedProgram.Named> programs,
      List<String> notes) {
    PlannedField plan =
        new FieldPlans(
                f -> PlannedField.of(new Planner(book, wishes, effort).plan(f, today)),
                1,
                false,
                command.commandLine().getErr())
            .of(List.of(field))
            .get(0);
    if (plan.isRefused()) {
      String rules =
          String.join(
              ", ",
              plan.refusal().stream()
                  .flatMap(r -> r.because().stream())
                  .map(f -> f.rule().value())
                  .distinct()
                  .toList());
      notes.add(
          "best is left out: the planner found no legal program"
              + (rules.isEmpty() ? "." : "; what stands against it: " + rules + "."));
      return;
    }
    PlannedProgram first = plan.programs().get(0);
    String found =
        first.recommended()
            ? "The planner recommends it."
            : "The least bad that the planner found; it is not recommended.";
    String how =
        effort == Effort.QUICK
            ? "It was found by a quick look; the usual effort may find a better one."
            : "Its search is heuristic: a better program may exist.";
    programs.add(
        new ComparedProgram.Named(
            BEST, first.recommended(), false, first.outcome().program(), List.of(found, how)));
  }

  /** The program of a file; empty for a word that stands for another one. */
  private Optional<WrittenProgram> read(String word, Book book, BookPaths paths, Field field) {
    if (isWord(word)) {
      return Optional.empty();
    }
    WrittenProgram written =
        ProgramReader.readWritten(
            paths.find(BookPaths.Kind.PROGRAM, word, List.of(BEST, LAST_YEAR)), paths, book);
    if (!written.program().field().equals(field.id())) {
      throw wrong(
          "the program "
              + word
              + " is one of "
              + written.program().field()
              + "; compare programs of "
              + field.id());
    }
    return Optional.of(written);
  }

  private ParameterException wrong(String what) {
    return new ParameterException(command.commandLine(), what);
  }
}
