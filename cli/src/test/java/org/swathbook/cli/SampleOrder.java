package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.HeldStock;
import org.swathbook.check.Judgement;
import org.swathbook.cli.json.OrderJson;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Quantity;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.program.Dose;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Verdict;
import org.swathbook.season.outcome.SeasonOutcome;

/** An order with every kind of line: stock too old, a substitute that draws a warning. */
final class SampleOrder {
  private SampleOrder() {}

  static String document(Book book, ReportHead head) {
    return OrderJson.of(book, head, report(book));
  }

  static OrderReport report(Book book) {
    SeasonOutcome outcome = Samples.outcome("Sample", 3);
    Dose out = outcome.passes().get(0).mix().doses().get(0);
    HeldStock old =
        new HeldStock(
            out.product().id(),
            Optional.of(Samples.field().grower()),
            Quantity.parse("2 lb"),
            Optional.of(LocalDate.of(2027, 1, 31)));
    JudgedChange change = SampleStress.exchange();
    Dose in = change.change().in().get(0);
    Finding first = change.judgement().findings().get(0);
    List<Finding> findings = new ArrayList<>(change.judgement().findings());
    findings.add(
        new Finding(
            first.rule(),
            Severity.WARN,
            first.message(),
            first.limit(),
            first.actual(),
            first.source(),
            first.remedy(),
            first.about().withProduct(in.product().id())));
    JudgedChange warned =
        new JudgedChange(
            change.change(),
            change.outcome(),
            new Judgement(Verdict.CAUTION, findings, List.of(), List.of(), List.of()),
            change.mends(),
            change.breaks(),
            change.near(),
            change.cost(),
            change.net());
    return OrderReport.of(
        book.prices().withHeld(List.of(old)),
        List.of(
            new OrderedField(
                Samples.field(),
                "programs/sample.yaml",
                new Judgement(Verdict.CAUTION, findings, List.of(), List.of(), List.of()),
                outcome,
                List.of(new OrderedField.InItsPlace(1, out, Optional.empty(), List.of(warned))))),
        List.of(new OrderReport.LeftOut(List.of("ND-2"), "no program in the book")),
        true,
        Samples.TODAY);
  }
}
