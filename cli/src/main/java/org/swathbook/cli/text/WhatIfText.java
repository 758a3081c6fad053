package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.audit.FieldChange;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;

/** What changes of the last season's passes would have done, field by field. */
public final class WhatIfText {
  private final Book book;
  private final Page page = new Page();

  private WhatIfText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, List<WhatIfResult> results) {
    WhatIfText text = new WhatIfText(book);
    HeadText.on(text.page, WhatIfSaid.TITLE, head);
    text.summary(results);
    results.forEach(text::change);
    text.page.rule('=');
    text.page.line("How to read the figures");
    for (String line : WhatIfSaid.READING) {
      text.page.wrapped(2, 4, line);
    }
    text.page.blank();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void summary(List<WhatIfResult> results) {
    Table table = new Table(0, "lrrrrrrr");
    table.row(WhatIfSaid.SUMMARY_HEAD);
    results.forEach(r -> table.row(WhatIfSaid.summary(r)));
    table.on(page);
    WhatIfSaid.best(results).ifPresent(b -> page.wrapped(0, 2, b));
    page.blank();
  }

  private void change(WhatIfResult result) {
    page.rule('=');
    page.wrapped(0, 2, WhatIfSaid.heading(result));
    page.blank();
    result.fields().forEach(this::field);
    page.blank();
  }

  private void field(FieldChange f) {
    page.wrapped(0, 2, WhatIfSaid.field(book, f));
    f.changes().forEach(c -> page.wrapped(4, 6, c));
    f.why().forEach(w -> page.wrapped(4, 6, w));
    if (!f.weeds().isEmpty()) {
      Table table = new Table(4, "lrrr");
      table.row(WhatIfSaid.WEED_HEAD);
      WhatIfSaid.weeds(f).forEach(table::row);
      table.on(page);
    }
    WhatIfSaid.notKnown(f).ifPresent(n -> page.wrapped(4, 6, n));
  }
}
