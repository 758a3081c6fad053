package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ChangeWords;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.plan.Effort;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.keep.Kept;
import org.swathbook.plan.keep.KeptProgram;
import org.swathbook.plan.keep.KeptWithout;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** The report of {@code plan --keep}. */
public final class KeepText {
  private final Book book;
  private final KeptField field;
  private final Kept kept;
  private final Page page;

  private KeepText(Book book, KeptField field, Page page) {
    this.book = book;
    this.field = field;
    this.kept = field.kept();
    this.page = page;
  }

  public static String of(Book book, ReportHead head, KeptField field) {
    Page page = new Page();
    HeadText.on(page, "What of " + field.asked() + " can be kept", head);
    FieldText.head(book, field.field(), page);
    FieldText.weeds(book, field.field(), page);
    new KeepText(book, field, page).all();
    HeadText.foot(page, true);
    return page.toString();
  }

  private void all() {
    verdict();
    written();
    for (int i = 0; i < kept.programs().size(); i++) {
      program(kept.programs().get(i), i == 0);
    }
    kept.anew()
        .ifPresent(
            p -> {
              page.line(
                  field.effort() == Effort.QUICK
                      ? "Planned anew by a quick look, to show what keeping costs at least"
                      : "Planned anew, to show what keeping costs");
              AlternativeText.on(page, p);
            });
    page.wrapped(
        0,
        2,
        "Looked at "
            + Figures.count((double) kept.tried())
            + " changed programs. Every single change was scored; of combined changes only what"
            + " follows the most promising, so that a better one of as many may exist.");
    page.blank();
  }

  private void verdict() {
    if (field.isRefused()) {
      page.wrapped(
          0,
          2,
          "REFUSED: no change of a few things was found that makes it legal with all that is"
              + " asked"
              + (kept.noPlan().isPresent() ? "." : "; plan the field anew."));
      kept.noPlan().ifPresent(this::noPlan);
      if (!field.without().isEmpty()) {
        page.line("Without one of these limits alone it could be kept:");
      }
      for (KeptWithout w : field.without()) {
        page.wrapped(2, 4, without(w));
      }
    } else if (kept.needsNothing()) {
      List<String> broken = kept.written().judged().judgement().brokenNames();
      page.wrapped(
          0,
          2,
          "NOTHING NEEDS TO CHANGE"
              + (broken.isEmpty()
                  ? "."
                  : " for it to serve as written; it breaks house rules: "
                      + Figures.list(broken)
                      + "."));
    } else {
      KeptProgram first = kept.programs().get(0);
      page.wrapped(
          0,
          2,
          (first.size() == 1 ? "ONE THING" : first.size() + " THINGS")
              + " TO CHANGE: "
              + String.join("; ", first.changes().stream().map(KeepText::words).toList())
              + ".");
    }
    page.blank();
  }

  private void noPlan(Refusal refusal) {
    page.line("A new plan finds no program either.");
    new FindingText(book.catalog()).findings(page, refusal.because());
  }

  private static String without(KeptWithout w) {
    KeptProgram p = w.program();
    return w.key()
        + ", "
        + w.limit()
        + ": "
        + (p.changes().isEmpty()
            ? "nothing then needs to change"
            : String.join("; ", p.changes().stream().map(KeepText::words).toList()))
        + "; "
        + ProgramText.money(p.judged().outcome())
        + ", "
        + ProgramText.broken(p.judged().judgement());
  }

  private static String words(SingleChange c) {
    return ChangeWords.of(c, Figures::day);
  }

  private void written() {
    SeasonOutcome outcome = kept.written().judged().outcome();
    page.apart(
        outcome.passes().stream().anyMatch(PassOutcome::made)
            ? "As written, on what is made"
            : "As written",
        ProgramText.money(outcome) + "; " + kept.written().judged().judgement().verdict().word());
    AlternativeText.passes(page, 4, outcome);
    page.wrapped(4, 6, "control, mean (worst year): " + ProgramText.drivers(outcome));
    page.wrapped(4, 6, ProgramText.broken(kept.written().judged().judgement()));
    kept.notes().forEach(n -> page.wrapped(4, 6, n));
    kept.wanting().forEach(n -> page.wrapped(4, 6, "Against what is asked: " + n));
    List<Finding> blocks =
        kept.written().judged().judgement().findings().stream()
            .filter(f -> f.severity() == Severity.BLOCK)
            .toList();
    new FindingText(book.catalog()).findings(page, blocks);
    page.blank();
  }

  private void program(KeptProgram p, boolean first) {
    SeasonOutcome outcome = p.judged().outcome();
    page.apart(
        (p.meetsHouseRules() ? "" : first ? "NOT WITHIN THE HOUSE RULES: " : "") + p.name(),
        ProgramText.money(outcome) + "; " + p.judged().judgement().verdict().word());
    p.changes().forEach(c -> page.wrapped(2, 4, "- " + words(c)));
    if (!p.changes().isEmpty()) {
      said("gives up against the written one: ", p.against().givesUp());
      said("gains: ", p.against().gains());
    }
    if (!p.newlyBroken().isEmpty()) {
      page.wrapped(2, 4, "breaks newly: " + Figures.list(p.newlyBroken()));
    }
    page.blank();
    if (first) {
      new ProgramText(book, field.field()).full(page, outcome, p.judged().judgement());
      new FindingText(book.catalog()).verdict(page, p.judged().judgement());
    } else {
      AlternativeText.passes(page, 4, outcome);
      page.wrapped(4, 6, "control, mean (worst year): " + ProgramText.drivers(outcome));
      page.wrapped(4, 6, ProgramText.broken(p.judged().judgement()));
      page.blank();
    }
  }

  private void said(String what, List<String> parts) {
    page.wrapped(2, 4, what + (parts.isEmpty() ? "nothing" : String.join("; ", parts)));
  }
}
