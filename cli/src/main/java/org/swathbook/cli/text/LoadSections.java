package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.SprayJob;
import org.swathbook.tank.JarTest;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.LoadedAdjuvant;
import org.swathbook.tank.LoadedProduct;
import org.swathbook.tank.MixingStep;
import org.swathbook.tank.PouredAmount;
import org.swathbook.tank.TankLoad;

/** What a load sheet says between its verdict and what is to be signed, in words. */
public final class LoadSections {
  private final LoadSheet sheet;
  private final String carrier;
  private final List<Section> sections = new ArrayList<>();
  private final List<Section.Item> items = new ArrayList<>();

  private LoadSections(LoadSheet sheet) {
    this.sheet = sheet;
    this.carrier =
        sheet.job().carrier().liquid() == Carrier.Liquid.WATER ? "water" : "liquid fertilizer";
  }

  public static List<Section> of(Field field, LoadSheet sheet) {
    LoadSections all = new LoadSections(sheet);
    all.loads(field);
    all.heading("Water");
    WaterText.lines(sheet.water()).forEach(l -> all.line(1, l));
    all.end();
    all.jar();
    all.sections.add(new CleanOutText(sheet).of(field));
    all.people();
    return all.sections;
  }

  private void heading(String words) {
    items.add(new Section.Heading(words));
  }

  private void line(int level, String words) {
    items.add(new Section.Line(level, words));
  }

  private static void add(List<List<String>> rows, String... cells) {
    rows.add(List.of(cells));
  }

  private void end() {
    sections.add(new Section(items));
    items.clear();
  }

  private void loads(Field field) {
    double all = sheet.acres() * sheet.gallonsPerAcre();
    line(
        0,
        LoadWords.acres(sheet.acres())
            + " acres at "
            + Numbers.decimals(sheet.gallonsPerAcre(), 1)
            + " gal/acre are "
            + LoadWords.gallons(all)
            + " gal: "
            + LoadWords.split(sheet)
            + ".");
    if (Quantity.exceeds(sheet.acres(), field.acres())) {
      line(
          0,
          "These are more acres than the field has ("
              + LoadWords.acres(field.acres())
              + "); what was judged is the field.");
    }
    end();
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
    heading(
        which
            + LoadWords.gallons(load.size().gallons())
            + " gal on "
            + LoadWords.acres(load.size().acres())
            + " acres");
    List<List<String>> rows = new ArrayList<>();
    int n = 0;
    for (MixingStep step : sheet.order().sequence()) {
      n++;
      rows.add(List.of(row(n, step, load)));
    }
    items.add(new Section.Rows(1, "rlll", last - first + 1, rows));
    end();
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
    heading("All loads together");
    List<List<String>> rows = new ArrayList<>();
    for (LoadedProduct p : all.products()) {
      add(
          rows,
          p.product().name(),
          p.poured().words(),
          p.packageSize().flatMap(p.poured()::inPackages).orElse(""));
    }
    for (LoadedAdjuvant a : all.adjuvants()) {
      add(rows, a.kind(), a.poured().map(PouredAmount::words).orElse("NOT KNOWN"), "");
    }
    add(rows, carrier, LoadWords.gallons(all.carrierGallons()) + " gal", "");
    items.add(new Section.Rows(1, "lll", 0, rows));
    end();
  }

  /** So that nobody runs out in the middle of the field; rounded down. */
  private void packages() {
    TankLoad all = sheet.together();
    List<String> each = new ArrayList<>();
    for (LoadedProduct p : all.products()) {
      p.acresPerPackage(all.size().acres())
          .ifPresent(
              a ->
                  each.add(
                      p.product().name()
                          + " "
                          + Numbers.decimals(Math.floor(10 * a + 1e-6) / 10, 1)
                          + " ("
                          + p.packageSize().orElseThrow()
                          + ")"));
    }
    if (!each.isEmpty()) {
      line(
          0,
          "Acres that a package does, and after which the next is needed: "
              + String.join(", ", each)
              + ".");
    }
  }

  private void notes() {
    packages();
    line(
        0,
        "Products are rounded down to what a jug or a scale shows, adjuvants up. "
            + (sheet.order().byLabel().isEmpty()
                ? "A label's own order of mixing goes before this one, which is that of most of five"
                    + " published guides."
                : "The order is that of most of five published guides, after what the labels say: "
                    + String.join("; ", sheet.order().byLabel())
                    + ".")
            + (sheet.order().circles().isEmpty()
                ? ""
                : " NO ORDER MEETS ALL LABELS: " + String.join("; ", sheet.order().circles()) + ".")
            + (sheet.order().disagreements().isEmpty()
                ? ""
                : " Guides differ: " + String.join("; ", sheet.order().disagreements()) + "."));
    for (Dose d : sheet.job().mix().doses()) {
      if (d.named()) {
        line(
            0,
            d.actives().get(0).ingredient().name()
                + " is poured as "
                + d.product().name()
                + ", the product that holds it alone at the least cost.");
      }
    }
    if (sheet.loads().get(0).hasUnreckonedRoom()) {
      line(
          0,
          "How much room dry goods, and amounts that are not known, take in the tank is not"
              + " reckoned: fill to the mark and not by the gallons.");
    }
    SprayJob job = sheet.job();
    if (!job.others().isEmpty()) {
      line(
          0,
          "NOT ON THIS SHEET: "
              + Figures.list(job.others())
              + ", which the mix names by its kind alone; amount, place in the order and terms are"
              + " for its label.");
    }
    end();
  }

  private void jar() {
    heading("Jar test");
    if (sheet.jar() instanceof JarTest.Forbidden f) {
      line(
          1,
          "None: the "
              + (f.by().size() == 1 ? "label" : "labels")
              + " of "
              + Figures.list(f.by())
              + (f.by().size() == 1 ? " forbids it." : " forbid it."));
    } else if (sheet.jar() instanceof JarTest.Recipe r) {
      line(
          1,
          "One quart of this spray is that of 1/"
              + Numbers.decimals(1 / r.acres(), 0)
              + " acre. Into a clear jar, in this order, with the "
              + carrier
              + " of the load:");
      List<List<String>> rows = new ArrayList<>();
      add(rows, carrier, Numbers.decimals(r.carrierMl() / 2, 0) + " mL", "half of it");
      for (JarTest.Portion p : r.portions()) {
        add(
            rows,
            p.what(),
            p.amount().map(LoadSections::small).orElse("NOT KNOWN"),
            p.amount()
                .filter(q -> q.unit() == Unit.MILLILITRE)
                .map(LoadSections::spoons)
                .orElse(""));
      }
      add(rows, carrier, Numbers.decimals(r.carrierMl() / 2, 0) + " mL", "the rest");
      items.add(new Section.Rows(2, "lrl", 0, rows));
      line(
          1,
          "Shake after each; look after 15 to 30 minutes, and shake again: flakes, gel, layers, foam"
              + " or heat say no. A jar shows neither weaker control nor injury. Not where a label"
              + " forbids the test. Common practice, no source.");
    } else {
      line(1, "None: one thing by itself meets nothing.");
    }
    end();
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
    heading("People");
    line(1, reentry());
    ProtectionText.lines(sheet.protection()).forEach(l -> line(1, l));
    if (!sheet.restricted().restricted().isEmpty()) {
      line(
          1,
          "Restricted use, for certified applicators only: "
              + Figures.list(sheet.restricted().restricted())
              + ".");
    }
    if (!sheet.restricted().unknown().isEmpty()) {
      line(
          1,
          "Whether it is restricted use is not known of "
              + Figures.list(sheet.restricted().unknown())
              + ".");
    }
    end();
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
