package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.book.Field;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.source.CsvText;

/**
 * The journal as somebody asks for it who has no book: rows after corrections, a line a product,
 * with whose field it is, where it lies, what is in the product, how much went out in all, and what
 * the federal record of restricted use still lacks.
 */
public final class JournalTable {
  private JournalTable() {}

  /** CSV with a header; lines end in CR and LF, as RFC 4180 has it. */
  public static String csv(Book book, List<Application> rows) {
    Map<String, EntryLimit> limits = new LinkedHashMap<>();
    rows.stream()
        .collect(Collectors.groupingBy(Application::pass, LinkedHashMap::new, Collectors.toList()))
        .forEach((id, pass) -> limits.put(id, EntryLimit.of(pass)));
    StringBuilder out = new StringBuilder();
    if (rows.isEmpty()) {
      return "";
    }
    for (Application row : rows) {
      EntryLimit limit = limits.get(row.pass());
      Map<String, String> cells =
          cells(book, row, limit == null ? EntryLimit.of(List.of(row)) : limit);
      if (out.isEmpty()) {
        out.append(CsvText.row(new ArrayList<>(cells.keySet()))).append("\r\n");
      }
      out.append(CsvText.row(new ArrayList<>(cells.values()))).append("\r\n");
    }
    return out.toString();
  }

  private static Map<String, String> cells(Book book, Application a, EntryLimit limit) {
    Field f = book.findField(a.field().value()).orElseThrow();
    Dose d = a.dose();
    Rate rate = d.named() ? d.actives().get(0).rate() : d.rate();
    Optional<Quantity> total = RecordedPass.total(a);
    Map<String, String> c = new LinkedHashMap<>();
    c.put("id", a.pass());
    c.put("line", a.line());
    c.put("customer", f.grower());
    c.put("field", f.id().value());
    c.put("fieldName", f.name());
    c.put("county", f.county().orElse(""));
    c.put("state", f.state().orElse(""));
    c.put("lat", number(f.latitude(), 6));
    c.put("lon", number(f.longitude(), 6));
    c.put("date", a.date().toString());
    c.put("startTime", a.record().start().map(Object::toString).orElse(""));
    c.put("endTime", a.record().end().map(Object::toString).orElse(""));
    c.put("crop", a.crop());
    c.put("cropStage", a.position());
    c.put("target", a.record().target());
    c.put("acres", number(a.acres(), 2));
    c.put("product", d.named() ? "" : d.product().name());
    c.put("epaRegNo", a.epaRegNo());
    c.put(
        "ingredients",
        d.actives().stream().map(x -> x.ingredient().name()).collect(Collectors.joining("; ")));
    c.put("restrictedUse", restricted(a));
    c.put("rate", Numbers.decimals(rate.amount(), 4));
    c.put("unit", rate.unitText());
    c.put("total", total.map(q -> Numbers.decimals(q.value(), 3)).orElse(""));
    c.put("totalUnit", total.map(q -> q.unit().symbol()).orElse(""));
    c.put("applicator", a.record().applicator());
    c.put("certNo", a.record().certNo());
    c.put("windMph", number(a.record().windMph(), 1));
    c.put("windFrom", a.record().windFrom());
    c.put("tempF", number(a.record().tempF(), 1));
    c.put("reentryHours", number(limit.interval().hours(), 1));
    c.put("reentryUnknownFor", String.join("; ", limit.interval().unknown()));
    c.put("noEntryBefore", limit.until().map(Object::toString).orElse(""));
    c.put("mix", a.record().mix());
    c.put("note", a.note());
    c.put("lacking", String.join("; ", FederalRecord.of(f, a.date(), List.of(a)).missing()));
    return c;
  }

  private static String restricted(Application a) {
    if (!FederalRecord.restricted(a).isEmpty()) {
      return "yes";
    }
    return a.dose().actives().stream()
            .map(ActiveDose::ingredient)
            .anyMatch(i -> i.terms().restrictedUse().isUnknown())
        ? "not known"
        : "no";
  }

  private static String number(OptionalDouble value, int decimals) {
    return value.isPresent() ? Numbers.decimals(value.getAsDouble(), decimals) : "";
  }
}
