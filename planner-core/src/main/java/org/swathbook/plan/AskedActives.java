package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Product;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.draft.Legality;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;

/**
 * Whether each active that some pass is to bring can be in a pass at all: what cannot is said
 * before anything is searched.
 */
final class AskedActives {
  /** Days from planting on which a product without a dose to choose is looked at. */
  private static final int[] DAYS = {-14, 0, 30};

  private final Book book;
  private final TraceSet traces;
  private final PlanSpace space;
  private final Legality legality;
  private final OptionMaker.Made made;
  private final int first;
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param first first date on which anything can still be sprayed
   */
  AskedActives(
      Book book,
      TraceSet traces,
      PlanSpace space,
      Legality legality,
      OptionMaker.Made made,
      int first) {
    this.first = first;
    this.book = book;
    this.traces = traces;
    this.space = space;
    this.legality = legality;
    this.made = made;
  }

  /** The refusal when one of them can be in no pass, and what forbids it; empty when all can. */
  Optional<Refusal> refusal(PlanWishes wishes, SeasonSoFar soFar) {
    List<Finding> because = new ArrayList<>();
    boolean refused = false;
    for (IngredientId active : wishes.include()) {
      if (isMade(active, soFar)) {
        continue;
      }
      List<DoseOption> options =
          made.options().stream().filter(o -> o.ingredient().equals(active)).toList();
      if (options.stream().noneMatch(this::isLegalOnADay)) {
        refused = true;
        because.addAll(forbids(book.catalog().ingredient(active), options));
        continue;
      }
      List<Finding> history = legality.blocksAfterJournal(options, space);
      refused |= !history.isEmpty();
      because.addAll(history);
    }
    return refused ? Optional.of(Refusal.ofAsked(because)) : Optional.empty();
  }

  private static boolean isMade(IngredientId active, SeasonSoFar soFar) {
    return soFar.made().stream()
        .flatMap(p -> p.mix().actives().stream())
        .anyMatch(a -> a.ingredient().id().equals(active));
  }

  private boolean isLegalOnADay(DoseOption option) {
    return IntStream.range(0, space.grid().size())
        .anyMatch(date -> space.legalOn(date).contains(option.index()));
  }

  /**
   * Rules alone: an active that is left out by what was asked, or whose days are over, has none.
   */
  private List<Finding> forbids(Ingredient active, List<DoseOption> options) {
    if (options.isEmpty()) {
      return book.catalog().singles(active.id()).stream().anyMatch(made::leavesOut)
          ? List.of()
          : onSomeDays(active);
    }
    OptionalInt last =
        IntStream.range(0, space.grid().size())
            .filter(date -> options.stream().anyMatch(o -> legality.allows(o, date)))
            .max();
    if (last.isPresent() && last.getAsInt() < first) {
      remarks.add(
          options.get(0).dose().product().name()
              + ": the last day on which the rules allow it here, "
              + Say.date(space.grid().date(last.getAsInt()))
              + ", is over");
    }
    return last.isPresent() ? List.of() : legality.blocks(options);
  }

  /** What else there is to say of them, each begun with the name of a product. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** What forbids the first product of an active of which no rate is allowed to begin with. */
  private List<Finding> onSomeDays(Ingredient active) {
    Optional<Product> product = book.catalog().singles(active.id()).stream().findFirst();
    if (product.isEmpty()) {
      return List.of();
    }
    Dose dose =
        Doses.ofProduct(
            book.catalog(), product.get(), product.get().step().like(product.get().spoken()));
    Map<String, Finding> out = new LinkedHashMap<>();
    LocalDate planting = traces.field().plantDate();
    for (int day : DAYS) {
      PassTiming timing = Timings.at(traces, planting.plusDays(day));
      for (UseFacts facts : UseJudge.facts(book, traces, 0, timing, Mix.of(List.of(dose)))) {
        UseJudge.judge(facts).withoutPass().sorted().stream()
            .filter(f -> f.severity() == Severity.BLOCK)
            .forEach(f -> out.putIfAbsent(f.rule() + " " + f.message(), f));
      }
    }
    return List.copyOf(out.values());
  }
}
