package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.plan.change.Substitutes;
import org.swathbook.program.Dose;
import org.swathbook.rules.Finding;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** What a substitute is and what speaks against it, in words. */
public final class SubstituteWords {
  private SubstituteWords() {}

  /** Its dose, its cost, what it does to the net return and to the driver weeds. */
  public static String of(Book book, SeasonOutcome before, JudgedChange change) {
    Dose in = change.change().in().get(0);
    StringBuilder out = new StringBuilder();
    out.append(in.product().id())
        .append(' ')
        .append(Numbers.decimals(in.rate().amount(), 2))
        .append(' ')
        .append(in.rate().unitText());
    out.append(": ").append(change.cost().map(c -> signed(c) + " $/acre").orElse("cost not known"));
    change.net().ifPresent(n -> out.append(", net ").append(signed(n)).append(" $/acre"));
    for (WeedOutcome w : before.weeds()) {
      if (w.pressure().driver().isDriver()) {
        double after = change.outcome().weed(w.pressure().weed().id()).controlPct();
        out.append(", ")
            .append(book.catalog().weed(w.pressure().weed().id()).name())
            .append(' ')
            .append(Numbers.fixed(w.controlPct(), 1))
            .append(" to ")
            .append(Numbers.fixed(after, 1))
            .append(" %");
      }
    }
    return out.append("; ").append(change.judgement().verdict().word()).toString();
  }

  /** Warnings that name it or one of its actives, then that it is for certified applicators. */
  public static List<Finding> findings(JudgedChange change) {
    Dose in = change.change().in().get(0);
    List<Finding> out = new ArrayList<>(Substitutes.warnings(change));
    change.judgement().findings().stream()
        .filter(RestrictedUseRule::isNotice)
        .filter(f -> f.about().product().filter(in.product().id()::equals).isPresent())
        .forEach(out::add);
    return out;
  }

  /** Its own limits: what the rules say of it in that program, and house rules that it breaks. */
  public static List<String> limits(JudgedChange change) {
    List<String> out = new ArrayList<>();
    for (Finding f : findings(change)) {
      out.add(f.rule().value() + ": " + f.message());
    }
    if (!change.breaks().isEmpty()) {
      out.add("breaks house rules that stood: " + String.join(", ", change.breaks()));
    }
    return out;
  }

  private static String signed(Money m) {
    return (m.cents() > 0 ? "+" : "") + m;
  }
}
