package org.swathbook.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.book.Application;
import org.swathbook.book.Field;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.testing.Fixtures;

/** Short journal rows: {@code row("2026-05-01", "atrazine", 1.0)} on an 80-acre field of corn. */
final class JournalRows {
  static final Catalog CATALOG = Fixtures.catalog();
  static final Field FIELD = Fixtures.field("ND-2");

  private JournalRows() {}

  static Dose dose(String active, double lbPerAcre) {
    Ingredient i = CATALOG.findIngredient(active).orElseThrow();
    return Doses.ofIngredient(
        i, CATALOG.singles(i.id()).get(0), Rate.lbPerAcre(lbPerAcre, i.rateBasis()));
  }

  static Application row(String date, String active, double lbPerAcre) {
    return row(date, active, lbPerAcre, "V4", FIELD.acres());
  }

  static Application row(String date, String active, double lbPerAcre, String stage, double acres) {
    return row("P-" + date, date, active, lbPerAcre, stage, OptionalDouble.of(acres));
  }

  static Application row(
      String pass,
      String date,
      String active,
      double lbPerAcre,
      String stage,
      OptionalDouble acres) {
    LocalDate day = LocalDate.parse(date);
    return new Application(
        pass,
        "1",
        day,
        FIELD.id(),
        day.getMonthValue() > 10 ? day.getYear() + 1 : day.getYear(),
        acres,
        dose(active, lbPerAcre),
        "",
        "corn",
        stage,
        SprayRecord.EMPTY,
        "");
  }

  static Ledger ledger(Application... rows) {
    return Ledger.of(CATALOG, FIELD, 2027, List.of(rows), List.of());
  }
}
