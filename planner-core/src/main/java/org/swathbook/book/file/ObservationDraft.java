package org.swathbook.book.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
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
import org.swathbook.program.SurvivorPattern;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlWriter;

/**
 * An observation that is put together answer by answer, each held to what the file's reader would
 * take, and that ends as the text of such a file. What is refused throws {@link MeasureException}
 * and changes nothing.
 */
public final class ObservationDraft {

  /** What stands under a weed and is a length. */
  public enum Length {
    SPRAYED_AT("sprayedAt", "3 in"),
    NEW_GROWTH("newGrowth", "1 in");

    private final String key;
    private final String example;

    Length(String key, String example) {
      this.key = key;
      this.example = example;
    }
  }

  /** What a plant looks like. */
  public enum Look {
    DEAD("dead"),
    COLLAPSED("collapsed"),
    STALLED("stalled"),
    REGROWING("regrowing"),
    UNTOUCHED("untouched");

    private final String key;

    Look(String key) {
      this.key = key;
    }
  }

  /** What can be told with yes or no. */
  public enum Sign {
    SAME_SPECIES_DEAD_BESIDE("sameSpeciesDeadBeside"),
    OTHER_SPECIES_CONTROLLED("otherSpeciesControlled");

    private final String key;

    Sign(String key) {
      this.key = key;
    }
  }

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
  private final Map<WeedId, Plants> weeds = new LinkedHashMap<>();
  private final Map<Condition, String> conditions = new LinkedHashMap<>();

  /** Of one weed, as written. */
  private record Plants(Map<String, String> texts, Map<Look, Integer> counts) {}

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
    stage = ObservationReader.stage(book.catalog().crop(theField().crop())).parse(text);
  }

  /** Weeds of the field that have no answer yet, by code. */
  public List<WeedId> open() {
    return book.weedsOf(theField().id()).stream()
        .map(w -> w.weed().id())
        .filter(w -> !weeds.containsKey(w))
        .distinct()
        .toList();
  }

  /** Adds a weed, which is then the one that is told of. */
  public WeedId weed(String text) {
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
    weeds.put(weed.id(), new Plants(new LinkedHashMap<>(), new LinkedHashMap<>()));
    return weed.id();
  }

  public void length(WeedId weed, Length which, String text) {
    ObservationReader.lengthCm(which.example).parse(text);
    told(weed).texts().put(which.key, text.strip());
  }

  public void area(WeedId weed, String text) {
    ScoutingCells.areaM2(text);
    told(weed).texts().put("area", text.strip());
  }

  public void count(WeedId weed, Look look, String text) {
    told(weed).counts().put(look, Parsers.whole(0, ObservationReader.MOST_PLANTS).parse(text));
  }

  /** How many were counted of a look; 0 when nothing was said. */
  public int count(WeedId weed, Look look) {
    return told(weed).counts().getOrDefault(look, 0);
  }

  public static List<String> patterns() {
    return List.of(SurvivorPattern.values()).stream().map(SurvivorPattern::spelling).toList();
  }

  public void pattern(WeedId weed, String text) {
    SurvivorPattern p =
        Texts.oneOf(SurvivorPattern.values(), SurvivorPattern::spelling).parse(text);
    told(weed).texts().put("pattern", p.spelling());
  }

  public void sign(WeedId weed, Sign sign, String text) {
    told(weed).texts().put(sign.key, Texts.yesNo(text) ? "yes" : "no");
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
    weeds.forEach((w, p) -> all.put(w.value(), plants(p).node()));
    root.put("weeds", all.node());
    if (!conditions.isEmpty()) {
      MapWriter map = new MapWriter();
      conditions.forEach((c, text) -> map.put(c.key, text));
      root.put("conditions", map.node());
    }
    return YamlWriter.text(root.node());
  }

  private static MapWriter plants(Plants p) {
    MapWriter counted = new MapWriter();
    counted.put("area", String.valueOf(p.texts().get("area")));
    p.counts().forEach((look, n) -> counted.put(look.key, Integer.toString(n)));
    MapWriter out = new MapWriter();
    List<String> keys = new ArrayList<>(p.texts().keySet());
    keys.remove("area");
    out.put("plants", counted.node());
    keys.forEach(k -> out.put(k, String.valueOf(p.texts().get(k))));
    return out;
  }

  /** What was answered, read as a file of this text is read. */
  public Observation read() {
    return ObservationReader.read("answers", text().getBytes(StandardCharsets.UTF_8), paths, book);
  }

  /**
   * Looks whether a file may be written.
   *
   * @throws ProblemsException when something is there already, or it cannot be written there
   */
  public static void checkFree(Path file, BookPaths paths, boolean force) {
    if (Files.isDirectory(file) || !force && Files.exists(file)) {
      throw ProblemsException.of(
          Mark.startOf(paths.nameOf(file)),
          "there is an observation of this name already",
          "write over it with --force, or keep it under another name");
    }
    paths.checkInside(file);
    Problems problems = new Problems();
    NewFiles.checkWithFolders(file, paths.nameOf(file), problems);
    problems.throwIfAny();
  }

  /** The file as it is to be written; its folder is made when there is none. */
  public NewFiles file(Path file) {
    return new NewFiles().put(file, paths.nameOf(file), text());
  }

  private Field theField() {
    if (field == null) {
      throw new IllegalStateException("the field comes first");
    }
    return field;
  }

  private Plants told(WeedId weed) {
    Plants p = weeds.get(weed);
    if (p == null) {
      throw new IllegalArgumentException(weed + " was not named");
    }
    return p;
  }
}
