package org.swathbook.book.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * A job as somebody types it: {@code "glyphosate-4.5sl 32 fl oz/acre"}, {@code "S-metolachlor 1.0
 * lb ai/acre"}, {@code "ammonium-sulfate 8.5 lb/100 gal"}.
 */
public final class MixWords {
  /** A name, and from the last number that a blank precedes and a unit follows on its rate. */
  private static final Pattern PART =
      Pattern.compile("(.+?)\\s+((?:\\d+(?:\\.\\d+)?|\\.\\d+)\\s*(?:[a-zA-Z%].*|as the label.*))");

  private final Book book;
  private final DoseParser parser;
  private final Problems problems = new Problems();

  private MixWords(Book book) {
    this.book = book;
    this.parser = new DoseParser(new Names(book.catalog()), book.prices());
  }

  /**
   * @param field id of a field of the book
   * @param gallonsPerAcre spray volume; empty when not said
   * @param parts products and adjuvants, each with its rate
   * @throws ProblemsException with everything that is wrong; places are {@code part 2}
   */
  public static SprayJob read(
      Book book, String field, LocalDate date, OptionalDouble gallonsPerAcre, List<String> parts) {
    return new MixWords(book).job(field, date, gallonsPerAcre, parts);
  }

  /**
   * One product with its rate.
   *
   * @throws ProblemsException when it is none
   */
  public static Dose dose(Book book, String text) {
    MixWords words = new MixWords(book);
    List<Dose> doses = new ArrayList<>();
    List<Adjuvant> adjuvants = new ArrayList<>();
    words.part(Mark.startOf("product"), text, doses, adjuvants);
    if (!adjuvants.isEmpty()) {
      words.problems.add(
          Mark.startOf("product"),
          "'" + text + "' is an adjuvant, of which the journal has no rows",
          "write a product with its rate, or say it in a note");
    }
    words.problems.throwIfAny();
    return doses.get(0);
  }

  private SprayJob job(
      String typed, LocalDate date, OptionalDouble gallonsPerAcre, List<String> parts) {
    Optional<Field> field =
        tried(Mark.startOf("--field"), () -> BookFields.of(book).parse(typed), "ND-1");
    if (!SeasonDates.contains(book.season(), date)) {
      problems.add(
          Mark.startOf("--date"),
          date + " is not in the season " + book.season(),
          SeasonDates.rule(book.season()));
    }
    List<Dose> doses = new ArrayList<>();
    List<Adjuvant> adjuvants = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      part(Mark.startOf("part " + (i + 1)), parts.get(i), doses, adjuvants);
    }
    if (doses.isEmpty() && problems.count() == 0) {
      problems.add(
          Mark.startOf("parts"), "the mix is empty", "write \"glyphosate-4.5sl 32 fl oz/acre\"");
    }
    problems.throwIfAny();
    return SprayJob.of(field.orElseThrow().id(), date, new Mix(doses, adjuvants, gallonsPerAcre));
  }

  private void part(Mark mark, String text, List<Dose> doses, List<Adjuvant> adjuvants) {
    Matcher m = PART.matcher(text.strip());
    if (!m.matches()) {
      problems.add(
          mark,
          "'" + text + "' is no name with a rate",
          "write as \"glyphosate-4.5sl 32 fl oz/acre\" or \"crop-oil 1 % v/v\"");
      return;
    }
    String name = m.group(1);
    String rate = m.group(2);
    Optional<AdjuvantKind> kind = AdjuvantKind.find(name);
    if (kind.isPresent()) {
      tried(mark, () -> MixParts.adjuvantRate(rate), "8.5 lb/100 gal")
          .ifPresent(r -> adjuvants.add(new Adjuvant(kind.get().spelling(), r)));
    } else {
      // Each by itself, so that a wrong rate does not hide a wrong name.
      Optional<String> known = tried(mark, () -> parser.known(name), "glyphosate-4.5sl");
      Optional<Rate> at = tried(mark, () -> Rate.parse(rate), "32 fl oz/acre");
      if (known.isPresent() && at.isPresent()) {
        tried(mark, () -> parser.dose(known.get(), at.get()), "32 fl oz/acre")
            .ifPresent(doses::add);
      }
    }
  }

  private interface Reading<T> {
    T read();
  }

  private <T> Optional<T> tried(Mark mark, Reading<T> reading, String example) {
    try {
      return Optional.of(reading.read());
    } catch (MeasureException e) {
      problems.add(mark, e, example);
      return Optional.empty();
    }
  }
}
