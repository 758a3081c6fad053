package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ObservationDraft;
import org.swathbook.book.file.ObservationDraft.Condition;
import org.swathbook.book.file.WeedAnswers;
import org.swathbook.book.file.WeedAnswers.Length;
import org.swathbook.book.file.WeedAnswers.Look;
import org.swathbook.book.file.WeedAnswers.Sign;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.terminal.Answers;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/** Asks step by step for what an observation file would hold. */
final class EscapesQuestions {
  private static final String UNKNOWN = "not known";
  private static final String NONE = "none";
  private static final String NUMBER = "a number";

  private final Book book;
  private final Answers answers;
  private final LocalDate today;
  private final ObservationDraft draft;

  EscapesQuestions(Book book, BookPaths paths, Answers answers, LocalDate today) {
    this.book = book;
    this.answers = answers;
    this.today = today;
    this.draft = new ObservationDraft(book, paths);
  }

  /**
   * @param field and {@code sprayed}: asked for when null
   */
  ObservationDraft ask(@Nullable String field, @Nullable LocalDate sprayed) {
    if (field != null) {
      given("--field", field, draft::field);
    }
    if (sprayed != null) {
      given("--date", sprayed.toString(), draft::sprayed);
    }
    answers.say(
        "What was seen after a pass, question by question. A word or number a line; an empty line"
            + " means what stands behind 'empty'.");
    if (field == null) {
      answers.need(
          "Which field?",
          Answers.offered(book.fields().stream().map(f -> f.id().value()).toList()),
          draft::field);
    }
    if (sprayed == null) {
      sprayed();
    }
    if (draft.needsMix()) {
      List<String> mixes = draft.mixes();
      answers.need(
          "The journal has no pass of that day. Which mix was sprayed?",
          mixes.isEmpty() ? "a mix file; the book has none for this field" : Answers.offered(mixes),
          draft::mix);
    }
    seen();
    answers.ask("At what stage is the crop?", stages(), UNKNOWN, draft::stage);
    weeds();
    answers.say("Of the spraying:");
    condition(Condition.SOIL, "How was the soil?");
    condition(Condition.COVERAGE, "How were leaves covered?");
    condition(Condition.RATE, "What was the rate?");
    return draft;
  }

  private static void given(String option, String text, Consumer<String> take) {
    try {
      take.accept(text);
    } catch (MeasureException e) {
      Problems problems = new Problems();
      problems.add(Mark.startOf(option), e, text);
      throw new ProblemsException(problems);
    }
  }

  private String stages() {
    List<String> all = draft.stages();
    return all.isEmpty() ? "a stage" : all.get(0) + " to " + all.get(all.size() - 1);
  }

  private void sprayed() {
    List<LocalDate> passes = draft.passes(today);
    if (passes.isEmpty()) {
      answers.need(
          "When was it sprayed?",
          "a date, as " + today.minusDays(14) + "; the journal has no pass of this season yet",
          draft::sprayed);
      return;
    }
    LocalDate last = passes.get(passes.size() - 1);
    boolean told =
        answers.ask(
            "When was it sprayed?",
            "in the journal: " + Answers.offered(passes.stream().map(LocalDate::toString).toList()),
            last.toString(),
            draft::sprayed);
    if (!told) {
      draft.sprayed(last.toString());
    }
  }

  private void seen() {
    boolean fits;
    try {
      draft.seen(today.toString());
      fits = true;
    } catch (MeasureException e) {
      fits = false;
    }
    if (fits) {
      answers.ask("When was the field seen?", "a date", today.toString(), draft::seen);
    } else {
      answers.need("When was the field seen?", "a date of the season", draft::seen);
    }
  }

  private void weeds() {
    boolean first = true;
    while (!draft.open().isEmpty()) {
      String offered = Answers.offered(draft.open().stream().map(this::named).toList());
      WeedAnswers[] named = new WeedAnswers[1];
      if (first) {
        answers.need("Which weed was counted?", offered, t -> named[0] = draft.weed(t));
      } else if (!answers.ask(
          "Which other weed was counted?", offered, "no other", t -> named[0] = draft.weed(t))) {
        return;
      }
      weed(named[0]);
      first = false;
    }
  }

  /** {@code AMAPA Palmer amaranth}. */
  private String named(WeedId w) {
    return w + " " + book.catalog().weed(w).name();
  }

  private void weed(WeedAnswers w) {
    answers.say(book.catalog().weed(w.weed()).name() + ":");
    answers.ask(
        "How tall was it when sprayed?", "as 3 in", UNKNOWN, t -> w.length(Length.SPRAYED_AT, t));
    answers.need("On what area were plants counted?", "as 100 ft2", t -> w.area(t));
    counts(w);
    int living = w.count(Look.REGROWING) + w.count(Look.UNTOUCHED);
    if (w.count(Look.REGROWING) > 0) {
      answers.ask(
          "How long is the new growth?", "as 1 in", UNKNOWN, t -> w.length(Length.NEW_GROWTH, t));
    }
    if (living > 0) {
      answers.ask(
          "How do the survivors lie in the field?",
          Answers.offered(WeedAnswers.patterns()),
          UNKNOWN,
          t -> w.pattern(t));
      answers.ask(
          "Do dead plants of this weed stand beside live ones of its size?",
          "yes, no",
          UNKNOWN,
          t -> w.sign(Sign.SAME_SPECIES_DEAD_BESIDE, t));
      answers.ask(
          "Are the other weeds that the mix controls dead?",
          "yes, no",
          UNKNOWN,
          t -> w.sign(Sign.OTHER_SPECIES_CONTROLLED, t));
    }
  }

  private void counts(WeedAnswers w) {
    while (true) {
      count(w, Look.DEAD, "Dead plants?");
      count(w, Look.COLLAPSED, "Plants that are down, stem soft at the soil line, brown inside?");
      count(w, Look.STALLED, "Bent or swollen, firm, neither dying nor growing again?");
      count(w, Look.REGROWING, "Growing again: new upright growth, new white roots?");
      count(w, Look.UNTOUCHED, "Untouched, without a sign of injury?");
      for (Look l : Look.values()) {
        if (w.count(l) > 0) {
          return;
        }
      }
      answers.say("  no plant was counted; count at least one, dead or alive");
    }
  }

  private void count(WeedAnswers w, Look look, String question) {
    answers.ask(question, NUMBER, NONE, t -> w.count(look, t));
  }

  private void condition(Condition which, String question) {
    answers.ask(question, Answers.offered(which.words()), UNKNOWN, t -> draft.condition(which, t));
  }
}
