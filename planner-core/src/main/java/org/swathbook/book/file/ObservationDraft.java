package org.swathbook.book.file;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.Observation;
import org.swathbook.program.SprayJob;
import org.swathbook.source.MapWriter;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlWriter;

/**
 * An observation that is put together answer by answer, each held to what the file's reader would
 * take, and that ends as the text of such a file. What is refused throws {@link MeasureException}
 * and changes nothing.
 */
public final class ObservationDraft {

  /** What else may explain what a pass left. */
  public enum Condition {
    SOIL("soil"),
    COVERAGE("coverage"),
    RATE("rate");

    private final String key;

    Condition(String key) {
      this.key = key;
    }

    public List<String> words() {
      return switch (this) {
        case SOIL -> ObservationReader.SOILS;
        case COVERAGE -> ObservationReader.COVERAGES;
        case RATE -> ObservationReader.RATES;
      };
    }
  }

  private final Book book;
  private final BookPaths paths;
  private final SeasonDates dates;
  private @Nullable Field field;
  private @Nullable LocalDate sprayed;
  private @Nullable String mix;
  private @Nullable LocalDate seen;
  private @Nullable String stage;
  private final Map<WeedId, WeedAnswers> weeds = new LinkedHashMap<>();
  private final Map<Condition, String> conditions = new LinkedHashMap<>();

  public ObservationDraft(Book book, BookPaths paths) {
    this.book = book;
    this.paths = paths;
    this.dates = new SeasonDates(Optional.of(book.season()));
  }

  public void field(String text) {
    field = BookFields.of(book).parse(text);
  }

  /** Days of this season on which the journal has a pass of the field, not after a day. */
  public List<LocalDate> passes(LocalDate today) {
    return book.journal().of(theField().id()).stream()
        .filter(a -> a.season() == book.season())
        .map(Application::date)
        .filter(d -> !d.isAfter(today))
        .distinct()
        .sorted()
        .toList();
  }

  public void sprayed(String text) {
    sprayed = dates.inSeason(text);
  }

  /** Whether the journal lacks the pass, so that a mix of the book must say what was sprayed. */
  public boolean needsMix() {
    return book.journal().of(theField().id()).stream().noneMatch(a -> a.date().equals(sprayed));
  }

  /** Names of the book's mixes for this field. */
  public List<String> mixes() {
    return paths.mixes().stream().filter(m -> fieldOf(m).equals(Optional.of(theField()))).toList();
  }

  private Optional<Field> fieldOf(String name) {
    return MixReader.fieldIn(paths.find(BookPaths.Kind.MIX, name), paths).flatMap(book::findField);
  }

  public void mix(String text) {
    SprayJob job;
    try {
      job = MixReader.read(paths.find(BookPaths.Kind.MIX, text), paths, book);
    } catch (ProblemsException e) {
      var p = e.problems().get(0);
      throw new MeasureException("the mix '" + text + "': " + p.what() + "; " + p.right());
    }
    if (!job.field().equals(theField().id())) {
      throw new MeasureException(
          "'" + text + "' is for " + job.field() + "; name a mix for " + theField().id());
    }
    mix = text.strip();
  }

  public void seen(String text) {
    LocalDate day = dates.inSeason(text);
    if (sprayed != null && day.isBefore(sprayed)) {
      throw new MeasureException(
          "'" + text + "' is before the pass; write a date from " + sprayed + " on");
    }
    seen = day;
  }

  /** Stages of the field's crop, in order. */
  public List<String> stages() {
    return book.catalog().crop(theField().crop()).stages().stream().map(CropStage::name).toList();
  }

  public void stage(String text) {
    stage = CropStageParser.of(book.catalog().crop(theField().crop())).parse(text);
  }

  /** Weeds of the field that have no answer yet, by code. */
  public List<WeedId> open() {
    return book.weedsOf(theField().id()).stream()
        .map(w -> w.weed().id())
        .filter(w -> !weeds.containsKey(w))
        .distinct()
        .toList();
  }

  /** Adds a weed, of which the rest is then answered. */
  public WeedAnswers weed(String text) {
    List<String> there = open().stream().map(WeedId::value).toList();
    Weed weed =
        book.catalog()
            .findWeed(text)
            .orElseThrow(() -> Names.unknown(text, "weed of " + theField().id(), there));
    if (weeds.containsKey(weed.id())) {
      throw new MeasureException(weed.id() + " stands here already; name another");
    }
    if (!open().contains(weed.id())) {
      throw new MeasureException(
          weed.id()
              + " has no row in weeds.csv for "
              + theField().id()
              + "; write one of: "
              + String.join(", ", there)
              + ", or its row there first");
    }
    WeedAnswers answers = new WeedAnswers(weed.id());
    weeds.put(weed.id(), answers);
    return answers;
  }

  public void condition(Condition which, String text) {
    conditions.put(which, Texts.oneOf(which.words()).parse(text));
  }

  /** {@code nd-1-2027-06-22}. */
  public String suggestedName() {
    return theField().id().fileName() + "-" + seen;
  }

  /** The text of the file; what was not answered stands in it as not written. */
  public String text() {
    MapWriter root = new MapWriter();
    root.put("format", ObservationReader.FORMAT);
    root.put("field", theField().id().value());
    MapWriter pass = new MapWriter().put("date", String.valueOf(sprayed));
    if (mix != null) {
      pass.put("mix", mix);
    }
    root.put("pass", pass.node());
    root.put("seen", String.valueOf(seen));
    if (stage != null) {
      root.put("cropStage", stage);
    }
    MapWriter all = new MapWriter();
    weeds.forEach((w, answers) -> all.put(w.value(), answers.written().node()));
    root.put("weeds", all.node());
    if (!conditions.isEmpty()) {
      MapWriter map = new MapWriter();
      conditions.forEach((c, text) -> map.put(c.key, text));
      root.put("conditions", map.node());
    }
    return YamlWriter.text(root.node());
  }

  /** What was answered, read as a file of this text is read. */
  public Observation read() {
    return ObservationReader.read("answers", text().getBytes(StandardCharsets.UTF_8), paths, book);
  }

  private Field theField() {
    if (field == null) {
      throw new IllegalStateException("the field comes first");
    }
    return field;
  }
}
