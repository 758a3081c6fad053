package org.swathbook.book.file;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.source.Texts;

/** The columns product, rate and unit of a journal as a dose; equal cells share one. */
final class DoseCells {
  private record Cells(String product, String rate, String unit) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Cells o
          && product.equals(o.product)
          && rate.equals(o.rate)
          && unit.equals(o.unit);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * product.hashCode() + rate.hashCode()) + unit.hashCode();
    }
  }

  private final DoseParser parser;
  private final Column<String> products = Column.ofText("product");
  private final Column<String> rates = Column.ofText("rate");
  private final Column<String> units = Column.ofText("unit");

  /** Never empty ones. */
  private final Map<Cells, Optional<Dose>> known = new HashMap<>();

  DoseCells(DoseParser parser) {
    this.parser = parser;
  }

  Optional<Dose> read(Row row) {
    Cells cells = new Cells(row.text(products), row.text(rates), row.text(units));
    Optional<Dose> dose = known.get(cells);
    if (dose == null) {
      dose = make(row, cells);
      if (dose.isPresent()) {
        known.put(cells, dose);
      }
    }
    return dose;
  }

  private Optional<Dose> make(Row row, Cells cells) {
    Optional<String> product = row.need("product", parser::known, "glyphosate");
    Optional<Double> amount = row.need("rate", DoseCells::amount, "1.13");
    Optional<Rate> rate =
        row.need(
            "unit",
            t -> Rate.parse(amount.isPresent() ? cells.rate() + " " + t : "1 " + t),
            "lb ae/acre");
    if (product.isEmpty() || amount.isEmpty() || rate.isEmpty()) {
      return Optional.empty();
    }
    return row.find("unit", t -> parser.dose(cells.product(), rate.get()), "lb ae/acre");
  }

  private static double amount(String text) {
    double amount = Texts.number(text);
    if (!(amount > 0)) {
      throw new MeasureException(
          "'"
              + text
              + "' is no rate; write what was sprayed, or 0 only to void the row that"
              + " 'corrects' names");
    }
    return amount;
  }
}
