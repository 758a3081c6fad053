package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** Why each part of the demo's program of two passes is there. */
class WithoutPartTest {
  private static Book book;
  private static TraceSet traces;
  private static Program program;
  private static SeasonOutcome whole;
  private static List<WithoutPart> parts;

  @BeforeAll
  static void walk(@TempDir Path folder) {
    Path dir = folder.resolve("book");
    book = new DemoCopy(dir).load();
    traces =
        TraceBuilder.build(
            book, book.findField("ND-1").orElseThrow(), LocalDate.parse("2027-03-01"));
    program =
        ProgramReader.read(dir.resolve("programs/nd-1-two-layers.yaml"), new BookPaths(dir), book);
    Kernel kernel = Kernel.of(book, traces);
    whole = SeasonWalk.walk(book, kernel, program);
    parts = WithoutPart.of(book, kernel, whole);
  }

  /** A pass, then each of its products. */
  @Test
  void everyPassAndEveryProductOfSeveralIsTakenOut() {
    List<Optional<Dose>> asked = new ArrayList<>();
    List<Integer> passes = new ArrayList<>();
    for (int p = 0; p < program.passes().size(); p++) {
      asked.add(Optional.empty());
      program.passes().get(p).mix().doses().forEach(d -> asked.add(Optional.of(d)));
      while (passes.size() < asked.size()) {
        passes.add(p);
      }
    }
    assertThat(parts).extracting(WithoutPart::dose).isEqualTo(asked);
    assertThat(parts).extracting(WithoutPart::pass).isEqualTo(passes);
    assertThat(parts).hasSize(8);
  }

  @Test
  void aPassOfOneProductIsTakenOutOnce() {
    Pass alone = program.passes().get(1);
    for (Dose d : alone.mix().doses().subList(1, alone.mix().doses().size())) {
      alone = new Pass(alone.at(), alone.mix().minus(d));
    }
    Kernel kernel = Kernel.of(book, traces);
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, program.with(List.of(alone)));
    assertThat(WithoutPart.of(book, kernel, outcome))
        .singleElement()
        .satisfies(w -> assertThat(w.dose()).isEmpty());
  }

  private static Program without(WithoutPart part) {
    List<Pass> passes = new ArrayList<>(program.passes());
    Pass pass = passes.get(part.pass());
    if (part.dose().isEmpty()) {
      passes.remove(part.pass());
    } else {
      passes.set(part.pass(), new Pass(pass.at(), pass.mix().minus(part.dose().get())));
    }
    return program.with(passes);
  }

  private static List<String> broken(SeasonOutcome outcome) {
    return HouseRuleCheck.broken(book, new TankOffers(book, traces), outcome).stream()
        .map(b -> b.name() + b.weed())
        .distinct()
        .toList();
  }

  /** Each figure is that of the season walked without the part. */
  @Test
  void whatAPartBringsIsWhatTheSeasonLacksWithoutIt() {
    int hit = 0;
    int breaking = 0;
    for (WithoutPart part : parts) {
      SeasonOutcome less = SeasonWalk.walk(book, traces, without(part));
      assertThat(part.net()).contains(less.net().orElseThrow().minus(whole.net().orElseThrow()));
      double most = 0;
      for (WeedOutcome w : whole.weeds()) {
        most = Math.max(most, w.controlPct() - less.weed(w.pressure().weed().id()).controlPct());
      }
      if (part.worstHit().isPresent()) {
        hit++;
        assertThat(part.controlPct()).isEqualTo(whole.weed(part.worstHit().get()).controlPct());
        assertThat(part.controlPctWithout())
            .isEqualTo(less.weed(part.worstHit().get()).controlPct());
        assertThat(part.controlPct() - part.controlPctWithout()).isEqualTo(most);
        assertThat(most).isGreaterThan(0.05);
      } else {
        assertThat(most).isLessThanOrEqualTo(0.05);
        assertThat(part.controlPct()).isNaN();
        assertThat(part.controlPctWithout()).isNaN();
      }
      List<String> now = new ArrayList<>(broken(less));
      now.removeAll(broken(whole));
      assertThat(part.breaks())
          .isEqualTo(
              HouseRuleCheck.broken(book, new TankOffers(book, traces), less).stream()
                  .filter(b -> now.contains(b.name() + b.weed()))
                  .map(BrokenHouseRule::name)
                  .distinct()
                  .toList());
      breaking += part.breaks().isEmpty() ? 0 : 1;
    }
    assertThat(hit).isPositive();
    assertThat(breaking).isPositive();
  }
}
