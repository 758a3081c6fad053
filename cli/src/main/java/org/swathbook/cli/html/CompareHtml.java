package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.CompareWords;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.rules.Finding;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** The page of {@code plan --compare}: programs side by side, and what each gives up. */
public final class CompareHtml {
  private static final String AT = "/fields/0/compare/";

  private final Book book;
  private final ComparedField compared;
  private final CompareWords words;
  private final List<Block> blocks = new ArrayList<>();

  private CompareHtml(Book book, ComparedField compared) {
    this.book = book;
    this.compared = compared;
    this.words = new CompareWords(book, compared);
  }

  public static String of(Book book, ReportHead head, ComparedField compared) {
    CompareHtml html = new CompareHtml(book, compared);
    html.field();
    html.blocks.add(new Block.Heading("Side by side"));
    html.table();
    html.against();
    html.programs();
    html.blocked();
    html.line(
        "small",
        Marked.plain(
            "Warnings and what is still to be looked up stand in the full report of a program:"
                + " swathbook season PROGRAM."));
    return Pages.fill(
        "blocks.jte",
        new BlockPage(
            SheetHead.of(
                compared.programs().size() + " programs of " + compared.field().id() + ", compared",
                head),
            html.blocks));
  }

  private void line(String css, Marked words) {
    blocks.add(new Block.Line(css, words));
  }

  private void field() {
    Field field = compared.field();
    line("lead", Marked.plain(ProgramWords.fieldLine(book, field)));
    ProgramWords.facts(book, field).forEach(l -> line("fact", Marked.plain(l)));
    blocks.add(
        Block.Grid.plain(
            List.of("weed", "code", "density", "kind", "resistance"),
            ProgramWords.weedsOf(book, field)));
    ProgramWords.weedNotes(book, field).forEach(n -> line("fact", Marked.plain(n)));
    compared.notes().forEach(n -> line("", Marked.plain(n)));
  }

  private static SeasonOutcome outcome(ComparedProgram p) {
    return p.judged().outcome();
  }

  private void table() {
    List<List<String>> rows = words.rows();
    List<List<Marked>> out = new ArrayList<>();
    List<List<String>> marks = marks();
    for (int r = 1; r < rows.size(); r++) {
      List<String> row = rows.get(r);
      List<Marked> cells = new ArrayList<>();
      cells.add(Marked.plain(row.get(0).strip()));
      for (int i = 1; i < row.size(); i++) {
        cells.add(Marked.of(row.get(i), marks.get(r - 1).get(i - 1)));
      }
      out.add(cells);
    }
    List<String> names = new ArrayList<>(rows.get(0));
    names.set(0, "");
    blocks.add(new Block.Grid(names, out));
  }

  /** Where the figures of each row stand in the document, program by program. */
  private List<List<String>> marks() {
    List<List<String>> out = new ArrayList<>();
    for (int i = 0; i < compared.programs().size(); i++) {
      List<String> column = column(compared.programs().get(i), AT + i + "/");
      for (int r = 0; r < column.size(); r++) {
        if (i == 0) {
          out.add(new ArrayList<>());
        }
        out.get(r).add(column.get(r));
      }
    }
    return out;
  }

  private List<String> column(ComparedProgram p, String at) {
    List<String> out = new ArrayList<>();
    SeasonOutcome o = outcome(p);
    out.add(o.cost().isPresent() ? at + "costPerAcre" : "");
    out.add(at + "lossPerAcre " + at + "worstYearLossPerAcre");
    out.add(
        (o.net().isPresent() ? at + "netPerAcre " : "")
            + (p.judged().worstYearNet().isPresent() ? at + "worstYearNetPerAcre" : ""));
    for (WeedOutcome first : words.weeds()) {
      WeedOutcome w = o.weed(first.pressure().weed().id());
      String c = "/" + w.pressure().weed().id().value();
      out.add("");
      out.add(at + "controlPct" + c + " " + at + "worstYearControlPct" + c);
      out.add(
          at
              + "survivorsPerAcre"
              + c
              + "/beforeNeededUntil "
              + at
              + "survivorsPerAcre"
              + c
              + "/all");
      out.add(at + "exposedEmergencePct" + c);
      out.add(
          w.weakestSite().isEmpty()
              ? ""
              : at
                  + "weakestSite"
                  + c
                  + "/site "
                  + at
                  + "weakestSite"
                  + c
                  + "/controlPctWithoutIt");
      out.add(sites(o, w, at, true));
      out.add(sites(o, w, at, false));
    }
    out.add(at + "windowConfidencePct:1");
    out.add(at + "breaksHouseRules");
    out.add("-");
    out.add(at + "verdict");
    return out;
  }

  private static String sites(SeasonOutcome o, WeedOutcome w, String at, boolean foliar) {
    List<String> out = new ArrayList<>();
    for (PassOutcome pass : o.passes()) {
      for (PassWeed met : pass.weeds()) {
        if (met.weed().equals(w.pressure().weed().id()) && (!foliar || met.stands())) {
          out.add(
              at
                  + "passes/"
                  + pass.index()
                  + (foliar ? "/foliarSites/" : "/soilSites/")
                  + met.weed().value());
        }
      }
    }
    return String.join(" ", out);
  }

  private void against() {
    for (int i = 1; i < compared.programs().size(); i++) {
      ComparedProgram p = compared.programs().get(i);
      blocks.add(new Block.Heading(words.head(i) + " against " + words.head(0)));
      if (p.against().isNothing()) {
        line("", Marked.plain("No difference in any of these figures."));
      } else {
        said("It gives up: ", p.against().givesUp(), AT + i + "/givesUp");
        said("It gains: ", p.against().gains(), AT + i + "/gains");
      }
    }
  }

  private void said(String what, List<String> parts, String at) {
    line(
        "",
        parts.isEmpty()
            ? Marked.plain(what + "nothing")
            : Marked.of(what + String.join("; ", parts), at));
  }

  private void programs() {
    blocks.add(new Block.Heading("The programs"));
    for (int i = 0; i < compared.programs().size(); i++) {
      ComparedProgram p = compared.programs().get(i);
      ProgramWords program =
          new ProgramWords(book, compared.field(), outcome(p), p.judged().judgement());
      String name = outcome(p).program().name();
      line(
          "lead",
          Marked.plain((i + 1) + " " + p.asked() + (name.equals(p.asked()) ? "" : ": " + name)));
      blocks.add(
          new Block.Grid(
              List.of("from", "actives"),
              new ProgramMarks(book, outcome(p), program, AT + i, "/fields/0").passRows()));
      p.notes().forEach(n -> line("fact", Marked.plain(n)));
      line("fact", Marked.plain("It " + program.houseRules() + "."));
    }
  }

  private void blocked() {
    for (int i = 0; i < compared.programs().size(); i++) {
      List<Finding> findings = CompareWords.blocks(compared.programs().get(i));
      if (!findings.isEmpty()) {
        blocks.add(new Block.Heading("What blocks " + words.head(i)));
        blocks.add(new Block.Findings(new FindingText(book.catalog()).said(findings)));
      }
    }
  }
}
