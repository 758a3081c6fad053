package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlReader;

/** Reads a program of a field. */
public final class ProgramReader {
  static final String FORMAT = "swathbook.program/1";
  private static final String PASS = "{at: planting, mix: [...]}";

  private final Book book;
  private final Problems problems = new Problems();
  private final List<Mark> times = new ArrayList<>();

  private ProgramReader(Book book) {
    this.book = book;
  }

  /**
   * The program in a file of the book or elsewhere.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  public static Program read(Path file, BookPaths paths, Book book) {
    return readWritten(file, paths, book).program();
  }

  /** The same with where the times of its passes stand, for what only the walked years can tell. */
  public static WrittenProgram readWritten(Path file, BookPaths paths, Book book) {
    String name = paths.nameOf(file);
    return readWritten(name, BookFiles.bytes(file, name), book);
  }

  /** The same from its bytes. */
  public static Program read(String name, byte[] content, Book book) {
    return readWritten(name, content, book).program();
  }

  private static WrittenProgram readWritten(String name, byte[] content, Book book) {
    return new ProgramReader(book).read(new YamlReader().readMap(name, content));
  }

  private WrittenProgram read(MapNode root) {
    MapReader top = new MapReader(root, problems);
    top.require("format", Texts.oneOf(List.of(FORMAT)), FORMAT, FORMAT);
    String name = top.require("name", t -> t, "Two layers, two foliar sites", "");
    Optional<Field> field = top.require("field", BookFields.of(book), "ND-1");
    List<Node> items = top.requireList("passes", "passes:\n  - " + PASS);
    top.done();
    List<Pass> passes = new ArrayList<>();
    if (field.isPresent()) {
      Optional<LocalDate> last = Optional.empty();
      for (Node item : items) {
        Optional<Pass> pass = MapReader.of(item, PASS, problems).flatMap(m -> pass(m, field.get()));
        pass.ifPresent(passes::add);
        Optional<LocalDate> date = pass.flatMap(p -> date(p.at(), field.get()));
        if (date.isPresent() && last.isPresent() && date.get().isBefore(last.get())) {
          problems.add(
              item.mark(),
              "the pass of " + date.get() + " comes before that of " + last.get() + " above it",
              "write passes in the order in which they are made");
        }
        last = date.isPresent() ? date : last;
      }
    }
    problems.throwIfAny();
    return new WrittenProgram(new Program(name, field.orElseThrow().id(), passes), times);
  }

  private Optional<Pass> pass(MapReader map, Field field) {
    int before = problems.count();
    Names names = new Names(book.catalog());
    MixParts parts = new MixParts(new DoseParser(names, book.prices()), problems);
    AnchorParser anchors =
        new AnchorParser(
            names, new SeasonDates(Optional.of(book.season())), book.catalog().crop(field.crop()));
    Optional<Anchor> at = map.require("at", anchors, "planting");
    List<Dose> doses =
        parts.doses(map.requireList("mix", "- {ingredient: metribuzin, rate: 0.38 lb ai/acre}"));
    List<Adjuvant> adjuvants =
        parts.adjuvants(map.findList("adjuvants", "[{kind: crop-oil, rate: 1 % v/v}]"));
    Optional<MapReader> carrier = map.findMap("carrier", "carrier: {volume: 15 gal/acre}");
    OptionalDouble gallons = carrier.map(MixParts::gallonsPerAcre).orElse(OptionalDouble.empty());
    carrier.ifPresent(MapReader::done);
    map.done();
    if (problems.count() == before && doses.isEmpty()) {
      problems.add(map.mark("mix"), "the mix is empty", "name at least one product");
    }
    if (problems.count() > before) {
      return Optional.empty();
    }
    times.add(map.mark("at"));
    return Optional.of(new Pass(at.orElseThrow(), new Mix(doses, adjuvants, gallons)));
  }

  /** The day of an anchor that needs no model to tell it. */
  private static Optional<LocalDate> date(Anchor at, Field field) {
    if (at instanceof Anchor.OnDate d) {
      return Optional.of(d.date());
    }
    return at instanceof Anchor.FromPlanting p
        ? Optional.of(field.plantDate().plusDays(p.days()))
        : Optional.empty();
  }
}
