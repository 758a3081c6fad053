package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Biotype;
import org.swathbook.book.Biotypes;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Density;
import org.swathbook.measure.Numbers;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/**
 * Reads {@code weeds.csv}. Rows of the same field and weed add biotypes; density and driver stand
 * in the first of them and, where they stand again, must be the same.
 */
final class WeedsReader {
  static final Table TABLE =
      new Table(
          "weeds.csv",
          CsvColumns.required("field", "weed", "density", "driver")
              .andOptional("resistantSites", "resistantShare", "resistance", "note"));

  static final Map<String, DriverKind> DRIVERS = drivers();

  private record Key(FieldId field, WeedId weed) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key o && field.equals(o.field) && weed.equals(o.weed);
    }

    @Override
    public int hashCode() {
      return 31 * field.hashCode() + weed.hashCode();
    }
  }

  /** Rows of one field and weed so far. */
  private static final class Gathered {
    private final FieldId field;
    private final Weed weed;
    private final int line;
    private final double perM2;
    private final DriverKind driver;
    private final List<Biotype> biotypes = new ArrayList<>();
    private final List<Resistance> listed = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Gathered(FieldId field, Weed weed, int line, double perM2, DriverKind driver) {
      this.field = field;
      this.weed = weed;
      this.line = line;
      this.perM2 = perM2;
      this.driver = driver;
    }
  }

  private final FieldList fields;
  private final Problems problems;
  private final Column<FieldId> ids;
  private final Column<Weed> weeds;
  private final Column<Double> densities =
      Column.of("density", t -> Density.parse(t).perM2(), "80 /m2");
  private final Column<DriverKind> drivers =
      Column.of("driver", Names.word(DRIVERS, "answer here"), "yes");
  private final Column<Set<Site>> resistantSites =
      Column.of("resistantSites", ResistanceParser::sites, "2;9");
  private final Column<Double> resistantShares =
      Column.of("resistantShare", ResistanceParser::share, "90 %");
  private final Column<List<Resistance>> resistances;
  private final Map<Key, Gathered> gathered = new LinkedHashMap<>();

  WeedsReader(Names names, FieldList fields, Problems problems) {
    this.fields = fields;
    this.problems = problems;
    this.ids = Column.of("field", fields::parse, "ND-1");
    this.weeds = Column.of("weed", names::weed, "AMAPA");
    this.resistances =
        Column.of("resistance", new ResistanceParser(names)::entries, "9:85 % confirmed");
  }

  List<WeedPressure> read(Path book) {
    TABLE.read(book, problems, this::row);
    return gathered.values().stream()
        .map(
            g ->
                new WeedPressure(
                    g.field,
                    g.weed,
                    g.perM2,
                    g.driver,
                    Biotypes.withSusceptibleRest(g.biotypes),
                    g.listed,
                    String.join("; ", g.notes)))
        .toList();
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<FieldId> field = row.need(ids);
    Optional<Weed> weed = row.need(weeds);
    Gathered known =
        field.isPresent() && weed.isPresent()
            ? gathered.get(new Key(field.get(), weed.get().id()))
            : null;
    Optional<Double> perM2 = density(row, known);
    Optional<DriverKind> driver = driver(row, known);
    List<Resistance> listed = new ArrayList<>();
    List<Biotype> biotypes = biotypes(row, listed);
    field.flatMap(fields::find).ifPresent(f -> weed.ifPresent(w -> competes(row, w, f.crop())));
    if (!row.isSound()) {
      return;
    }
    Gathered to =
        gathered.computeIfAbsent(
            new Key(field.orElseThrow(), weed.orElseThrow().id()),
            k ->
                new Gathered(
                    k.field(),
                    weed.orElseThrow(),
                    row.line(),
                    perM2.orElseThrow(),
                    driver.orElseThrow()));
    List<Biotype> all = new ArrayList<>(to.biotypes);
    all.addAll(biotypes);
    if (Biotypes.sum(all) > 1) {
      row.problem(
          row.isBlank("resistance") ? "resistantShare" : "resistance",
          "the resistant plants of "
              + to.weed.id()
              + " in "
              + to.field
              + " add up to "
              + Numbers.decimals(100 * Biotypes.sum(all), 2)
              + " %",
          "write shares that add up to at most 100 % over all rows of the weed");
      return;
    }
    to.biotypes.addAll(biotypes);
    to.listed.addAll(listed);
    if (!row.isBlank("note")) {
      to.notes.add(row.text("note"));
    }
  }

  private Optional<Double> density(Row row, @Nullable Gathered known) {
    if (known != null && row.isBlank("density")) {
      return Optional.of(known.perM2);
    }
    Optional<Double> own = row.need(densities);
    if (known != null && own.isPresent() && own.get() != known.perM2) {
      row.problem(
          "density",
          "line " + known.line + " says another density of this weed in this field",
          "write the same density, or leave it blank here");
    }
    return own;
  }

  private Optional<DriverKind> driver(Row row, @Nullable Gathered known) {
    if (known != null && row.isBlank("driver")) {
      return Optional.of(known.driver);
    }
    Optional<DriverKind> own = row.need(drivers);
    if (known != null && own.isPresent() && own.get() != known.driver) {
      row.problem(
          "driver",
          "line " + known.line + " answers otherwise for this weed in this field",
          "write the same, or leave it blank here");
    }
    return own;
  }

  /** Biotypes of one row; adds what it lists. */
  private List<Biotype> biotypes(Row row, List<Resistance> listed) {
    Optional<Set<Site>> sites = row.find(resistantSites);
    Optional<Double> share = row.find(resistantShares);
    Optional<List<Resistance>> entries = row.find(resistances);
    if (!row.isBlank("resistance") && !row.isBlank("resistantSites")) {
      row.problem(
          "resistance",
          "the row fills both resistantSites and resistance",
          "write sites that go together in the one, independent entries in the other, in two rows");
      return List.of();
    }
    if (!row.isBlank("resistantShare") && row.isBlank("resistantSites")) {
      row.problem(
          "resistantShare",
          "a share without sites",
          "name the sites in resistantSites, as 2;9, or leave the share out");
      return List.of();
    }
    if (sites.isPresent()) {
      // An empty share means all of the weed's plants.
      double of = share.orElse(1.0);
      List<Resistance> all =
          sites.get().stream()
              .map(s -> new Resistance(Optional.of(s), Optional.empty(), of, ""))
              .toList();
      listed.addAll(all);
      return Biotypes.together(of, all);
    }
    entries.ifPresent(listed::addAll);
    return entries.map(Biotypes::independent).orElse(List.of());
  }

  private static void competes(Row row, Weed weed, CropId crop) {
    if (!weed.competition().containsKey(crop)) {
      row.problem(
          "weed",
          "the catalog does not say how much yield " + weed.id() + " takes from " + crop,
          "add '" + crop + "' under competition in its file of the book's catalog folder");
    }
  }

  private static Map<String, DriverKind> drivers() {
    Map<String, DriverKind> all = new LinkedHashMap<>();
    all.put("yes", DriverKind.YES);
    all.put("no", DriverKind.NO);
    all.put("zero", DriverKind.ZERO);
    return all;
  }
}
