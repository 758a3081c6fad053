package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MendedMix;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.report.ProgramLedger;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.CheckText;
import org.swathbook.cli.text.CheckWords;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.LedgerWords;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.program.Mix;
import org.swathbook.rules.Severity;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.season.outcome.SeasonOutcome;

/** The page of {@code check}: the verdict first, then what it is about. */
public final class CheckHtml {
  private static final List<String> MIX = List.of("product", "rate", "active", "site of action");

  private final Book book;
  private final List<Block> blocks = new ArrayList<>();

  private CheckHtml(Book book) {
    this.book = book;
  }

  /** One tank, and a mended one where something better was found. */
  public static String of(
      Book book,
      ReportHead head,
      Field field,
      JudgedMix judged,
      Optional<MendedMix> mended,
      Optional<OpenHours> open) {
    CheckHtml html = new CheckHtml(book);
    html.line("", CheckText.jobLine(book, field, judged.job()));
    html.line("", "In the tank: " + ProgramWords.products(judged.job().mix()));
    html.verdict(judged.judgement());
    html.blocks.add(new Block.Heading("What was judged"));
    html.mix(judged.job().mix());
    CheckWords.how(book, judged).forEach(l -> html.line("small", l));
    CheckWords.waiting(judged.judgement()).ifPresent(l -> html.line("stop", l));
    open.ifPresent(html::open);
    mended.ifPresent(html::mended);
    return html.page("Check of one tank, " + field.id(), head);
  }

  /** A whole program. */
  public static String ofProgram(
      Book book, ReportHead head, Field field, SeasonOutcome outcome, Judgement judgement) {
    CheckHtml html = new CheckHtml(book);
    ProgramWords words = new ProgramWords(book, field, outcome, judgement);
    html.line("", ProgramWords.fieldLine(book, field));
    ProgramWords.facts(book, field).forEach(l -> html.line("fact", l));
    html.line("", outcome.program().name() + ": " + words.inMoney());
    html.verdict(judgement);
    html.blocks.add(new Block.Heading("House rules"));
    html.line("", "The program " + words.houseRules() + ".");
    words.brokenHouseRules().forEach(l -> html.line("small", l));
    html.blocks.add(new Block.Heading("Used more than once"));
    CheckWords.shared(outcome).forEach(l -> html.line("fact", l));
    List<ActiveLedger> ledger = ProgramLedger.of(book, field, outcome);
    if (!ledger.isEmpty()) {
      html.blocks.add(new Block.Heading(LedgerWords.OF_A_PROGRAM));
      html.blocks.add(Block.Grid.plain(LedgerWords.HEADS, LedgerWords.rows(ledger)));
    }
    return html.page("Check of one program, " + field.id(), head);
  }

  private String page(String title, ReportHead head) {
    return Pages.fill("blocks.jte", new BlockPage(SheetHead.of(title, head), blocks));
  }

  private void line(String css, String words) {
    blocks.add(new Block.Line(css, words));
  }

  private void verdict(Judgement judgement) {
    FindingText.Shown shown = new FindingText(book.catalog()).shown(judgement, f -> true);
    line("stop big", judgement.verdict().word().toUpperCase(Locale.ROOT));
    line("", shown.summary());
    blocks.add(new Block.Findings(shown));
  }

  private void mix(Mix mix) {
    blocks.add(Block.Grid.plain(MIX, CheckWords.mix(mix)));
  }

  private void open(OpenHours open) {
    blocks.add(
        new Block.Heading(
            "Hours of the next three days with nothing of the day against this tank, by the"
                + " forecast"));
    List<String> spans = CheckWords.open(open);
    spans.forEach(s -> line("", s));
  }

  private void mended(MendedMix mended) {
    Judgement judgement = mended.mix().judgement();
    blocks.add(
        new Block.Heading(
            "What would be better, judged again by every rule: " + judgement.verdict().word()));
    mended.changes().forEach(c -> line("", c));
    mix(mended.mix().job().mix());
    blocks.add(
        new Block.Findings(
            new FindingText(book.catalog())
                .said(
                    judgement.findings().stream()
                        .filter(
                            f ->
                                f.severity() == Severity.BLOCK
                                    || f.severity() == Severity.WARN
                                    || RestrictedUseRule.isNotice(f))
                        .toList())));
  }
}
