package org.swathbook.plan.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/** What the demo's program of two passes lacks, wish by wish. */
class WantingTest {
  private static Book book;
  private static Program program;

  @BeforeAll
  static void read(@TempDir Path folder) {
    Path dir = folder.resolve("book");
    book = new DemoCopy(dir).load();
    program =
        ProgramReader.read(dir.resolve("programs/nd-1-two-layers.yaml"), new BookPaths(dir), book);
  }

  private static PlanWishes asking(Optional<Money> budget, OptionalInt passes) {
    return new PlanWishes(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), budget, passes);
  }

  private static List<String> lacks(PlanWishes wishes, Program of) {
    return new Wanting(book, wishes).of(of);
  }

  @Test
  void whatIsAskedForAndThereIsNotWanting() {
    assertThat(lacks(PlanWishes.NONE, program)).isEmpty();
    assertThat(lacks(PlanWishes.NONE.including(IngredientId.of("metribuzin")), program)).isEmpty();
    assertThat(lacks(PlanWishes.NONE.including(IngredientId.of("dicamba")), program))
        .containsExactly("No pass brings dicamba.");
  }

  /** What was sprayed is past asking. */
  @Test
  void whatIsToBeLeftOutIsWantingInThePassesToCome() {
    PlanWishes less = PlanWishes.NONE.withoutAll(List.of(ProductId.of("glufosinate-2.34sl")));
    assertThat(lacks(less, program))
        .containsExactly("glufosinate-2.34sl is in a pass and is to be left out.");
    Pass post = program.passes().get(1);
    Pass made = new Pass(new Anchor.Made(LocalDate.of(2027, 6, 6)), post.mix());
    assertThat(lacks(less, program.with(List.of(program.passes().get(0), made)))).isEmpty();
    assertThat(
            lacks(
                PlanWishes.NONE.including(IngredientId.of("glufosinate-ammonium")),
                program.with(List.of(made))))
        .isEmpty();
  }

  /** One sentence for each pass too many, so that one less is nearer. */
  @Test
  void everyPassTooManyIsWanting() {
    Pass post = program.passes().get(1);
    Program three = program.with(List.of(program.passes().get(0), post, post));
    PlanWishes one = asking(Optional.empty(), OptionalInt.of(1));
    assertThat(lacks(one, program)).containsExactly("It has 2 passes and may have 1.");
    assertThat(lacks(one, three)).hasSize(2).containsOnly("It has 3 passes and may have 1.");
    assertThat(lacks(asking(Optional.empty(), OptionalInt.of(2)), program)).isEmpty();
    Program five = program.with(List.of(program.passes().get(0), post, post, post, post));
    assertThat(lacks(asking(Optional.empty(), OptionalInt.of(9)), five))
        .as("never more than the house allows")
        .containsExactly("It has 5 passes and may have 4.");
  }

  @Test
  void aCentAboveTheBudgetIsWanting() {
    Money cost = Money.ZERO;
    for (Pass p : program.passes()) {
      cost = cost.plus(book.passCost()).plus(book.prices().perAcre(p.mix()).orElseThrow());
    }
    Money less = cost.minus(new Money(1));
    assertThat(cost).isGreaterThan(book.passCost().plus(book.passCost()));
    assertThat(lacks(asking(Optional.of(cost), OptionalInt.empty()), program)).isEmpty();
    assertThat(lacks(asking(Optional.of(less), OptionalInt.empty()), program))
        .containsExactly(
            "It costs $" + cost + " an acre when every pass is made, and may cost $" + less + ".");
  }
}
