package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Position;
import org.swathbook.measure.Numbers;

/** A ledger in words, whatever it is printed on. */
public final class LedgerWords {
  public static final List<String> HEADS =
      List.of("active", "used", "cap", "left", "applications", "counts");

  /** What stands above the caps of a program. */
  public static final String OF_A_PROGRAM =
      "Caps, with the journal's passes and every pass to come on its median day; lb/acre";

  private LedgerWords() {}

  /** A row an active and cap, pounds an acre, below {@link #HEADS}. */
  public static List<List<String>> rows(List<ActiveLedger> actives) {
    List<List<String>> out = new ArrayList<>();
    actives.forEach(a -> rows(a, out));
    return out;
  }

  private static void rows(ActiveLedger a, List<List<String>> out) {
    String applications =
        a.made()
            + (a.left().isPresent() ? ", " + a.left().getAsInt() + " left" : ", left not stated");
    if (a.caps().isEmpty()) {
      out.add(List.of(a.ingredient().name(), "?", "?", "?", applications, "no cap is known"));
    }
    for (ActiveLedger.CapLine c : a.caps()) {
      Cap cap = c.sum().cap();
      out.add(
          List.of(
              a.ingredient().name(),
              lb(c.sum().used().lbPerAcre()),
              lb(cap.amount().lbPerAcre()),
              lb(c.sum().left().lbPerAcre()) + (c.sum().exceeded() ? " OVER" : ""),
              applications,
              c.counts()
                  + " "
                  + cap.amount().basis().symbol()
                  + " per "
                  + cap.per().spelling()
                  + (cap.counts().isEmpty()
                      ? ""
                      : ", "
                          + cap.counts().stream()
                              .map(Position::spelling)
                              .collect(Collectors.joining(" and ")))));
    }
  }

  private static String lb(double lbPerAcre) {
    return Numbers.decimals(lbPerAcre, 4);
  }
}
