package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.WatchFile;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.EscapesWords;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.WeedReading;

/** The page of {@code escapes}: what to do first, then what was seen and what may still go on. */
public final class EscapesHtml {
  private static final double WIDE = 760;
  private static final double NARROW = 368;
  private static final double ROW = 40;
  private static final double BAR = 14;

  private final EscapesWords words;
  private final List<Block> blocks = new ArrayList<>();

  private EscapesHtml(Book book, EscapeReport report) {
    this.words = new EscapesWords(book, report);
  }

  /**
   * @param watch rows that a suspicion is worth in watch.csv
   */
  public static String of(
      Book book, ReportHead head, Field field, EscapeReport report, List<WatchFile.Entry> watch) {
    EscapesHtml html = new EscapesHtml(book, report);
    html.line("", ProgramWords.fieldLine(book, field));
    html.words.sprayed().forEach(l -> html.line("small", l));
    html.line("stop big", html.words.action());
    html.why();
    html.picture(report);
    for (WeedReading w : report.weeds()) {
      html.heading(html.words.name(w));
      html.words.reading(w).forEach(l -> html.line("", l));
      List<String> suspicion = html.words.suspicion(w);
      html.line("lead", suspicion.get(0));
      suspicion.stream().skip(1).forEach(l -> html.line("small", l));
    }
    html.heading("What the survivors cost when nothing more is done");
    html.words.cost().forEach(l -> html.line("", l));
    html.respray(report);
    html.list("Not offered, and why", html.words.refused());
    html.list("Without a sprayer", report.beside());
    html.list("For watch.csv; --watch adds it", EscapesWords.watch(watch));
    return Pages.fill(
        "blocks.jte",
        new BlockPage(SheetHead.of("After a pass, " + field.id(), head), html.blocks));
  }

  /** Reasons, and what to look for again, each below its line that ends in a colon. */
  private void why() {
    for (String l : words.why()) {
      line(l.endsWith(":") ? "" : "item", l);
    }
  }

  private void line(String css, String what) {
    blocks.add(new Block.Line(css, what));
  }

  private void heading(String what) {
    blocks.add(new Block.Heading(what));
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      heading(title);
      lines.forEach(l -> line("fact", l));
    }
  }

  private void respray(EscapeReport report) {
    if (report.respray().isEmpty()) {
      return;
    }
    heading(words.resprayTitle());
    blocks.add(
        Block.Grid.plain(
            List.of(
                "product",
                "site",
                "days",
                "weeds tall, in",
                "control %",
                "cost, $/acre",
                "saves, $/acre"),
            words.resprayInOneRow()));
    words
        .resprayNotes()
        .forEach(l -> line(l.startsWith(EscapesWords.LABEL_HEIGHT) ? "law" : "small", l));
  }

  private void picture(EscapeReport report) {
    if (!report.weeds().isEmpty()) {
      blocks.add(
          new Block.Picture(
              drawn(report, WIDE),
              drawn(report, NARROW),
              "Plants looked at: full bars are dead or dying, striped undecided, hollow ones living"
                  + " on or untouched; the thin line below is the 95 % interval of the share"
                  + " controlled, for plants picked at random."));
    }
  }

  private Drawing drawn(EscapeReport report, double width) {
    Drawing.Pen pen = new Drawing.Pen();
    double y = 2;
    for (int i = 0; i < report.weeds().size(); i++) {
      WeedReading w = report.weeds().get(i);
      String at = "/weeds/" + i + "/reading/";
      int gone = w.dead() + w.dying();
      int alive = w.recovering() + w.missed();
      double all = Math.max(1, gone + w.undecided() + alive);
      pen.label(0, y + 10, "start", "weed", words.name(w));
      double top = y + 15;
      double x = 0;
      x =
          part(
              pen,
              x,
              top,
              width * gone / all,
              "open",
              of(gone + " dead or dying", at, "dead", "dying"));
      x =
          part(
              pen,
              x,
              top,
              width * w.undecided() / all,
              "layer1",
              of(w.undecided() + " undecided", at, "undecided"));
      part(
          pen,
          x,
          top,
          width * alive / all,
          "gap",
          of(alive + " alive", at, "recovering", "missed"));
      pen.line(
          width * w.controlled().low(),
          top + BAR + 4,
          width * w.controlled().high(),
          top + BAR + 4,
          "tick");
      y += ROW + 6;
    }
    return pen.drawing(
        "Plants dead or dying, undecided and alive by weed; the same figures stand below.",
        width,
        y);
  }

  private static Marked of(String words, String at, String... keys) {
    return Marked.of(words, at + String.join("+" + at, keys));
  }

  private static double part(
      Drawing.Pen pen, double x, double y, double width, String css, Marked says) {
    if (width <= 0) {
      return x;
    }
    pen.box(x, y, width, BAR, css, says);
    if (width > says.words().length() * 6) {
      pen.label(x + width / 2, y + 10.5, "middle", "size", says);
    }
    return x + width;
  }
}
