package org.swathbook.cli.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.HouseRuleWords;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.measure.Money;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.Relaxation;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.WithoutPart;
import org.swathbook.program.Mix;
import org.swathbook.season.outcome.SeasonOutcome;

/** What the texts say of a field and of a walked program, for other forms of the same report. */
public final class ProgramWords {
  /** What stands below the steps of {@link #frontSteps}. */
  public static final String FRONT_NOTE = FrontText.NOTE;

  private final Book book;
  private final Field field;
  private final SeasonOutcome outcome;
  private final Judgement judgement;

  public ProgramWords(Book book, Field field, SeasonOutcome outcome, Judgement judgement) {
    this.book = book;
    this.field = field;
    this.outcome = outcome;
    this.judgement = judgement;
  }

  public List<PassWords> passes() {
    PassText text = new PassText(book, field, outcome);
    return outcome.passes().stream()
        .map(p -> text.words(p, judgement.tanks().get(p.index())))
        .toList();
  }

  /** Name, control, exposed emergence, survivors, weakest site, emergence met by sites. */
  public List<List<String>> weeds() {
    return new ResultText(book, field, outcome).weedRows();
  }

  public List<String> notes() {
    return new ResultText(book, field, outcome).notes();
  }

  /** Cost, yield loss and net return: name, money on an acre, what it is made of. */
  public List<List<String>> money() {
    return new ResultText(book, field, outcome).moneyRows();
  }

  public String confidence() {
    return new ResultText(book, field, outcome).confidence();
  }

  /** {@code breaks no house rule}, or which. */
  public String houseRules() {
    return ProgramText.broken(judgement);
  }

  /** One sentence a broken house rule. */
  public List<String> brokenHouseRules() {
    return judgement.brokenHouseRules().stream()
        .map(b -> b.name() + ", " + HouseRuleWords.of(book.catalog(), outcome, b))
        .toList();
  }

  /** Net return, cost and loss on an acre. */
  public String inMoney() {
    return ProgramText.money(outcome);
  }

  /** Control of the driver weeds, mean and worst year, and what lives of them. */
  public String drivers() {
    return ProgramText.drivers(outcome);
  }

  /** The same without what lives of them. */
  public String driversAlone() {
    return ProgramText.driversAlone(outcome);
  }

  /**
   * Of each driver weed the plants alive at harvest, those that were up in time to matter and all,
   * and next year's seedbank beside this year's.
   */
  public String left() {
    return outcome.weeds().stream()
        .filter(w -> w.pressure().driver().isDriver())
        .map(
            w ->
                w.pressure().weed().name()
                    + " "
                    + Figures.count(w.survivorsPerAcre())
                    + " ("
                    + Figures.count(w.allSurvivorsPerAcre())
                    + "), seedbank x "
                    + Figures.rough(w.seedbankFactor(), 2))
        .collect(Collectors.joining("; "));
  }

  /** Date and actives of each pass. */
  public List<List<String>> passRows() {
    return outcome.passes().stream().map(AlternativeText::row).toList();
  }

  /** Why each pass and product is there. */
  public List<List<String>> without(List<WithoutPart> parts) {
    return WithoutText.rows(book.catalog(), outcome, parts);
  }

  /** Name and crop of a field with its acres. */
  public static String fieldLine(Book book, Field field) {
    return String.join(
        " · ",
        field.id().value(),
        field.name(),
        field.grower(),
        FieldText.cropName(book, field),
        FieldText.acres(field.acres()) + " acres");
  }

  public static List<String> facts(Book book, Field field) {
    return FieldText.facts(book, field);
  }

  /** Name, code, density, whether it is a driver, resistance. */
  public static List<List<String>> weedsOf(Book book, Field field) {
    return FieldText.weedRows(book, field);
  }

  /** What the adviser noted on weeds of a field, one line each. */
  public static List<String> weedNotes(Book book, Field field) {
    return FieldText.weedNotes(book, field);
  }

  /** From the cheapest on, each program of the front that buys something worth a line. */
  public static List<FrontProgram> frontSteps(List<FrontProgram> front) {
    return FrontText.steps(front);
  }

  public static List<List<String>> frontRows(List<FrontProgram> steps) {
    return FrontText.rows(steps);
  }

  /** Broken house rules of the least bad program, and what loosening one of them would allow. */
  public static List<String> refusal(Catalog catalog, Refusal refusal, PlannedField plan) {
    List<PlannedProgram> programs = plan.programs();
    List<String> out = new ArrayList<>();
    if (!plan.isRefused()) {
      out.add("No program meets every house rule:");
    }
    refusal
        .broken()
        .forEach(
            b ->
                out.add(
                    b.name() + ", " + HouseRuleWords.of(catalog, programs.get(0).outcome(), b)));
    PlanText.looseningHead(refusal, plan).ifPresent(out::add);
    for (Relaxation r : refusal.relaxations()) {
      out.add(PlanText.relaxation(catalog, programs, r));
    }
    PlanText.noHelp(refusal).ifPresent(out::add);
    out.addAll(LimitText.head(refusal, plan.isRefused(), plan.limits()));
    plan.limits().forEach(l -> out.add(LimitText.of(l)));
    return out;
  }

  /** The limits that keep an active away, one sentence each. */
  public static List<String> limits(PlannedField plan, WhyNot why) {
    List<String> out = new ArrayList<>();
    LimitText.headOfActive(plan, why).ifPresent(out::add);
    why.limits().forEach(l -> out.add(LimitText.of(l)));
    return out;
  }

  /** How the programs of a field were found, one sentence each. */
  public static List<String> search(PlannedField plan) {
    return PlanText.search(plan);
  }

  public static String crop(Book book, Field field) {
    return FieldText.cropName(book, field);
  }

  public static String money(Money m) {
    return Figures.money(m);
  }

  public static String day(LocalDate d) {
    return Figures.day(d);
  }

  public static String date(LocalDate d) {
    return Figures.date(d);
  }

  public static String percent(double percent) {
    return Figures.percent(percent);
  }

  /** {@code 10 years, 2017-2026}. */
  public static String years(List<Integer> years) {
    return Figures.counted(years.size(), "year", "years") + ", " + Figures.years(years);
  }

  public static String count(double n) {
    return Figures.count(n);
  }

  /** Products of a tank, each with its rate. */
  public static String products(Mix mix) {
    return mix.doses().stream()
        .map(d -> d.product().name() + " " + Figures.rate(d.rate()))
        .collect(Collectors.joining(", "));
  }

  public static String inches(double cm) {
    return Figures.inches(cm);
  }
}
