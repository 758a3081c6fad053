package org.swathbook.cli.text;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.EntryLimit;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;

/** The notice by which people are kept out of a sprayed field. */
public final class NoticeText {
  private final Page page = new Page();

  private NoticeText() {}

  /**
   * @param rows of one pass, at least one
   */
  public static String of(Book book, ReportHead head, Field field, List<Application> rows) {
    NoticeText text = new NoticeText();
    Page page = text.page;
    page.apart("Swathbook · Entry notice", "today " + Figures.date(head.today()));
    page.line(head.book());
    page.blank();
    EntryLimit limit = EntryLimit.of(rows);
    text.until(limit);
    text.treated(book, field, rows);
    text.toFill();
    HeadText.foot(page, false);
    return page.toString();
  }

  private void until(EntryLimit limit) {
    page.line("KEEP OUT of this field");
    Optional<LocalDateTime> until = limit.until();
    page.wrapped(
        2,
        4,
        until
            .map(
                t ->
                    "until "
                        + Figures.date(t.toLocalDate())
                        + ", "
                        + t.toLocalTime()
                        + ": the longest re-entry interval of what was sprayed, "
                        + Numbers.decimals(limit.interval().hours().getAsDouble(), 1)
                        + " hours after the end.")
            .orElse("until the labels allow it: NOT KNOWN to the catalog."));
    if (until.isPresent() && !limit.endKnown()) {
      page.wrapped(
          2, 4, "The end of the spraying was not written down; counted from midnight after it.");
    }
    if (until.isPresent() && !limit.interval().unknown().isEmpty()) {
      page.wrapped(
          2,
          4,
          "NOT KNOWN to the catalog for "
              + Figures.list(limit.interval().unknown())
              + ", whose labels may ask for longer.");
    }
    page.wrapped(
        2,
        4,
        "Where the label in hand says longer, or both posted and spoken warning, the label holds.");
    page.blank();
  }

  private void treated(Book book, Field field, List<Application> rows) {
    Application first = rows.get(0);
    page.line("What was sprayed");
    page.wrapped(
        2,
        4,
        field.id()
            + ", "
            + field.name()
            + ", "
            + field.grower()
            + field.county().map(c -> ", " + c + " county").orElse("")
            + field.state().map(s -> ", " + s).orElse("")
            + "; "
            + (first.acres().isPresent()
                ? Numbers.grouped(first.acres().getAsDouble(), 2)
                : "acres not written down")
            + (first.acres().isPresent() ? " acres" : "")
            + "; "
            + book.catalog().findCrop(first.crop()).map(c -> c.name()).orElse("crop not written"));
    page.wrapped(
        2,
        4,
        Figures.date(first.date())
            + ", "
            + first.record().start().map(t -> "from " + t).orElse("start not written down")
            + ", "
            + first.record().end().map(t -> "to " + t).orElse("end not written down")
            + "; record "
            + first.pass());
    Table table = new Table(2, "llll");
    for (Application a : rows) {
      Dose d = a.dose();
      Rate rate = d.named() ? d.actives().get(0).rate() : d.rate();
      table.row(
          d.named() ? "(product not named)" : d.product().name(),
          "EPA " + (a.epaRegNo().isBlank() ? "____________" : a.epaRegNo()),
          Numbers.decimals(rate.amount(), 4) + " " + rate.unitText(),
          String.join(" + ", d.actives().stream().map(x -> x.ingredient().name()).toList()));
    }
    table.on(page);
    page.blank();
  }

  private void toFill() {
    page.line("To be filled in");
    for (String line :
        List.of(
            "Posted at, and when", "Workers told by", "Nearest medical facility", "Telephone")) {
      page.line("  " + line + " " + "_".repeat(Page.WIDTH - line.length() - 3));
    }
    page.wrapped(
        2,
        4,
        "Federal worker protection (40 CFR 170, from memory): posted at the central place within 24"
            + " hours of the end, with the safety data sheets, until 30 days after the interval.");
    page.blank();
  }
}
