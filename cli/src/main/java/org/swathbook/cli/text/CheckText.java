package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MendedMix;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.report.ProgramLedger;
import org.swathbook.cli.report.RainFree;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;

/** The report of {@code check}: the verdict first, then what it is about. */
public final class CheckText {
  private final Book book;
  private final Page page = new Page();

  CheckText(Book book) {
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
    CheckText text = new CheckText(book);
    HeadText.on(text.page, "Check of one tank", head);
    text.page.line(jobLine(book, field, judged.job()));
    text.page.blank();
    new FindingText(book.catalog()).verdict(text.page, judged.judgement());
    text.tank(judged);
    CheckWords.waiting(judged.judgement())
        .ifPresent(
            l -> {
              text.page.wrapped(0, 2, l);
              text.page.blank();
            });
    open.ifPresent(text::open);
    mended.ifPresent(text::mended);
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  /** A whole program. */
  public static String ofProgram(
      Book book, ReportHead head, Field field, SeasonOutcome outcome, Judgement judgement) {
    CheckText text = new CheckText(book);
    HeadText.on(text.page, "Check of one program", head);
    FieldText.head(book, field, text.page);
    text.page.apart("PROGRAM: " + outcome.program().name(), ProgramText.money(outcome));
    text.page.blank();
    new FindingText(book.catalog()).verdict(text.page, judgement);
    text.page.line("House rules: " + ProgramText.broken(judgement));
    text.page.blank();
    text.page.line("Used more than once");
    CheckWords.shared(outcome).forEach(l -> text.page.wrapped(2, 4, l));
    text.page.blank();
    List<ActiveLedger> ledger = ProgramLedger.of(book, field, outcome);
    if (!ledger.isEmpty()) {
      text.page.wrapped(0, 2, LedgerWords.OF_A_PROGRAM);
      LedgerText.table(text.page, ledger);
      text.page.blank();
    }
    HeadText.foot(text.page, true);
    return text.page.toString();
  }

  /** Field, crop and day of a tank. */
  public static String jobLine(Book book, Field field, SprayJob job) {
    return FieldText.named(book, field)
        + ", "
        + Figures.date(job.date())
        + job.time().map(t -> " " + t).orElse("")
        + ", "
        + job.method().spelling();
  }

  private void tank(JudgedMix judged) {
    page.line("What was judged");
    mix(judged.job().mix(), 2);
    how(judged).forEach(l -> page.wrapped(2, 4, l));
    page.blank();
  }

  /** Volume, droplets, crop and weeds, one sentence each. */
  List<String> how(JudgedMix judged) {
    List<String> out = new ArrayList<>();
    List<String> how = new ArrayList<>();
    Mix mix = judged.job().mix();
    mix.gallonsPerAcre().ifPresent(g -> how.add(Numbers.decimals(g, 1) + " gal/acre"));
    judged.job().setup().droplets().ifPresent(d -> how.add(d + " droplets"));
    if (!how.isEmpty()) {
      out.add("sprayed at " + String.join(", ", how));
    }
    rainFree(judged).ifPresent(out::add);
    mix.doses().stream().filter(Dose::named).forEach(d -> out.add(arithmetic(d)));
    out.add(crop(judged));
    for (PassWeed w : judged.facts().pass().weeds()) {
      if (w.stands() || judged.job().scouted().weedHeightCm().containsKey(w.weed())) {
        out.add(weed(judged, w));
      }
    }
    return out;
  }

  private static Optional<String> rainFree(JudgedMix judged) {
    List<RainFree> all = RainFree.of(judged);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "hours without rain after spraying, by the catalog: "
            + all.stream()
                .map(
                    r ->
                        r.ingredient().name()
                            + " "
                            + (r.hours().isPresent()
                                ? Numbers.decimals(r.hours().getAsDouble(), 1)
                                : "NOT KNOWN"))
                .collect(Collectors.joining(", ")));
  }

  /**
   * How pounds of an active become a rate of the product: its own figure may be checked by hand.
   */
  private static String arithmetic(Dose dose) {
    Unit unit = dose.rate().unit().dimension() == Dimension.MASS ? Unit.POUND : Unit.GALLON;
    double amount = dose.rate().in(unit, Unit.ACRE).amount();
    return dose.actives().stream()
        .map(
            a -> {
              String basis = a.rate().basis().symbol();
              return Numbers.decimals(a.lbPerAcre(), 4)
                  + " lb "
                  + basis
                  + "/acre of "
                  + a.ingredient().name()
                  + " / "
                  + Numbers.decimals(a.lbPerAcre() / amount, 3)
                  + " lb "
                  + basis
                  + "/"
                  + unit.symbol()
                  + " of "
                  + dose.product().id()
                  + " = "
                  + Numbers.decimals(amount, 4)
                  + " "
                  + unit.symbol()
                  + "/acre = "
                  + Figures.rate(dose.rate());
            })
        .collect(Collectors.joining("; "));
  }

  private void mix(Mix mix, int indent) {
    Table table = new Table(indent, "llll");
    CheckWords.mix(mix).forEach(table::row);
    table.on(page);
  }

  private String crop(JudgedMix judged) {
    boolean seenStage = judged.job().scouted().cropStage().isPresent();
    boolean seenHeight = judged.job().scouted().cropHeightCm().isPresent();
    double cm = judged.facts().pass().timing().medianHeightCm();
    return "crop "
        + judged.facts().pass().cropStage()
        + (seenStage ? " as seen" : " by the model")
        + (cm > 0
            ? ", " + Figures.inches(cm) + " in" + (seenHeight ? " as seen" : " by the model")
            : "");
  }

  private String weed(JudgedMix judged, PassWeed w) {
    boolean seen = judged.job().scouted().weedHeightCm().containsKey(w.weed());
    return book.catalog().weed(w.weed()).name()
        + ": "
        + Numbers.decimals(100 * book.house().sizePercentile(), 0)
        + " % to "
        + Figures.inches(w.p90Cm())
        + " in"
        + (seen ? " as seen" : " by the model")
        + "; "
        + PassText.sites(w);
  }

  private void open(OpenHours open) {
    page.line(
        "Hours of the next three days with nothing of the day against this tank, by the forecast");
    CheckWords.open(open).forEach(l -> page.wrapped(2, 4, l));
    page.blank();
  }

  private void mended(MendedMix mended) {
    page.rule('-');
    page.line(
        "What would be better, judged again by every rule: "
            + mended.mix().judgement().verdict().word());
    mended.changes().forEach(c -> page.wrapped(2, 4, "- " + c));
    page.blank();
    mix(mended.mix().job().mix(), 2);
    page.blank();
    Judgement judgement = mended.mix().judgement();
    new FindingText(book.catalog())
        .findings(
            page,
            judgement.findings().stream()
                .filter(
                    f ->
                        f.severity() == org.swathbook.rules.Severity.BLOCK
                            || f.severity() == org.swathbook.rules.Severity.WARN
                            || RestrictedUseRule.isNotice(f))
                .toList());
    page.blank();
  }
}
