package org.swathbook.cli.text;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.swathbook.audit.PassMatch;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.audit.PlannedAndApplied.Seen;
import org.swathbook.audit.PlannedAndApplied.Stand;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Say;

/** A program beside the journal of its season. */
public final class PlannedText {
  private static final String[] READING = {
    "A pass is due on the first day fit for spraying at or after its time, in the weather of that"
        + " season; the house's queue of days later or earlier is on time. It is looked for among"
        + " passes of the journal within a month of that day that share an active with it. Rates"
        + " within 5 % are the same.",
    "Promised: the mean of the weather years before the season, every pass as planned. As planned,"
        + " in its weather: the same passes in the weather that came. As sprayed: the passes of the"
        + " journal on their days. So the first two differ by weather, the last two by what was"
        + " done otherwise.",
    "Met <2: share of the emergence that met fewer than two effective sites. Alive: plants of all"
        + " emergence at harvest, by the model. Costs and net go by the book's prices of today.",
  };

  private final Book book;
  private final Page page = new Page();

  private PlannedText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, PlannedAndApplied compared) {
    PlannedText text = new PlannedText(book);
    HeadText.on(text.page, "Planned and applied", head);
    text.body(compared);
    text.page.rule('=');
    text.page.line("How to read the figures");
    for (String line : READING) {
      text.page.wrapped(2, 4, line);
    }
    text.page.blank();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void body(PlannedAndApplied c) {
    page.wrapped(
        0,
        2,
        c.field().id()
            + ", "
            + c.field().name()
            + ", "
            + book.catalog().crop(c.field().crop()).name()
            + " of "
            + c.season()
            + ": "
            + c.program().name());
    page.blank();
    c.passes().forEach(this::pass);
    page.blank();
    accounts(c.accounts());
    for (Seen s : c.seen()) {
      page.wrapped(
          0,
          2,
          "Counted on "
              + Figures.date(s.date())
              + ": "
              + Figures.count(s.perAcre())
              + " plants/acre of "
              + s.weed().weed().name()
              + ".");
    }
    if (c.seen().isEmpty()) {
      page.wrapped(
          0, 2, "Nobody counted a driver weed after the last pass, or scouting.csv does not tell.");
    }
    c.notes().forEach(n -> page.wrapped(0, 2, n));
    page.blank();
  }

  private void pass(PassMatch p) {
    StringBuilder line = new StringBuilder(p.fate().word().toUpperCase(Locale.ROOT));
    if (p.fate() == PassMatch.Fate.LATE || p.fate() == PassMatch.Fate.EARLY) {
      line.append(' ').append(Say.days(Math.abs(p.days())));
    }
    p.planned().ifPresent(d -> line.append(", due ").append(Figures.date(d)));
    p.made()
        .ifPresent(
            d ->
                line.append(", made ")
                    .append(Figures.date(d))
                    .append(" (")
                    .append(p.application().orElseThrow())
                    .append(")"));
    page.wrapped(0, 2, line.toString());
    said("left out", p.leftOut());
    said("added", p.added());
    p.rates().forEach(r -> page.wrapped(4, 6, r));
  }

  private void said(String what, List<String> actives) {
    if (!actives.isEmpty()) {
      page.wrapped(4, 6, what + ": " + String.join(", ", actives));
    }
  }

  private void accounts(List<Account> accounts) {
    Table table = new Table(0, "l" + "r".repeat(accounts.size()));
    row(table, "", accounts, a -> a.kind().words());
    row(table, "weather years", accounts, a -> Integer.toString(a.years()));
    row(table, "cost, $/acre", accounts, a -> a.cost().map(Figures::money).orElse("?"));
    row(table, "net, $/acre", accounts, a -> a.net().map(Figures::money).orElse("?"));
    for (int w = 0; w < accounts.get(0).weeds().size(); w++) {
      String weed = accounts.get(0).weeds().get(w).weed().weed().name();
      weed(table, weed + ", control %", accounts, w, Stand::controlPct);
      weed(table, weed + ", met <2 %", accounts, w, Stand::metFewerThanTwoPct);
      int at = w;
      row(
          table,
          weed + ", alive/acre",
          accounts,
          a -> Figures.count(a.weeds().get(at).survivorsPerAcre()));
    }
    table.on(page);
    page.blank();
  }

  private static void weed(
      Table table, String name, List<Account> accounts, int at, ToDoubleFunction<Stand> of) {
    row(table, name, accounts, a -> Numbers.decimals(of.applyAsDouble(a.weeds().get(at)), 0));
  }

  private static void row(
      Table table,
      String name,
      List<Account> accounts,
      java.util.function.Function<Account, String> cell) {
    String[] cells = new String[accounts.size() + 1];
    cells[0] = name;
    for (int i = 0; i < accounts.size(); i++) {
      cells[i + 1] = cell.apply(accounts.get(i));
    }
    table.row(cells);
  }
}
