package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.swathbook.audit.PassMatch;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.audit.PlannedAndApplied.Seen;
import org.swathbook.audit.PlannedAndApplied.Stand;
import org.swathbook.book.Book;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Say;

/** What is said of a program beside the journal of its season, on a page and as text. */
public final class PlannedWords {
  public static final String TITLE = "Planned and applied";

  public static final List<String> READING =
      List.of(
          "A pass is due on the first day fit for spraying at or after its time, in the weather of"
              + " that season; the house's queue of days later or earlier is on time. It is looked"
              + " for among passes of the journal within a month of that day that share an active"
              + " with it. Rates within 5 % are the same.",
          "Promised: the mean of the weather years before the season, every pass as planned. As"
              + " planned, in its weather: the same passes in the weather that came. As sprayed:"
              + " the passes of the journal on their days. So the first two differ by weather, the"
              + " last two by what was done otherwise.",
          "Met <2: share of the emergence that met fewer than two effective sites. Alive: plants of"
              + " all emergence at harvest, by the model. Costs and net go by the book's prices of"
              + " today.");

  private PlannedWords() {}

  public static String heading(Book book, PlannedAndApplied c) {
    return c.field().id()
        + ", "
        + c.field().name()
        + ", "
        + book.catalog().crop(c.field().crop()).name()
        + " of "
        + c.season()
        + ": "
        + c.program().name();
  }

  /** Whether a pass was made, and when. */
  public static String pass(PassMatch p) {
    StringBuilder line = new StringBuilder(p.fate().word().toUpperCase(Locale.ROOT));
    if (isOff(p)) {
      line.append(' ').append(Say.days(Math.abs(p.days())));
    }
    p.planned().ifPresent(d -> line.append(", due ").append(Figures.date(d)));
    p.made()
        .ifPresent(
            d ->
                line.append(", made ")
                    .append(Figures.date(d))
                    .append(" (")
                    .append(p.application().orElseThrow())
                    .append(")"));
    return line.toString();
  }

  /** Whether the words of a pass say by how many days it was late or early. */
  public static boolean isOff(PassMatch p) {
    return p.fate() == PassMatch.Fate.LATE || p.fate() == PassMatch.Fate.EARLY;
  }

  /** What was sprayed otherwise than it was planned, one sentence each. */
  public static List<String> otherwise(PassMatch p) {
    List<String> out = new ArrayList<>();
    said("left out", p.leftOut(), out);
    said("added", p.added(), out);
    out.addAll(p.rates());
    return out;
  }

  private static void said(String what, List<String> actives, List<String> out) {
    if (!actives.isEmpty()) {
      out.add(what + ": " + String.join(", ", actives));
    }
  }

  /** What each account is, below an empty corner. */
  public static List<String> accountHead(List<Account> accounts) {
    return row("", accounts, a -> a.kind().words());
  }

  /** Weather years, cost, net; then of each driver weed control, met by fewer than two, alive. */
  public static List<List<String>> accounts(List<Account> accounts) {
    List<List<String>> out = new ArrayList<>();
    out.add(row("weather years", accounts, a -> Integer.toString(a.years())));
    out.add(row("cost, $/acre", accounts, a -> a.cost().map(Figures::money).orElse("?")));
    out.add(row("net, $/acre", accounts, a -> a.net().map(Figures::money).orElse("?")));
    for (int w = 0; w < accounts.get(0).weeds().size(); w++) {
      String weed = accounts.get(0).weeds().get(w).weed().weed().name();
      int at = w;
      out.add(row(weed + ", control %", accounts, whole(at, Stand::controlPct)));
      out.add(row(weed + ", met <2 %", accounts, whole(at, Stand::metFewerThanTwoPct)));
      out.add(
          row(
              weed + ", alive/acre",
              accounts,
              a -> Figures.count(a.weeds().get(at).survivorsPerAcre())));
    }
    return out;
  }

  private static Function<Account, String> whole(int weed, ToDoubleFunction<Stand> of) {
    return a -> Numbers.decimals(of.applyAsDouble(a.weeds().get(weed)), 0);
  }

  private static List<String> row(
      String name, List<Account> accounts, Function<Account, String> cell) {
    List<String> out = new ArrayList<>(List.of(name));
    accounts.forEach(a -> out.add(cell.apply(a)));
    return out;
  }

  /** Who counted what after the last pass; or that nobody did. */
  public static List<String> seen(PlannedAndApplied c) {
    if (c.seen().isEmpty()) {
      return List.of(
          "Nobody counted a driver weed after the last pass, or scouting.csv does not tell.");
    }
    List<String> out = new ArrayList<>();
    for (Seen s : c.seen()) {
      out.add(
          "Counted on "
              + Figures.date(s.date())
              + ": "
              + Figures.count(s.perAcre())
              + " plants/acre of "
              + s.weed().weed().name()
              + ".");
    }
    return out;
  }
}
