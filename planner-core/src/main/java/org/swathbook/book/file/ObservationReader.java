package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.program.Mix;
import org.swathbook.program.Observation;
import org.swathbook.program.PassConditions;
import org.swathbook.program.PlantCounts;
import org.swathbook.program.SeenWeed;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SurvivorPattern;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlReader;

/**
 * Reads what was seen in a field after a pass. The pass is looked up in the journal by its date;
 * where the journal lacks it, a mix of the book must say what was sprayed.
 */
public final class ObservationReader {
  static final String FORMAT = "swathbook.observation/1";
  static final int MOST_PLANTS = 1_000_000;
  private static final String PASS = "pass: {date: 2027-06-08, mix: nd-1-june}";
  private static final String PLANTS = "plants: {area: 100 ft2, dead: 14, regrowing: 3}";

  static final List<String> SOILS = List.of("dry", "moist", "wet");
  static final List<String> COVERAGES = List.of("good", "poor");
  static final List<String> RATES = List.of("as planned", "below", "above");

  private final BookPaths paths;
  private final Book book;
  private final Names names;
  private final Problems problems = new Problems();

  private ObservationReader(BookPaths paths, Book book) {
    this.paths = paths;
    this.book = book;
    this.names = new Names(book.catalog());
  }

  /**
   * The observation in a file of the book or elsewhere.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  public static Observation read(Path file, BookPaths paths, Book book) {
    String name = paths.nameOf(file);
    return read(name, BookFiles.bytes(file, name), paths, book);
  }

  /** The same from its bytes. */
  public static Observation read(String name, byte[] content, BookPaths paths, Book book) {
    return new ObservationReader(paths, book).read(new YamlReader().readMap(name, content));
  }

  private record Sprayed(Mix mix, boolean inJournal) {}

  private Observation read(MapNode root) {
    MapReader top = new MapReader(root, problems);
    top.require("format", Texts.oneOf(List.of(FORMAT)), FORMAT, FORMAT);
    Optional<Field> field = top.require("field", BookFields.of(book), "ND-1");
    SeasonDates dates = new SeasonDates(Optional.of(book.season()));
    Optional<LocalDate> seen = top.require("seen", dates::inSeason, "2027-06-22");
    Optional<MapReader> pass = top.requireMap("pass", PASS);
    Optional<LocalDate> sprayed =
        pass.flatMap(p -> p.require("date", dates::inSeason, "2027-06-08"));
    Optional<String> mixName = pass.flatMap(p -> p.find("mix", Texts::text, "nd-1-june"));
    pass.ifPresent(MapReader::done);
    Optional<Sprayed> mix =
        field.isPresent() && sprayed.isPresent()
            ? sprayed(pass.orElseThrow(), field.get(), sprayed.get(), mixName)
            : Optional.empty();
    if (seen.isPresent() && sprayed.isPresent() && seen.get().isBefore(sprayed.get())) {
      problems.add(
          top.mark("seen"),
          "the field was seen on " + seen.get() + ", before the pass of " + sprayed.get(),
          "mend one of the dates");
    }
    Optional<String> stage =
        field
            .map(f -> book.catalog().crop(f.crop()))
            .flatMap(c -> top.find("cropStage", CropStageParser.of(c), "V5"));
    List<SeenWeed> weeds =
        top.requireMap("weeds", "weeds: {AMAPA: {" + PLANTS + "}}")
            .map(w -> weeds(w, field))
            .orElse(List.of());
    PassConditions conditions =
        top.findMap("conditions", "conditions: {soil: moist, coverage: good}")
            .map(ObservationReader::conditions)
            .orElse(PassConditions.UNKNOWN);
    if (field.isPresent()) {
      top.done();
    }
    problems.throwIfAny();
    Sprayed what = mix.orElseThrow();
    return new Observation(
        field.orElseThrow().id(),
        sprayed.orElseThrow(),
        what.mix(),
        what.inJournal(),
        seen.orElseThrow(),
        stage,
        weeds,
        conditions);
  }

  /** What the journal has of that day comes before what was meant to be sprayed. */
  private Optional<Sprayed> sprayed(
      MapReader pass, Field field, LocalDate date, Optional<String> mixName) {
    List<Application> rows =
        book.journal().of(field.id()).stream().filter(a -> a.date().equals(date)).toList();
    if (!rows.isEmpty()) {
      return Optional.of(new Sprayed(Mix.of(rows.stream().map(Application::dose).toList()), true));
    }
    if (mixName.isEmpty()) {
      problems.add(
          pass.mark(),
          "the journal has no pass on " + field.id() + " on " + date,
          "record the pass, mend its date, or name the mix that was sprayed, as " + PASS);
      return Optional.empty();
    }
    SprayJob job;
    try {
      job = MixReader.read(paths.find(BookPaths.Kind.MIX, mixName.get()), paths, book);
    } catch (ProblemsException e) {
      problems.add(
          pass.mark("mix"),
          "the mix '" + mixName.get() + "' cannot be read: " + e.problems().get(0).what(),
          e.problems().get(0).right());
      return Optional.empty();
    }
    if (!job.field().equals(field.id())) {
      problems.add(
          pass.mark("mix"),
          "the mix '" + mixName.get() + "' is for " + job.field() + ", not for " + field.id(),
          "name a mix of this field");
    }
    return Optional.of(new Sprayed(job.mix(), false));
  }

  private List<SeenWeed> weeds(MapReader map, Optional<Field> field) {
    List<SeenWeed> out = new ArrayList<>();
    for (MapNode.Entry e : map.node().entries()) {
      weed(e, field)
          .ifPresent(
              w -> {
                if (out.stream().anyMatch(o -> o.weed().equals(w.weed()))) {
                  problems.add(
                      e.keyMark(),
                      "'" + e.key() + "' is " + w.weed() + ", which stands here already",
                      "write each weed once");
                }
                out.add(w);
              });
    }
    if (map.node().entries().isEmpty()) {
      problems.add(map.mark(), "no weed was looked at", "name at least one weed and its plants");
    }
    return out;
  }

  private Optional<SeenWeed> weed(MapNode.Entry entry, Optional<Field> field) {
    Optional<Weed> weed = names.weedOfKey(entry, problems);
    if (weed.isPresent() && field.isPresent() && !isListed(weed.get(), field.get())) {
      problems.add(
          entry.keyMark(),
          weed.get().id() + " has no row in weeds.csv for " + field.get().id(),
          "write its row there first, with the density you expect");
    }
    Optional<MapReader> map = MapReader.of(entry.value(), "{" + PLANTS + "}", problems);
    if (map.isEmpty()) {
      return Optional.empty();
    }
    MapReader m = map.get();
    OptionalDouble sprayedAt = m.findNumber("sprayedAt", lengthCm("3 in"), "3 in");
    Optional<PlantCounts> plants = m.requireMap("plants", PLANTS).flatMap(this::plants);
    OptionalDouble newGrowth = m.findNumber("newGrowth", lengthCm("1 in"), "1 in");
    Optional<SurvivorPattern> pattern =
        m.find(
            "pattern",
            Texts.oneOf(SurvivorPattern.values(), SurvivorPattern::spelling),
            "scattered");
    Optional<Boolean> beside = m.find("sameSpeciesDeadBeside", Texts::yesNo, "yes");
    Optional<Boolean> others = m.find("otherSpeciesControlled", Texts::yesNo, "yes");
    m.done();
    return weed.isPresent() && plants.isPresent()
        ? Optional.of(
            new SeenWeed(
                weed.get().id(), sprayedAt, plants.get(), newGrowth, pattern, beside, others))
        : Optional.empty();
  }

  private boolean isListed(Weed weed, Field field) {
    return book.weedsOf(field.id()).stream().anyMatch(w -> w.weed().id().equals(weed.id()));
  }

  private Optional<PlantCounts> plants(MapReader map) {
    Optional<Double> areaM2 = map.require("area", ScoutingCells::areaM2, "100 ft2");
    int dead = count(map, "dead");
    int collapsed = count(map, "collapsed");
    int stalled = count(map, "stalled");
    int regrowing = count(map, "regrowing");
    int untouched = count(map, "untouched");
    map.done();
    if (dead + collapsed + stalled + regrowing + untouched == 0) {
      problems.add(
          map.mark(),
          "no plant was counted",
          "count at least one, dead or alive, or leave the weed out");
      return Optional.empty();
    }
    return areaM2.map(a -> new PlantCounts(a, dead, collapsed, stalled, regrowing, untouched));
  }

  private static int count(MapReader map, String key) {
    return map.find(key, Parsers.whole(0, MOST_PLANTS), "3").orElse(0);
  }

  /** A length that is not below zero, cm. */
  static TextParser<Double> lengthCm(String example) {
    return text -> {
      double value = Texts.in(Unit.CENTIMETRE, example).parse(text);
      if (value < 0) {
        throw new MeasureException("'" + text + "' is below zero; write as '3 in'");
      }
      return value;
    };
  }

  private static PassConditions conditions(MapReader map) {
    PassConditions out =
        new PassConditions(
            map.find("soil", Texts.oneOf(SOILS), "moist"),
            map.find("coverage", Texts.oneOf(COVERAGES), "good"),
            map.find("rate", Texts.oneOf(RATES), "as planned"));
    map.done();
    return out;
  }
}
