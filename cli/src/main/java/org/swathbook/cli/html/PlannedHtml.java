package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.audit.PassMatch;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.PlannedWords;

/** The page of {@code audit --planned}: a program beside the journal of its season. */
public final class PlannedHtml {
  private static final String AT = "/planned";

  private final List<Block> blocks = new ArrayList<>();

  private PlannedHtml() {}

  public static String of(Book book, ReportHead head, PlannedAndApplied compared) {
    PlannedHtml html = new PlannedHtml();
    html.line(
        "lead",
        Marked.of(
            PlannedWords.heading(book, compared), AT + "/field", AT + "/program", AT + "/season"));
    html.passes(compared.passes());
    html.accounts(compared.accounts());
    List<String> seen = PlannedWords.seen(compared);
    for (int i = 0; i < seen.size(); i++) {
      String one = AT + "/seen/" + i;
      html.line(
          "",
          compared.seen().isEmpty()
              ? Marked.plain(seen.get(i))
              : Marked.of(seen.get(i), one + "/date", one + "/plantsPerAcre"));
    }
    for (int i = 0; i < compared.notes().size(); i++) {
      html.line("small", Marked.of(compared.notes().get(i), AT + "/remarks/" + i));
    }
    html.blocks.add(new Block.Heading("How to read the figures"));
    PlannedWords.READING.forEach(r -> html.line("small", Marked.plain(r)));
    return Pages.fill(
        "blocks.jte", new BlockPage(SheetHead.of(PlannedWords.TITLE, head), html.blocks));
  }

  private void line(String css, Marked words) {
    blocks.add(new Block.Line(css, words));
  }

  private void passes(List<PassMatch> passes) {
    blocks.add(new Block.Heading("Pass by pass"));
    for (int i = 0; i < passes.size(); i++) {
      PassMatch p = passes.get(i);
      String at = AT + "/passes/" + i;
      line(
          "lead",
          Marked.of(
              PlannedWords.pass(p),
              p.application().isPresent() ? at + "/application" : "",
              PlannedWords.isOff(p) ? (p.days() < 0 ? "-" : at + "/daysLate") : "",
              p.planned().isPresent() ? at + "/due" : "",
              p.made().isPresent() ? at + "/made" : ""));
      PlannedWords.otherwise(p).forEach(l -> line("small in2", Marked.plain(l)));
    }
  }

  private void accounts(List<Account> accounts) {
    blocks.add(new Block.Heading("What was promised, and what came of it"));
    List<List<String>> rows = PlannedWords.accounts(accounts);
    List<List<Marked>> marked = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      List<Marked> row = new ArrayList<>(List.of(Marked.plain(rows.get(r).get(0))));
      for (int a = 0; a < accounts.size(); a++) {
        row.add(
            rows.get(r).get(a + 1).equals("?")
                ? Marked.plain("?")
                : Marked.of(rows.get(r).get(a + 1), AT + "/accounts/" + a + key(r)));
      }
      marked.add(row);
    }
    blocks.add(new Block.Grid(PlannedWords.accountHead(accounts), marked));
  }

  /** Of the rows of {@link PlannedWords#accounts}. */
  private static String key(int row) {
    List<String> first = List.of("/years", "/costPerAcre", "/netPerAcre");
    if (row < first.size()) {
      return first.get(row);
    }
    List<String> weed = List.of("controlPct:0", "metFewerThanTwoPct:0", "survivorsPerAcre");
    int at = row - first.size();
    return "/weeds/" + at / weed.size() + "/" + weed.get(at % weed.size());
  }
}
