package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.program.Dose;
import org.swathbook.season.Kernel;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Single changes that help a program which stands: found with the planner's own doses, dates and
 * legality, scored quickly by the kernel, the best of each kind walked in full, and those that are
 * shown judged by the whole rule book.
 */
public final class SingleChanges {
  /** Of each kind, as many as this are walked in full: default, ours. */
  private static final int WALKED_OF_A_KIND = 4;

  /** And as many that bring a driver weed a site which the tank lacks: default, ours. */
  private static final int WALKED_FOR_A_SITE = 6;

  private final WalkedChange.Standing standing;
  private final Strengths strengths;
  private final ChangeMaker maker;
  private final AddedTanks added;
  private final List<DoseOption> options;
  private final StandingPasses passes;

  private record Scored(SingleChange change, double score) {}

  /**
   * @param now the program as it stands, walked by the same kernel
   */
  public SingleChanges(
      Book book, Kernel kernel, SeasonOutcome now, ChangeTerms terms, LocalDate today) {
    TraceSet traces = kernel.traces();
    this.standing = WalkedChange.Standing.of(book, kernel, now, terms, today);
    this.options = OptionMaker.make(book, traces.field()).options();
    this.strengths = new Strengths(book, traces, options);
    this.passes = new StandingPasses(book, kernel);
    this.maker = ChangeMaker.of(book, traces, now.program(), passes, terms, options, today);
    this.added =
        new AddedTanks(
            traces, book.house(), maker, options, strengths, c -> passes.quick(c.program()));
  }

  /**
   * At most three legal changes. First the best by house rules mended, less those that it breaks,
   * then by net return; then the one with the highest net return, house rules aside, where that is
   * higher still, else the next by house rules that changes something else. Last a pass that comes
   * nearer to another than the house asks, where that is worth giving up a house rule for. Empty
   * when none helps.
   */
  public List<JudgedChange> best() {
    List<WalkedChange> helping = walked().stream().filter(WalkedChange::helps).toList();
    List<WalkedChange> out = new ArrayList<>();
    Optional<WalkedChange> first =
        helping.stream().filter(w -> w.mended() >= 0 && w.isLegal()).findFirst();
    first.ifPresent(out::add);
    Money beaten =
        first
            .map(WalkedChange::gain)
            .map(WalkedChange.WORTH_IT::plus)
            .orElse(WalkedChange.WORTH_IT);
    Optional<WalkedChange> highest =
        helping.stream()
            .filter(w -> w.gain().minus(w.priceOfRules()).compareTo(beaten) >= 0)
            .sorted(Comparator.comparing(WalkedChange::gain).reversed())
            .filter(WalkedChange::isLegal)
            .findFirst();
    highest
        .or(
            () ->
                helping.stream()
                    .filter(w -> w.mended() >= 0)
                    .filter(w -> first.isPresent() && !w.place().equals(first.get().place()))
                    .filter(WalkedChange::isLegal)
                    .findFirst())
        .ifPresent(out::add);
    nearer(out).ifPresent(out::add);
    return out.stream().map(WalkedChange::told).toList();
  }

  /**
   * In an emergency a sprayer may go again sooner, where no change within the house's days does.
   */
  private Optional<WalkedChange> nearer(List<WalkedChange> others) {
    Optional<Money> most = others.stream().map(WalkedChange::worth).max(Comparator.naturalOrder());
    List<Scored> near = new ArrayList<>();
    added.near().forEach(c -> near.add(new Scored(c, passes.quick(c.program()))));
    near.sort(Comparator.comparingDouble(Scored::score).reversed());
    Map<String, SingleChange> chosen = new LinkedHashMap<>();
    choose(near, WALKED_OF_A_KIND, chosen);
    return chosen.values().stream()
        .map(c -> new WalkedChange(standing, maker.filled(c)))
        .filter(w -> w.helps() && most.stream().allMatch(m -> w.worth().compareTo(m) > 0))
        .filter(WalkedChange::isLegal)
        .max(Comparator.comparing(WalkedChange::worth));
  }

  private List<WalkedChange> walked() {
    List<Scored> all = new ArrayList<>();
    maker.ofPasses().forEach(c -> all.add(new Scored(c, passes.quick(c.program()))));
    added.all().forEach(c -> all.add(new Scored(c, passes.quick(c.program()))));
    // The sort is stable, so that equals keep the order in which they were made.
    all.sort(Comparator.comparingDouble(Scored::score).reversed());
    Map<String, SingleChange> chosen = new LinkedHashMap<>();
    for (SingleChange.Kind kind : SingleChange.Kind.values()) {
      choose(all.stream().filter(s -> s.change.kind() == kind).toList(), WALKED_OF_A_KIND, chosen);
    }
    choose(all.stream().filter(s -> bringsASite(s.change)).toList(), WALKED_FOR_A_SITE, chosen);
    List<WalkedChange> out = new ArrayList<>();
    chosen.values().forEach(c -> out.add(new WalkedChange(standing, maker.filled(c))));
    out.sort(
        Comparator.comparingInt((WalkedChange w) -> w.mended())
            .thenComparing(WalkedChange::gain)
            .reversed()
            .thenComparing(w -> w.change().kind())
            .thenComparing(w -> w.change().pass()));
    return out;
  }

  private void choose(List<Scored> sorted, int most, Map<String, SingleChange> chosen) {
    sorted.stream()
        .map(Scored::change)
        .filter(c -> passes.isLegalInOrder(c.program()))
        .limit(most)
        .forEach(c -> chosen.putIfAbsent(c.key(), c));
  }

  private boolean bringsASite(SingleChange change) {
    if (change.in().isEmpty() || change.kind() == SingleChange.Kind.ADD_PASS) {
      return false;
    }
    Dose in = change.in().get(0);
    Site site = in.actives().get(0).ingredient().site();
    boolean held =
        standing.now().passes().stream()
            .filter(p -> p.planned().equals(change.pass()))
            .flatMap(p -> p.mix().actives().stream())
            .anyMatch(a -> a.ingredient().site().equals(site));
    return !held && options.stream().filter(o -> o.dose().equals(in)).anyMatch(this::works);
  }

  private boolean works(DoseOption option) {
    for (int d = 0; d < strengths.drivers().size(); d++) {
      if (strengths.foliar(option.index(), d) || strengths.soil(option.index(), d)) {
        return true;
      }
    }
    return false;
  }
}
