package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.program.Program;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.testing.DemoBook;

/** Every change of one step to the demo's own program, held to the season walked with it. */
class WalkedChangeTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final LocalDate FROM = LocalDate.of(2027, 6, 1);
  private static final Money EXTRA = Money.ofDollars(2.5);

  private static final Book BOOK = DemoCopy.inMemory();
  private static final BookPaths PATHS = new BookPaths(DemoBook.FOLDER);
  private static final Program PROGRAM =
      ProgramReader.read(PATHS.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers"), PATHS, BOOK);
  private static final Kernel KERNEL =
      Kernel.of(BOOK, TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow(), TODAY));
  private static final SeasonOutcome NOW = SeasonWalk.walk(BOOK, KERNEL, PROGRAM);

  private List<WalkedChange> all = List.of();

  /** Walked for each test, so that each notices what is wrong with a walk. */
  @BeforeEach
  void walkThemAll() {
    ChangeTerms terms = ChangeTerms.helping(FROM, List.of(), EXTRA);
    StandingPasses passes = new StandingPasses(BOOK, KERNEL);
    List<DoseOption> options = OptionMaker.make(BOOK, KERNEL.traces().field()).options();
    ChangeMaker maker =
        ChangeMaker.of(BOOK, KERNEL.traces(), PROGRAM, passes, terms, options, TODAY);
    WalkedChange.Standing standing = WalkedChange.Standing.of(BOOK, KERNEL, NOW, terms, TODAY);
    all = new ArrayList<>();
    for (SingleChange c : maker.ofPasses()) {
      all.add(new WalkedChange(standing, maker.filled(c)));
    }
    LocalDate open = maker.openDates().get(0);
    for (DoseOption o : maker.legalOn(open).subList(0, 3)) {
      all.add(new WalkedChange(standing, maker.added(open, List.of(o.dose()))));
    }
  }

  private static Set<String> broken(SeasonOutcome outcome) {
    return HouseRuleCheck.broken(BOOK, new TankOffers(BOOK, KERNEL.traces()), outcome).stream()
        .map(b -> b.name() + b.weed().map(Object::toString).orElse(""))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean holds(WeedOutcome w, SeasonOutcome then) {
    return !w.pressure().driver().isDriver()
        || then.weed(w.pressure().weed().id()).controlPct() >= w.controlPct() - 0.5;
  }

  /** A dollar, half a point of control, ten dollars a rule: defaults, ours. */
  @Test
  void whatHelpsIsReadFromTheSeasonWalkedWithIt() {
    Set<String> brokenNow = broken(NOW);
    int mending = 0;
    int paying = 0;
    int saving = 0;
    for (WalkedChange w : all) {
      SeasonOutcome then = SeasonWalk.walk(BOOK, KERNEL, w.change().program());
      Money extra = w.change().kind() == SingleChange.Kind.ADD_PASS ? EXTRA : Money.ZERO;
      Money net = then.net().orElseThrow().minus(NOW.net().orElseThrow()).minus(extra);
      int mended = brokenNow.size() - broken(then).size();
      boolean pays = net.cents() >= 100;
      boolean loses = then.loss().compareTo(NOW.loss()) >= 0;
      boolean drops = !NOW.weeds().stream().allMatch(x -> holds(x, then));
      assertThat(w.mended()).isEqualTo(mended);
      assertThat(w.net()).contains(net);
      assertThat(w.gain()).isEqualTo(net);
      assertThat(w.cost())
          .contains(then.cost().orElseThrow().minus(NOW.cost().orElseThrow()).plus(extra));
      assertThat(w.priceOfRules()).isEqualTo(Money.ofDollars(10.0 * Math.max(0, -mended)));
      assertThat(w.helps()).as(w.change().key()).isEqualTo(mended > 0 || pays && !loses && !drops);
      mending += mended > 0 ? 1 : 0;
      paying += mended <= 0 && w.helps() ? 1 : 0;
      saving += pays && loses && mended <= 0 ? 1 : 0;
    }
    assertThat(mending).as("mend a house rule").isPositive();
    assertThat(paying).as("pay by what they give back").isPositive();
    assertThat(saving).as("only save").isPositive();
  }

  /** No pass before the day may change, and one that moves does not move before it. */
  @Test
  void whatChangesIsNotPast() {
    assertThat(all).extracting(w -> w.change().kind()).contains(SingleChange.Kind.MOVE_PASS);
    for (WalkedChange w : all) {
      assertThat(w.change().pass()).isAfterOrEqualTo(FROM);
      w.change().movedTo().ifPresent(d -> assertThat(d).isAfterOrEqualTo(FROM));
    }
    assertThat(all)
        .extracting(w -> w.change().kind())
        .doesNotContain(SingleChange.Kind.LOWER_RATE, SingleChange.Kind.LEAVE_OUT_PASS);
  }

  /** Changes of one place are alternatives: one product goes, or one pass comes. */
  @Test
  void changesOfOneProductAreOfOnePlace() {
    for (WalkedChange a : all) {
      for (WalkedChange b : all) {
        SingleChange x = a.change();
        SingleChange y = b.change();
        if (x.out().isPresent() && y.out().isPresent()) {
          boolean same =
              x.pass().equals(y.pass()) && x.out().get().product().equals(y.out().get().product());
          assertThat(a.place().equals(b.place())).isEqualTo(same);
        } else if (x.out().isPresent() != y.out().isPresent()) {
          assertThat(a.place()).isNotEqualTo(b.place());
        }
      }
    }
    assertThat(all)
        .filteredOn(w -> w.change().kind() == SingleChange.Kind.ADD_PASS)
        .extracting(WalkedChange::place)
        .containsOnly(List.of("another pass"));
  }
}
