package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.check.DayBlocks;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.report.SharedSite;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.SeasonOutcome;

/** A checked tank in words, whatever it is printed on. */
public final class CheckWords {
  private CheckWords() {}

  /** A row an active, with its product and rate in the first; then adjuvants. */
  public static List<List<String>> mix(Mix mix) {
    List<List<String>> out = new ArrayList<>();
    for (Dose d : mix.doses()) {
      String product = d.product().name();
      String rate = Figures.rate(d.rate());
      for (ActiveDose a : d.actives()) {
        out.add(List.of(product, rate, PassText.active(a), "site " + a.ingredient().site()));
        product = "";
        rate = "";
      }
    }
    for (Adjuvant a : mix.adjuvants()) {
      out.add(List.of(a.kind(), a.rate(), "", ""));
    }
    return out;
  }

  /** Volume, droplets, crop and weeds. */
  public static List<String> how(Book book, JudgedMix judged) {
    return new CheckText(book).how(judged);
  }

  /** Sites of action, and with them actives, that a program uses more than once. */
  public static List<String> shared(SeasonOutcome outcome) {
    List<String> out = SharedSite.of(outcome).stream().map(SharedSite::words).toList();
    return out.isEmpty()
        ? List.of("no active and no site of action more than once in the program")
        : out;
  }

  /** What blocks and passes with the day; empty when nothing of that kind does. */
  public static Optional<String> waiting(Judgement judgement) {
    List<Finding> ofDay = DayBlocks.of(judgement);
    if (ofDay.isEmpty()) {
      return Optional.empty();
    }
    long blocks = judgement.findings().stream().filter(f -> f.severity() == Severity.BLOCK).count();
    return Optional.of(
        "Wait for another hour or day: "
            + (ofDay.size() == blocks ? "all that blocks" : "some of what blocks")
            + " is of the day ("
            + ofDay.stream().map(f -> f.rule().value()).distinct().collect(Collectors.joining(", "))
            + "), and a lesser tank is no answer to it.");
  }

  /** Hours that are open, and what is not known of others. */
  public static List<String> open(OpenHours open) {
    List<String> out = new ArrayList<>();
    if (open.spans().isEmpty()) {
      out.add("none");
    }
    for (OpenHours.Span s : open.spans()) {
      out.add(
          Figures.date(s.from().toLocalDate())
              + "  "
              + s.from().toLocalTime()
              + " to "
              + (s.to().toLocalDate().equals(s.from().toLocalDate())
                  ? ""
                  : Figures.date(s.to().toLocalDate()) + "  ")
              + s.to().toLocalTime());
    }
    if (!open.notKnown().isEmpty()) {
      out.add("More may be open; not said: " + String.join("; ", open.notKnown()));
    }
    return out;
  }
}
