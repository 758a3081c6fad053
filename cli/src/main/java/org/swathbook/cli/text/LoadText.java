package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedMix;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.tank.JarTest;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.LoadedAdjuvant;
import org.swathbook.tank.LoadedProduct;
import org.swathbook.tank.MixingStep;
import org.swathbook.tank.PouredAmount;
import org.swathbook.tank.TankLoad;

/** The sheet of {@code load}: verdict, loads, and what else whoever fills a sprayer needs. */
public final class LoadText {
  private final Page page;
  private final LoadSheet sheet;
  private final String carrier;

  private LoadText(Page page, LoadSheet sheet) {
    this.page = page;
    this.sheet = sheet;
    this.carrier =
        sheet.job().carrier().liquid() == Carrier.Liquid.WATER ? "water" : "liquid fertilizer";
  }

  /**
   * @param sheet empty for a blocked tank: then the verdict is all
   */
  public static String of(
      Book book, ReportHead head, Field field, JudgedMix judged, Optional<LoadSheet> sheet) {
    Page page = new Page();
    HeadText.on(page, "Load sheet", head);
    page.line(CheckText.jobLine(book, field, judged.job()));
    page.blank();
    FindingText findings = new FindingText(book.catalog());
    if (sheet.isEmpty()) {
      findings.verdict(page, judged.judgement());
      page.line("NO LOAD: this tank is blocked. 'swathbook check' looks for one that is not.");
      page.blank();
    } else {
      findings.verdict(page, judged.judgement(), LoadText::belongsOnTheSheet);
      new LoadText(page, sheet.get()).body(field);
    }
    HeadText.foot(page, false);
    return page.toString();
  }

  /** Notes are left to the check; order and jar test stand on the sheet anyway. */
  private static boolean belongsOnTheSheet(Finding f) {
    return f.severity() != Severity.NOTE;
  }

  private void body(Field field) {
    loads(field);
    WaterText.on(page, sheet.water());
    jar();
    new CleanOutText(page, sheet).on(field);
    people();
    page.rule('-');
    page.line("To be signed");
    LoadWords.SIGN_OFF.forEach(
        line -> page.line("  " + line + " " + "_".repeat(Page.WIDTH - line.length() - 3)));
    page.blank();
  }

  private void loads(Field field) {
    double all = sheet.acres() * sheet.gallonsPerAcre();
    page.wrapped(
        0,
        2,
        LoadWords.acres(sheet.acres())
            + " acres at "
            + Numbers.decimals(sheet.gallonsPerAcre(), 1)
            + " gal/acre are "
            + LoadWords.gallons(all)
            + " gal: "
            + LoadWords.split(sheet)
            + ".");
    if (Quantity.exceeds(sheet.acres(), field.acres())) {
      page.wrapped(
          0,
          2,
          "These are more acres than the field has ("
              + LoadWords.acres(field.acres())
              + "); what was judged is the field.");
    }
    page.blank();
    List<TankLoad> loads = sheet.loads();
    for (int first = 0; first < loads.size(); ) {
      int last = first;
      while (last + 1 < loads.size() && loads.get(last + 1).equals(loads.get(first))) {
        last++;
      }
      load(first, last, loads.get(first));
      first = last + 1;
    }
    totals();
    notes();
  }

  private void load(int first, int last, TankLoad load) {
    String which =
        first == last
            ? "Load " + (first + 1) + " of " + sheet.loads().size() + ": "
            : "Loads " + (first + 1) + " to " + (last + 1) + ", each ";
    page.line(
        which
            + LoadWords.gallons(load.size().gallons())
            + " gal on "
            + LoadWords.acres(load.size().acres())
            + " acres");
    Table table = new Table(2, "rlll");
    int n = 0;
    for (MixingStep step : sheet.order().sequence()) {
      n++;
      table.row(row(n, step, load));
    }
    table.on(page);
    page.blank();
  }

  private String[] row(int n, MixingStep step, TankLoad load) {
    String number = Integer.toString(n);
    return switch (step.kind()) {
      case CARRIER_FIRST ->
          new String[] {
            number,
            carrier,
            LoadWords.gallons(load.carrierGallons() / 2) + " gal",
            "half of it, agitator running"
          };
      case TOP_UP ->
          new String[] {
            number,
            carrier,
            "to " + LoadWords.gallons(load.size().gallons()) + " gal",
            (load.hasUnreckonedRoom() ? "about " : "")
                + LoadWords.gallons(load.carrierGallons() / 2)
                + " gal, up to the mark"
          };
      case WAIT ->
          new String[] {number, "wait", "", "until all that is dry is uniform, some minutes"};
      case PRODUCT -> product(number, step, load);
      case ADJUVANT -> adjuvant(number, step, load);
    };
  }

  private String[] product(String number, MixingStep step, TankLoad load) {
    LoadedProduct p =
        load.products().stream()
            .filter(x -> x.product().name().equals(step.what()))
            .findFirst()
            .orElseThrow();
    List<String> more = new ArrayList<>();
    step.formulation()
        .ifPresent(f -> more.add(f + step.form().map(form -> " (" + form + ")").orElse("")));
    for (Dose d : sheet.job().mix().doses()) {
      if (d.product().equals(p.product())) {
        more.add(Numbers.decimals(d.rate().amount(), 2) + " " + d.rate().unitText());
      }
    }
    p.packageSize().flatMap(p.poured()::inPackages).ifPresent(more::add);
    return new String[] {number, step.what(), p.poured().words(), String.join("; ", more)};
  }

  private String[] adjuvant(String number, MixingStep step, TankLoad load) {
    LoadedAdjuvant a =
        load.adjuvants().stream()
            .filter(x -> x.kind().equals(step.what()))
            .findFirst()
            .orElseThrow();
    return new String[] {
      number,
      step.what(),
      a.poured().map(PouredAmount::words).orElse("NOT KNOWN"),
      String.join(" or ", a.rates()) + (a.rates().size() > 1 ? ", whichever is more" : "")
    };
  }

  /** To be taken from the shed for all loads. */
  private void totals() {
    if (sheet.loads().size() == 1) {
      return;
    }
    TankLoad all = sheet.together();
    page.line("All loads together");
    Table table = new Table(2, "lll");
    for (LoadedProduct p : all.products()) {
      table.row(
          p.product().name(),
          p.poured().words(),
          p.packageSize().flatMap(p.poured()::inPackages).orElse(""));
    }
    for (LoadedAdjuvant a : all.adjuvants()) {
      table.row(a.kind(), a.poured().map(PouredAmount::words).orElse("NOT KNOWN"), "");
    }
    table.row(carrier, LoadWords.gallons(all.carrierGallons()) + " gal", "");
    table.on(page);
    page.blank();
  }

  private void notes() {
    page.wrapped(
        0,
        2,
        "Products are rounded down to what a jug or a scale shows, adjuvants up. A label's own order"
            + " of mixing goes before this one, which is that of most of five published guides."
            + (sheet.order().disagreements().isEmpty()
                ? ""
                : " Guides differ: " + String.join("; ", sheet.order().disagreements()) + "."));
    for (Dose d : sheet.job().mix().doses()) {
      if (d.named()) {
        page.wrapped(
            0,
            2,
            d.actives().get(0).ingredient().name()
                + " is poured as "
                + d.product().name()
                + ", the product that holds it alone at the least cost.");
      }
    }
    if (sheet.loads().get(0).hasUnreckonedRoom()) {
      page.wrapped(
          0,
          2,
          "How much room dry goods, and amounts that are not known, take in the tank is not"
              + " reckoned: fill to the mark and not by the gallons.");
    }
    SprayJob job = sheet.job();
    if (!job.others().isEmpty()) {
      page.wrapped(
          0,
          2,
          "NOT ON THIS SHEET: "
              + Figures.list(job.others())
              + ", which the mix names by its kind alone; amount, place in the order and terms are"
              + " for its label.");
    }
    page.blank();
  }

  private void jar() {
    page.line("Jar test");
    if (sheet.jar() instanceof JarTest.Forbidden f) {
      page.wrapped(
          2,
          4,
          "None: the "
              + (f.by().size() == 1 ? "label" : "labels")
              + " of "
              + Figures.list(f.by())
              + (f.by().size() == 1 ? " forbids it." : " forbid it."));
    } else if (sheet.jar() instanceof JarTest.Recipe r) {
      page.wrapped(
          2,
          4,
          "One quart of this spray is that of 1/"
              + Numbers.decimals(1 / r.acres(), 0)
              + " acre. Into a clear jar, in this order, with the "
              + carrier
              + " of the load:");
      Table table = new Table(4, "lrl");
      table.row(carrier, Numbers.decimals(r.carrierMl() / 2, 0) + " mL", "half of it");
      for (JarTest.Portion p : r.portions()) {
        table.row(
            p.what(),
            p.amount().map(LoadText::small).orElse("NOT KNOWN"),
            p.amount().filter(q -> q.unit() == Unit.MILLILITRE).map(LoadText::spoons).orElse(""));
      }
      table.row(carrier, Numbers.decimals(r.carrierMl() / 2, 0) + " mL", "the rest");
      table.on(page);
      page.wrapped(
          2,
          4,
          "Shake after each; look after 15 to 30 minutes, and shake again: flakes, gel, layers, foam"
              + " or heat say no. A jar shows neither weaker control nor injury. Not where a label"
              + " forbids the test. Common practice, no source.");
    } else {
      page.line("  None: one thing by itself meets nothing.");
    }
    page.blank();
  }

  private static String small(Quantity q) {
    double v = q.value();
    return Numbers.decimals(v, v < 1 ? 2 : 1) + " " + q.unit().symbol();
  }

  private static String spoons(Quantity ml) {
    double spoons = ml.in(Unit.FLUID_OUNCE) / JarTest.TEASPOON_FLUID_OUNCES;
    return Numbers.decimals(spoons, 2) + " teaspoons";
  }

  private void people() {
    page.line("People");
    page.wrapped(2, 4, reentry());
    page.wrapped(
        2,
        4,
        "Protective equipment: the catalog does not hold it. Read it on the labels of "
            + Figures.list(
                sheet.job().mix().doses().stream().map(d -> d.product().name()).distinct().toList())
            + "; the strictest governs.");
    if (!sheet.restricted().restricted().isEmpty()) {
      page.wrapped(
          2,
          4,
          "Restricted use, for certified applicators only: "
              + Figures.list(sheet.restricted().restricted())
              + ".");
    }
    if (!sheet.restricted().unknown().isEmpty()) {
      page.wrapped(
          2,
          4,
          "Whether it is restricted use is not known of "
              + Figures.list(sheet.restricted().unknown())
              + ".");
    }
    page.blank();
  }

  private String reentry() {
    List<String> unknown = sheet.reentry().unknown();
    String open = unknown.isEmpty() ? "" : "; NOT KNOWN of " + Figures.list(unknown);
    if (sheet.reentry().hours().isEmpty()) {
      return "Re-entry: NOT KNOWN of any; read it on the labels.";
    }
    return "Re-entry: nobody enters the field for "
        + (unknown.isEmpty() ? "" : "at least ")
        + Numbers.decimals(sheet.reentry().hours().getAsDouble(), 1)
        + " hours after spraying, the longest of these labels"
        + open
        + ".";
  }
}
