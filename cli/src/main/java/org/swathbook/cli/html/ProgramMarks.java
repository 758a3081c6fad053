package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.cli.report.CostSplit;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.text.PassWords;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/** Where the words of a program have their figures in the JSON document of the same command. */
final class ProgramMarks {
  private final Book book;
  private final SeasonOutcome outcome;
  private final ProgramWords words;
  private final String at;
  private final String field;

  /**
   * @param at pointer of the program
   * @param field pointer of its field; empty where the document is about one field
   */
  ProgramMarks(Book book, SeasonOutcome outcome, ProgramWords words, String at, String field) {
    this.book = book;
    this.outcome = outcome;
    this.words = words;
    this.at = at;
    this.field = field;
  }

  private String of(String... keys) {
    return at + "/" + String.join("/", keys);
  }

  private static String code(WeedOutcome w) {
    return w.pressure().weed().id().value();
  }

  /** Control and survivors of the driver weeds behind words that have no figure of their own. */
  Marked drivers(String before) {
    return Marked.of(
        before + words.drivers(),
        outcome.weeds().stream()
            .filter(w -> w.pressure().driver().isDriver())
            .flatMap(
                w ->
                    Stream.of(
                        of("controlPct", code(w)),
                        of("worstYearControlPct", code(w)),
                        of("survivorsPerAcre", code(w), "beforeNeededUntil")))
            .toArray(String[]::new));
  }

  /** Control of the driver weeds where {@link #left} stands beside it. */
  Marked control() {
    return Marked.of(
        words.driversAlone(),
        outcome.weeds().stream()
            .filter(w -> w.pressure().driver().isDriver())
            .flatMap(w -> Stream.of(of("controlPct", code(w)), of("worstYearControlPct", code(w))))
            .toArray(String[]::new));
  }

  /** What of the driver weeds lives to harvest, and what that makes of their seedbank. */
  Marked left() {
    return Marked.of(
        words.left(),
        outcome.weeds().stream()
            .filter(w -> w.pressure().driver().isDriver())
            .map(
                w ->
                    String.join(
                        " ",
                        of("survivorsPerAcre", code(w), "beforeNeededUntil"),
                        of("survivorsPerAcre", code(w), "all"),
                        of("seedReturn", code(w), "seedbankFactor")))
            .toArray(String[]::new));
  }

  Marked inMoney() {
    return Marked.of(
        words.inMoney(),
        outcome.net().isPresent() ? of("netPerAcre") : "",
        outcome.cost().isPresent() ? of("costPerAcre") : "",
        of("lossPerAcre"));
  }

  List<List<Marked>> weeds() {
    List<List<String>> rows = words.weeds();
    List<List<Marked>> out = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      WeedOutcome w = outcome.weeds().get(i);
      String c = code(w);
      out.add(
          List.of(
              Marked.plain(row.get(0)),
              Marked.of(row.get(1), of("controlPct", c), of("worstYearControlPct", c)),
              Marked.of(
                  row.get(2), of("exposedEmergencePct", c), of("worstYearExposedEmergencePct", c)),
              Marked.of(
                  row.get(3),
                  of("survivorsPerAcre", c, "beforeNeededUntil"),
                  of("survivorsPerAcre", c, "all")),
              w.weakestSite().isEmpty()
                  ? Marked.plain(row.get(4))
                  : Marked.of(
                      row.get(4),
                      of("weakestSite", c, "site"),
                      of("weakestSite", c, "controlPctWithoutIt")),
              Marked.of(
                  row.get(5),
                  of("emergenceMetPct", c, "none"),
                  of("emergenceMetPct", c, "one"),
                  of("emergenceMetPct", c, "twoOrMore"))));
    }
    return out;
  }

  /** What stands below the weeds: first the seed return of all of them. */
  List<Marked> notes() {
    List<String> all = words.notes();
    List<Marked> out = new ArrayList<>(Marked.plain(all));
    out.set(
        0,
        Marked.of(
            all.get(0),
            outcome.weeds().stream()
                .map(
                    w ->
                        of("seedReturn", code(w), "seedsPerM2")
                            + " "
                            + of("seedReturn", code(w), "seedbankFactor"))
                .toArray(String[]::new)));
    return out;
  }

  List<List<Marked>> money() {
    List<List<String>> rows = words.money();
    CostSplit cost = CostSplit.of(book, outcome);
    return List.of(
        row(
            rows.get(0),
            outcome.cost().isPresent() ? of("costPerAcre") : "",
            cost.products().isPresent() ? of("productsPerAcre") : "",
            of("passes"),
            of("passesPerAcre")),
        row(
            rows.get(1),
            of("lossPerAcre"),
            of("worstYearLossPerAcre"),
            of("worstYear"),
            of("untreatedLossPerAcre")),
        outcome.net().isEmpty()
            ? row(rows.get(2), "")
            : row(
                rows.get(2),
                of("netPerAcre"),
                of("netPerAcre") + "*" + field + "/acres",
                field + "/acres"));
  }

  private static List<Marked> row(List<String> row, String amount, String... madeOf) {
    return List.of(
        Marked.plain(row.get(0)), Marked.of(row.get(1), amount), Marked.of(row.get(2), madeOf));
  }

  Marked confidence() {
    return Marked.of(words.confidence(), of("windowConfidencePct"), "-");
  }

  /** Date and actives of each pass, in a row. */
  List<List<Marked>> passRows() {
    List<List<String>> rows = words.passRows();
    List<List<Marked>> out = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      List<String> row = rows.get(p.index());
      List<String> rates = new ArrayList<>();
      for (int d = 0; d < p.mix().doses().size(); d++) {
        int n = p.mix().doses().get(d).actives().size();
        for (int a = 0; a < n; a++) {
          // Four decimals where two would be nothing: so do the words.
          rates.add(
              pass(p, "mix", "" + d, "activeLbPerAcre", "" + a)
                  + (p.mix().doses().get(d).actives().get(a).lbPerAcre() < 0.05 ? ":4" : ":2"));
        }
      }
      out.add(
          List.of(
              Marked.of(row.get(0), pass(p, "date")),
              Marked.of(row.get(1), String.join(" ", rates), missed(p))));
    }
    return out;
  }

  /** Years that words name one by one; of three and more in a row they name the ends. */
  private String missed(PassOutcome p) {
    List<Integer> years = p.missedYears();
    List<String> out = new ArrayList<>();
    for (int i = 0; i < years.size(); ) {
      int end = i + 1;
      while (end < years.size() && years.get(end) == years.get(end - 1) + 1) {
        end++;
      }
      for (int j = i; end - i < 3 && j < end; j++) {
        out.add(pass(p, "missedYears/" + j));
      }
      i = end;
    }
    return String.join(" ", out);
  }

  private String pass(PassOutcome p, String... keys) {
    return of("passes", Integer.toString(p.index())) + "/" + String.join("/", keys);
  }

  List<PassPart> passes() {
    List<PassWords> all = words.passes();
    return outcome.passes().stream().map(p -> part(p, all.get(p.index()))).toList();
  }

  private PassPart part(PassOutcome p, PassWords w) {
    Marked timing =
        p.made()
            ? Marked.of(w.timing(), pass(p, "cropStage"))
            : p.missedYears().size() == outcome.years().size()
                ? Marked.plain(w.timing())
                : Marked.of(
                    w.timing(),
                    pass(p, "cropStage"),
                    pass(p, "medianDate"),
                    pass(p, "dateRange/0"),
                    pass(p, "dateRange/1"),
                    missed(p));
    return new PassPart(
        w.number(),
        Marked.of(
            w.when(),
            pass(p, "date"),
            w.when().endsWith("at planting") ? "" : pass(p, "daysAfterPlanting")),
        timing,
        Marked.of(w.money(), p.cost().isPresent() ? pass(p, "productsPerAcre") : ""),
        mix(p, w),
        w.tank(),
        met(p, w));
  }

  private List<List<Marked>> mix(PassOutcome p, PassWords w) {
    List<List<Marked>> out = new ArrayList<>();
    int row = 0;
    for (int d = 0; d < p.mix().doses().size(); d++) {
      Dose dose = p.mix().doses().get(d);
      String at = pass(p, "mix", "" + d);
      for (int a = 0; a < dose.actives().size(); a++) {
        PassWords.Part part = w.mix().get(row++);
        ActiveDose active = dose.actives().get(a);
        out.add(
            List.of(
                Marked.of(
                    part.product(),
                    part.product().equals(dose.product().id().value()) ? at + "/product" : ""),
                // The unit goes first: some hold a figure, as 'per 100 gal'.
                Marked.of(part.rate(), a == 0 ? at + "/unit " + at + "/rate:2" : ""),
                Marked.of(
                    part.active(),
                    at + "/ingredients/" + a,
                    at + "/activeLbPerAcre/" + a + ":3",
                    active.rate().basis().symbol().isEmpty() ? "" : at + "/activeBasis/" + a),
                Marked.of(part.site(), at + "/sites/" + a)));
      }
    }
    return out;
  }

  private List<PassPart.Met> met(PassOutcome p, PassWords w) {
    List<PassPart.Met> out = new ArrayList<>();
    List<PassWeed> drivers =
        p.weeds().stream()
            .filter(x -> outcome.weed(x.weed()).pressure().driver().isDriver())
            .toList();
    for (int i = 0; i < drivers.size(); i++) {
      PassWeed weed = drivers.get(i);
      PassWords.Met words = w.met().get(i);
      List<Marked> lines = new ArrayList<>();
      lines.add(sites(p, weed, words.lines().get(0)));
      for (String line : words.lines().subList(1, words.lines().size())) {
        lines.add(layer(p, weed, line));
      }
      out.add(new PassPart.Met(words.weed(), standing(p, weed, words.standing()), lines));
    }
    return out;
  }

  private Marked standing(PassOutcome p, PassWeed w, String words) {
    if (!w.stands()) {
      return Marked.plain(words);
    }
    String h = pass(p, "weedHeightIn", w.weed().value());
    return Marked.of(
        words, h + "/plantsPerM2", h + "/p50", "-", h + "/p90", h + "/p90Low", h + "/p90High");
  }

  /** How many work, and which; then those that half work and those that are resisted. */
  private Marked sites(PassOutcome p, PassWeed w, String words) {
    List<String> out = new ArrayList<>();
    if (w.stands()) {
      sites(
          pass(p, "foliarSites", w.weed().value()),
          w.foliar(),
          pass(p, "foliarSiteControl", w.weed().value()),
          out);
    }
    sites(
        pass(p, "soilSites", w.weed().value()),
        w.soil(),
        pass(p, "soilSiteControl", w.weed().value()),
        out);
    return Marked.of(words, out.toArray(String[]::new));
  }

  private static void sites(String count, List<SiteControl> sites, String at, List<String> out) {
    out.add(count);
    for (Predicate<SiteControl> which :
        List.<Predicate<SiteControl>>of(
            SiteControl::effective,
            SiteControl::half,
            s -> s.struck() && !s.watched(),
            SiteControl::watched)) {
      for (int i = 0; i < sites.size(); i++) {
        if (which.test(sites.get(i))) {
          out.add(at + "/" + i + "/site");
        }
      }
    }
  }

  private Marked layer(PassOutcome p, PassWeed w, String words) {
    String at = pass(p, "layers", w.weed().value());
    return LayerSummary.of(outcome, book.season(), p.index(), w.weed())
        .map(
            l ->
                Marked.of(
                    words,
                    at + "/from",
                    at + "/to",
                    at + "/shortestDays",
                    at + "/shortestYear",
                    l.withLayer() < l.years()
                        ? at + "/years-" + at + "/yearsWithLayer " + at + "/years"
                        : ""))
        .orElse(Marked.plain(words));
  }
}
