package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.audit.FieldChange;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.WhatIfSaid;

/** The page of {@code audit --what-if}: changes side by side, then field by field. */
public final class WhatIfHtml {
  private final Book book;
  private final List<Block> blocks = new ArrayList<>();

  private WhatIfHtml(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, List<WhatIfResult> results) {
    WhatIfHtml html = new WhatIfHtml(book);
    html.summary(results);
    for (int i = 0; i < results.size(); i++) {
      html.change(results.get(i), "/whatIf/" + i);
    }
    html.blocks.add(new Block.Heading("How to read the figures"));
    WhatIfSaid.READING.forEach(r -> html.line("small", Marked.plain(r)));
    return Pages.fill(
        "blocks.jte", new BlockPage(SheetHead.of(WhatIfSaid.TITLE, head), html.blocks));
  }

  private void line(String css, Marked words) {
    blocks.add(new Block.Line(css, words));
  }

  private void summary(List<WhatIfResult> results) {
    List<List<Marked>> rows = new ArrayList<>();
    for (WhatIfResult r : results) {
      List<String> row = WhatIfSaid.summary(r);
      String at = "/whatIf/" + rows.size() + "/";
      boolean any = r.count(Outcome.IMPROVED) > 0;
      rows.add(
          List.of(
              Marked.of(row.get(0), at + "change"),
              Marked.of(row.get(1), at + "fieldsImproved"),
              Marked.of(row.get(2), at + "acresImproved:1"),
              Marked.of(row.get(3), any ? at + "costPerAcreImproved" : ""),
              Marked.of(row.get(4), any ? at + "cost" : ""),
              Marked.of(row.get(5), at + "fieldsNoBetter"),
              Marked.of(row.get(6), at + "fieldsForbidden"),
              Marked.of(row.get(7), at + "fieldsNotNeeded")));
    }
    blocks.add(new Block.Grid(WhatIfSaid.SUMMARY_HEAD, rows));
    WhatIfSaid.best(results).ifPresent(b -> line("", Marked.plain(b)));
  }

  private void change(WhatIfResult result, String at) {
    blocks.add(new Block.Heading(WhatIfSaid.heading(result)));
    for (int i = 0; i < result.fields().size(); i++) {
      field(result.fields().get(i), at + "/fields/" + i);
    }
  }

  private void field(FieldChange f, String at) {
    String words = WhatIfSaid.field(book, f);
    line(
        "lead",
        Marked.of(
            words,
            at + "/field",
            "-",
            f.season() == 0 ? "" : at + "/season",
            f.costPerAcre().isPresent() ? at + "/costPerAcre " + at + "/cost" : ""));
    for (int i = 0; i < f.changes().size(); i++) {
      line("small in2", Marked.of(f.changes().get(i), at + "/changes/" + i));
    }
    for (int i = 0; i < f.why().size(); i++) {
      line("small in2", Marked.of(f.why().get(i), at + "/why/" + i));
    }
    if (!f.weeds().isEmpty()) {
      List<List<String>> rows = WhatIfSaid.weeds(f);
      List<List<Marked>> marked = new ArrayList<>();
      for (int w = 0; w < rows.size(); w++) {
        String weed = at + "/weeds/" + w;
        marked.add(
            List.of(
                Marked.plain(rows.get(w).get(0)),
                both(rows.get(w).get(1), weed, "metFewerThanTwoPct"),
                both(rows.get(w).get(2), weed, "controlPct"),
                both(rows.get(w).get(3), weed, "controlPctWithoutWeakest")));
      }
      blocks.add(new Block.Grid(WhatIfSaid.WEED_HEAD, marked));
    }
    WhatIfSaid.notKnown(f).ifPresent(n -> line("small in2", Marked.plain(n)));
  }

  private static Marked both(String words, String weed, String key) {
    return Marked.of(words, weed + "/before/" + key + ":0", weed + "/after/" + key + ":0");
  }
}
