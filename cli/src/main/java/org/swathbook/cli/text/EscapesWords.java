package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.file.WatchFile;
import org.swathbook.catalog.Site;
import org.swathbook.escapes.Action;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.RefusedRespray;
import org.swathbook.escapes.ResprayOption;
import org.swathbook.escapes.Suspicion;
import org.swathbook.escapes.WeatherSince;
import org.swathbook.escapes.WeedReading;
import org.swathbook.program.Dose;

/** A look after a pass in words, whatever it is printed on. */
public final class EscapesWords {
  private final Book book;
  private final EscapeReport report;

  public EscapesWords(Book book, EscapeReport report) {
    this.book = book;
    this.report = report;
  }

  /** {@code Palmer amaranth (AMAPA)}. */
  public String name(WeedReading w) {
    return book.catalog().weed(w.weed()).name() + " (" + w.weed() + ")";
  }

  /** When and what. */
  public List<String> sprayed() {
    return List.of(
        "sprayed "
            + Figures.date(report.seen().sprayed())
            + ", seen "
            + Figures.date(report.seen().seen()),
        "Sprayed, "
            + (report.seen().inJournal() ? "by the journal: " : "not in the journal yet: ")
            + report.seen().mix().doses().stream()
                .map(d -> d.product().name() + " " + Figures.rate(d.rate()))
                .collect(Collectors.joining(", ")));
  }

  public String action() {
    return switch (report.action()) {
      case DONE -> "Done: nothing more for these weeds now";
      case WAIT -> "Wait, and look again";
      case RESPRAY -> "Spray again";
      case STOP_SEED -> "Stop the seed: no spray that may go on now would help";
    };
  }

  /** Said where the label of no tank that may go on reaches the height of the plants. */
  public Optional<String> aboveLabels() {
    return report.action() == Action.RESPRAY
            && report.respray().stream().noneMatch(o -> o.tooTall().isEmpty())
        ? Optional.of(
            "the plants may by then be taller than a label of every tank below allows: read the"
                + " labels first, see LABEL HEIGHT")
        : Optional.empty();
  }

  /** Reasons of the action, and what to look for when. */
  public List<String> why() {
    List<String> out = new ArrayList<>(report.why());
    aboveLabels().ifPresent(out::add);
    report
        .lookAgain()
        .ifPresent(
            d -> {
              out.add("Look again on " + Figures.date(d) + " for:");
              report.weeds().stream()
                  .filter(w -> w.tooEarly() || w.undecided() > 0)
                  .flatMap(w -> w.yetToTell().stream())
                  .distinct()
                  .forEach(out::add);
            });
    return out;
  }

  /** Plants by what they mean, and what should have worked by when. */
  public List<String> reading(WeedReading w) {
    return List.of(
        w.dead()
            + " dead, "
            + w.dying()
            + " dying, "
            + w.undecided()
            + " undecided, "
            + w.recovering()
            + " living on, "
            + w.missed()
            + " untouched; "
            + Figures.percent(100 * w.controlled().share())
            + " % controlled (95 % interval "
            + Figures.percent(100 * w.controlled().low())
            + " to "
            + Figures.percent(100 * w.controlled().high())
            + " %, for plants picked at random; the undecided count as alive)",
        (w.sites().isEmpty()
                ? "No partner is known to work on it through leaves"
                : "Meant to work on it through leaves: "
                    + (w.sites().size() == 1 ? "site " : "sites ")
                    + Figures.list(w.sites().stream().map(Site::toString).toList()))
            + "; to be judged from "
            + Figures.date(w.judgedFrom())
            + (w.tooEarly() ? ", too early now" : "")
            + ", dead by "
            + Figures.date(w.deadBy())
            + weather(w.since()));
  }

  private static String weather(WeatherSince s) {
    if (s.known() == 0) {
      return " in warm growing weather, later in cool";
    }
    String worth =
        s.isSlower()
            ? "the "
                + s.days()
                + " days from the pass to the look were worth "
                + Figures.percent(s.warm())
                + " warm ones"
            : "it was warm from the pass to the look";
    String unknown =
        s.known() < s.days()
            ? ", "
                + (s.days() - s.known())
                + " of them not in the station's record and taken for warm"
            : "";
    return "; by the station's means " + worth + unknown;
  }

  /** How far resistance is suspected, what speaks for and against it. */
  public List<String> suspicion(WeedReading w) {
    Suspicion s = w.suspicion();
    List<String> out = new ArrayList<>();
    out.add("Suspicion of resistance: " + s.level().word());
    s.evidenceFor().forEach(e -> out.add("for: " + e));
    s.evidenceAgainst().forEach(e -> out.add("against: " + e));
    s.unknown().forEach(e -> out.add("not written down: " + e));
    if (s.isWorthATest()) {
      out.add(TEST);
    }
    return out;
  }

  /** With this begins the note on what is too tall for a label. */
  public static final String LABEL_HEIGHT = "LABEL HEIGHT: ";

  static final String TEST =
      "Only a test can tell. Leaves: of up to five survivors the top 1 to 2 in of young healthy"
          + " leaf, in a sealed bag (University of Illinois Plant Clinic 2016). Seed: ripe heads of"
          + " 20 to 40 plants, one to a paper bag, dry (University of Guelph). Send to the plant"
          + " clinic or weed science group of the state's land-grant university; ask before you"
          + " sample.";

  public List<String> cost() {
    return List.of(
        "Yield: "
            + Figures.money(report.cost().lossPerAcre())
            + " $/acre, mean of the weather years; the undecided counted as alive",
        "Seed, orders of magnitude, seeds/m²: "
            + report.weeds().stream()
                .map(
                    w ->
                        book.catalog().weed(w.weed()).name()
                            + " "
                            + Figures.rough(
                                report.cost().seedsPerM2().getOrDefault(w.weed(), 0.0), 1))
                .collect(Collectors.joining(", ")));
  }

  public String resprayTitle() {
    return report.action() == Action.RESPRAY
        ? "What may go on the survivors, the best first"
        : "What might go on the survivors, though it is not advised";
  }

  /** Product, site, days, control, cost and what it saves; a second product on a row of its own. */
  public List<List<String>> respray() {
    List<List<String>> out = new ArrayList<>();
    for (ResprayOption o : report.respray()) {
      out.add(respray(o, product(o.doses().get(0))));
      for (Dose with : o.doses().subList(1, o.doses().size())) {
        out.add(List.of("with " + product(with), "", "", "", "", "", ""));
      }
    }
    return out;
  }

  /** The same with all products of a tank in its row. */
  public List<List<String>> resprayInOneRow() {
    return report.respray().stream().map(o -> respray(o, products(o))).toList();
  }

  private static String products(ResprayOption o) {
    return o.doses().stream().map(EscapesWords::product).collect(Collectors.joining(" with "));
  }

  private static List<String> respray(ResprayOption o, String products) {
    return List.of(
        products,
        o.sites().stream().map(Site::toString).collect(Collectors.joining("+"))
            + (o.failedSite() ? " again" : ""),
        Figures.day(o.earliest()) + " to " + Figures.day(o.latest()),
        Figures.inches(o.heightCm()),
        Figures.percent(o.controlPct()),
        Figures.money(o.costPerAcre()),
        Figures.money(o.savesPerAcre()));
  }

  private static String product(Dose dose) {
    return dose.product().name() + " " + Figures.rate(dose.rate());
  }

  /** What trials gave, what falls short, and how to read the table. */
  public List<String> resprayNotes() {
    List<String> out = new ArrayList<>(tooTall());
    List<String> weak = new ArrayList<>();
    boolean tanks = false;
    for (ResprayOption o : report.respray()) {
      String name = o.doses().get(0).product().name();
      o.published().ifPresent(p -> out.add(name + ": in trials " + p));
      if (!o.isTank() && o.effective().isEmpty()) {
        weak.add(name);
      }
      tanks |= o.isTank();
    }
    if (!weak.isEmpty()) {
      out.add("Less than the house rules call effective on its own: " + String.join(", ", weak));
    }
    if (tanks) {
      out.add(tanks());
    }
    out.add(
        "Control is the model's, for plants of the height in the table on the first day of the row;"
            + " plants that grew again from standing stems are no seedlings, and may take less.");
    out.add(
        "Dollars on one acre. At rates that label and journal leave; days are legal ones, not fit"
            + " ones. Saves: yield loss spared, before the cost. Check the tank before it is"
            + " loaded.");
    return out;
  }

  /** Products whose label ends below the height of the plants; empty for none. */
  private List<String> tooTall() {
    List<String> tall =
        report.respray().stream().flatMap(o -> o.tooTall().stream()).distinct().toList();
    return tall.isEmpty() ? List.of() : List.of(LABEL_HEIGHT + String.join("; ", tall));
  }

  /** How many of the sites of the tanks of two are effective, and how the tanks were judged. */
  private String tanks() {
    List<String> counts = new ArrayList<>();
    for (ResprayOption o : report.respray()) {
      if (o.isTank()) {
        String sites = o.sites().stream().map(Site::toString).collect(Collectors.joining("+"));
        counts.add(
            sites
                + (o.effective().size() == 2
                    ? " has two effective sites"
                    : o.effective().size() == 1
                        ? " has one effective site, " + o.effective().get(0)
                        : " has none that is effective alone, and is so together"));
      }
    }
    return "Tanks of two, judged as one tank with the adjuvants that their labels ask for: "
        + String.join("; ", counts);
  }

  /** Actives that would work and are not offered, a line for each kind of reason. */
  public List<String> refused() {
    List<String> out = new ArrayList<>();
    for (RefusedRespray.Reason reason : RefusedRespray.Reason.values()) {
      List<RefusedRespray> same =
          report.refused().stream().filter(r -> r.reason() == reason).toList();
      if (!same.isEmpty()) {
        out.add(reason.title() + ": " + listed(same));
      }
    }
    return out;
  }

  /** Names with what sets each apart in brackets; what is said of several alike once. */
  private static String listed(List<RefusedRespray> same) {
    Map<String, List<String>> byBrief = new LinkedHashMap<>();
    for (RefusedRespray r : same) {
      byBrief.computeIfAbsent(r.brief(), b -> new ArrayList<>()).add(r.active().name());
    }
    List<String> out = new ArrayList<>();
    byBrief.forEach(
        (brief, names) -> {
          String all = String.join(", ", names);
          boolean sentence = brief.endsWith(".");
          out.add(brief.isEmpty() ? all : sentence ? stripped(brief) : all + " (" + brief + ")");
        });
    return String.join("; ", out);
  }

  private static String stripped(String sentence) {
    return sentence.substring(0, sentence.length() - 1);
  }

  public static List<String> watch(List<WatchFile.Entry> entries) {
    return entries.stream()
        .map(e -> e.field() + ", " + e.weed() + ", site " + e.site() + ", since " + e.since())
        .toList();
  }
}
