package org.swathbook.plan.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.DemoCopy;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.season.outcome.WeedOutcome;

/** Two layers, and a post, held against the first layer alone: more for more money. */
class AgainstFirstTest {
  private static final LocalDate TODAY = LocalDate.parse("2027-03-01");
  private static final WeedId PALMER = WeedId.of("AMAPA");

  private static Book book;
  private static TraceSet traces;
  private static Program full;
  private static ComparedProgram.Judged whole;
  private static ComparedProgram.Judged layer;

  @BeforeAll
  static void compare(@TempDir Path folder) {
    Path dir = folder.resolve("book");
    book = new DemoCopy(dir).load();
    traces = TraceBuilder.build(book, book.findField("ND-1").orElseThrow(), TODAY);
    full =
        ProgramReader.read(dir.resolve("programs/nd-1-two-layers.yaml"), new BookPaths(dir), book);
    whole = judged(full);
    layer = judged(new Program("One layer", full.field(), full.passes().subList(0, 1)));
  }

  private static ComparedProgram.Judged judged(Program program) {
    ComparedProgram.Named named = new ComparedProgram.Named("it", false, false, program, List.of());
    return ComparedProgram.of(book, traces, List.of(named), TODAY).get(0).judged();
  }

  private static Money net(ComparedProgram.Judged p) {
    return p.outcome().net().orElseThrow();
  }

  private static Money cost(ComparedProgram.Judged p) {
    return p.outcome().cost().orElseThrow();
  }

  private static Money worst(ComparedProgram.Judged p) {
    return p.worstYearNet().orElseThrow();
  }

  private static String instead(
      String what,
      ComparedProgram.Judged now,
      ComparedProgram.Judged first,
      Function<WeedOutcome, Double> of) {
    return what
        + " "
        + Numbers.fixed(of.apply(now.outcome().weed(PALMER)), 1)
        + " instead of "
        + Numbers.fixed(of.apply(first.outcome().weed(PALMER)), 1)
        + " %";
  }

  private static List<String> ofTheWeed(ComparedProgram.Judged now, ComparedProgram.Judged first) {
    return List.of(
        instead("Palmer amaranth control", now, first, WeedOutcome::controlPct),
        instead(
            "Palmer amaranth control in its worst year",
            now,
            first,
            WeedOutcome::worstYearControlPct),
        instead(
            "Palmer amaranth control without the site missed most",
            now,
            first,
            WeedOutcome::controlPctWithoutWeakest));
  }

  private static List<String> minus(List<String> all, Collection<String> some) {
    List<String> out = new ArrayList<>(all);
    out.removeAll(some);
    return out;
  }

  /** The facts that the words are held to. */
  @Test
  void theTwoDifferAsMeant() {
    WeedOutcome more = whole.outcome().weed(PALMER);
    WeedOutcome less = layer.outcome().weed(PALMER);
    assertThat(more.controlPct()).isGreaterThan(less.controlPct() + 1);
    assertThat(more.worstYearControlPct()).isGreaterThan(less.worstYearControlPct() + 1);
    assertThat(more.controlPctWithoutWeakest()).isGreaterThan(less.controlPctWithoutWeakest() + 1);
    assertThat(more.exposedPct()).isCloseTo(less.exposedPct(), within(0.4));
    assertThat(cost(whole)).isGreaterThan(cost(layer));
    assertThat(net(whole)).isGreaterThan(net(layer));
    assertThat(worst(whole)).isGreaterThan(worst(layer));
    assertThat(whole.judgement().brokenNames()).isNotEqualTo(layer.judgement().brokenNames());
    assertThat(whole.outcome().weeds())
        .filteredOn(w -> w.pressure().driver().isDriver())
        .extracting(w -> w.pressure().weed().id())
        .containsExactly(PALMER);
  }

  @Test
  void whatMoreMoneyBrings() {
    AgainstFirst against = AgainstFirst.of(layer, whole);
    List<String> gains = new ArrayList<>();
    gains.add("net return $" + net(whole).minus(net(layer)) + " higher");
    gains.add("net return of the worst year $" + worst(whole).minus(worst(layer)) + " higher");
    gains.addAll(ofTheWeed(whole, layer));
    List<String> kept = minus(layer.judgement().brokenNames(), whole.judgement().brokenNames());
    if (!kept.isEmpty()) {
      gains.add("keeps " + String.join(" and ", kept) + " of the house");
    }
    List<String> givesUp = new ArrayList<>();
    givesUp.add("costs $" + cost(whole).minus(cost(layer)) + " more");
    givesUp.add("1 pass more");
    List<String> broken = minus(whole.judgement().brokenNames(), layer.judgement().brokenNames());
    if (!broken.isEmpty()) {
      givesUp.add("breaks " + String.join(" and ", broken) + " of the house");
    }
    assertThat(against.gains()).isEqualTo(gains);
    assertThat(against.givesUp()).isEqualTo(givesUp);
    assertThat(kept.size() + broken.size()).isPositive();
  }

  @Test
  void whatLessMoneyGivesUp() {
    AgainstFirst against = AgainstFirst.of(whole, layer);
    assertThat(against.gains())
        .startsWith("costs $" + cost(whole).minus(cost(layer)) + " less", "1 pass fewer");
    assertThat(against.givesUp())
        .startsWith(
            "net return $" + net(whole).minus(net(layer)) + " lower",
            "net return of the worst year $" + worst(whole).minus(worst(layer)) + " lower")
        .containsAll(ofTheWeed(layer, whole));
    assertThat(against.isNothing()).isFalse();
  }

  /** Two passes more are passes, and what stands on one side alone is not nothing. */
  @Test
  void passesAreCounted() {
    ComparedProgram.Judged bare = judged(new Program("None", full.field(), List.of()));
    assertThat(AgainstFirst.of(bare, whole).givesUp()).contains("2 passes more");
    assertThat(AgainstFirst.of(whole, bare).gains()).contains("2 passes fewer");
    assertThat(new AgainstFirst(List.of("1 pass more"), List.of()).isNothing()).isFalse();
    assertThat(new AgainstFirst(List.of(), List.of("1 pass fewer")).isNothing()).isFalse();
  }

  /** The first layer over the crop that stands: labels forbid it, and weeds come up before it. */
  @Test
  void whatALabelForbidsIsSaid() {
    Pass late = new Pass(new Anchor.FromPlanting(40), full.passes().get(0).mix());
    ComparedProgram.Judged blocked = judged(new Program("Too late", full.field(), List.of(late)));
    assertThat(blocked.judgement().verdict()).isEqualTo(Verdict.BLOCKED);
    assertThat(layer.judgement().verdict()).isNotEqualTo(Verdict.BLOCKED);
    AgainstFirst worse = AgainstFirst.of(layer, blocked);
    AgainstFirst better = AgainstFirst.of(blocked, layer);
    assertThat(worse.givesUp())
        .contains("blocked by crop-not-listed", exposed(blocked, layer), windows(blocked, layer));
    assertThat(worse.gains())
        .noneMatch(s -> s.contains("blocked") || s.contains("exposed") || s.contains("windows"));
    assertThat(better.gains())
        .contains(
            "not blocked by crop-not-listed", exposed(layer, blocked), windows(layer, blocked));
    assertThat(better.givesUp())
        .containsExactly("costs $" + cost(layer).minus(cost(blocked)) + " more");
  }

  private static String exposed(ComparedProgram.Judged now, ComparedProgram.Judged first) {
    return instead("Palmer amaranth emergence exposed", now, first, WeedOutcome::exposedPct);
  }

  private static String windows(ComparedProgram.Judged now, ComparedProgram.Judged first) {
    return "years with every pass in its windows "
        + Numbers.fixed(now.outcome().windowConfidencePct(), 1)
        + " instead of "
        + Numbers.fixed(first.outcome().windowConfidencePct(), 1)
        + " %";
  }
}
