package org.swathbook.stress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.program.Anchor;
import org.swathbook.season.outcome.PassOutcome;

/**
 * Planting comes so many days late: passes that hang on planting, a stage or a height go with it,
 * dated ones stay. Nothing else of the field moves, the harvest date neither, and what a crop loses
 * by late planting itself is not counted.
 */
record LatePlanting(int days) implements StressCase {

  @Override
  public String name() {
    return "late-planting";
  }

  @Override
  public Posed pose(Situation plain) {
    String title = "planting " + days + " days late";
    Field old = plain.field();
    LocalDate late = old.plantDate().plusDays(days);
    if (old.plantDate().isBefore(plain.today())) {
      return Posed.not(title, "the field is planted");
    }
    LocalDate end = LocalDate.of(plain.book().season(), 10, 31);
    if (!late.isBefore(old.harvestDate().filter(h -> h.isBefore(end)).orElse(end))) {
      return Posed.not(title, "there is no season left before harvest");
    }
    Field field = old.plantedOn(late);
    Book book = plain.book().withField(field);
    Stressed stressed =
        new Stressed(
            "",
            book,
            TraceBuilder.build(book, field, plain.today()),
            plain.program(),
            Stressed.all(plain.program()),
            plain.notBeforeToday(known(plain)),
            List.of(),
            book.resprayExtra(),
            Optional.empty(),
            Optional.empty());
    return Posed.one(title, stressed, notes(plain));
  }

  /**
   * The day on which the planter should have gone. A pass before it that goes with planting is held
   * back already, so the delay is known on the day it was planned for.
   */
  private static LocalDate known(Situation plain) {
    return plain.outcome().passes().stream()
        .filter(p -> !isDated(plain, p))
        .map(PassOutcome::planned)
        .filter(d -> d.isBefore(plain.field().plantDate()))
        .min(Comparator.naturalOrder())
        .orElse(plain.field().plantDate());
  }

  private static boolean isDated(Situation plain, PassOutcome pass) {
    return plain.written(pass).at() instanceof Anchor.OnDate;
  }

  private static List<String> notes(Situation plain) {
    List<String> stay = new ArrayList<>();
    List<String> heldBack = new ArrayList<>();
    for (PassOutcome p : plain.outcome().passes()) {
      String number = Integer.toString(p.index() + 1);
      if (isDated(plain, p)) {
        stay.add(number);
      } else if (p.planned().isBefore(plain.field().plantDate())) {
        heldBack.add(number);
      }
    }
    List<String> notes = new ArrayList<>();
    if (!stay.isEmpty()) {
      notes.add("On the date that the program names stays pass " + String.join(", ", stay) + ".");
    }
    if (!heldBack.isEmpty()) {
      notes.add(
          "Held back with planting, as if the delay were known by then: pass "
              + String.join(", ", heldBack)
              + ".");
    }
    notes.add("What the crop loses by late planting itself is not counted.");
    return notes;
  }
}
