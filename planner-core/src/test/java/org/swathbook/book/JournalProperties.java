package org.swathbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.FieldId;
import org.swathbook.testing.Fixtures;

/** The journal has of a field what its rows have of it, in order, however the rows stand. */
class JournalProperties {
  private static final Dose DOSE = dose();

  private static Dose dose() {
    Catalog catalog = Fixtures.catalog();
    Ingredient atrazine = catalog.findIngredient("atrazine").orElseThrow();
    return Doses.ofIngredient(
        atrazine, catalog.singles(atrazine.id()).get(0), Rate.lbPerAcre(1.0, atrazine.rateBasis()));
  }

  private static final Comparator<Application> IN_ORDER =
      Comparator.comparing(Application::date)
          .thenComparing(Application::pass)
          .thenComparingInt(a -> Integer.parseInt(a.line()));

  /**
   * @param stretch rows of a field mostly stand together in so many
   * @param sorted whether every stretch stands in order already
   */
  @Property(tries = 200)
  void rowsOfAFieldAreFoundInOrder(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 6) int fields,
      @ForAll @IntRange(min = 1, max = 40) int stretch,
      @ForAll boolean sorted) {
    Random random = new Random(seed);
    List<Application> rows = new ArrayList<>();
    int passes = 0;
    while (rows.size() < 120) {
      FieldId field = new FieldId("F-" + random.nextInt(fields));
      List<Application> together = new ArrayList<>();
      while (together.size() < stretch) {
        LocalDate date = LocalDate.of(2020, 4, 1).plusDays(random.nextInt(400));
        String pass = "A-" + (100 + passes++);
        for (int line = 1 + random.nextInt(12); line > 0; line--) {
          together.add(row(pass, line, date, field));
        }
      }
      if (sorted) {
        together.sort(IN_ORDER);
      }
      rows.addAll(together);
    }
    Journal journal = new Journal(rows);
    for (int f = 0; f <= fields; f++) {
      FieldId field = new FieldId("F-" + f);
      List<Application> its =
          rows.stream().filter(r -> r.field().equals(field)).sorted(IN_ORDER).toList();
      assertThat(journal.of(field)).isEqualTo(its);
      assertThat(journal.only(field).applications()).isEqualTo(its);
    }
    assertThat(journal.applications()).isEqualTo(rows.stream().sorted(IN_ORDER).toList());
  }

  private static Application row(String pass, int line, LocalDate date, FieldId field) {
    return new Application(
        pass,
        Integer.toString(line),
        date,
        field,
        date.getYear(),
        OptionalDouble.empty(),
        DOSE,
        "",
        "corn",
        "",
        SprayRecord.EMPTY,
        "");
  }
}
