package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.book.Field;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;

/** Laws of the judges, on tanks drawn from the starter catalog for the fields of the demo book. */
class JudgeProperties {

  private static Field field(int place) {
    return DemoFields.BOOK.fields().get(place % DemoFields.BOOK.fields().size());
  }

  private static PassTiming timing(Field field, int days) {
    return Timings.at(DemoFields.traces(field), field.plantDate().plusDays(days));
  }

  /** Actives that some rule of uses or sequences blocks. */
  private static Set<String> blocked(Field field, PassTiming timing, Mix mix) {
    Set<String> out = new TreeSet<>();
    for (Finding f : findings(field, timing, mix)) {
      if (f.severity() == Severity.BLOCK) {
        out.add(f.about().ingredient().orElseThrow().value());
      }
    }
    return out;
  }

  private static List<Finding> findings(Field field, PassTiming timing, Mix mix) {
    return DemoFields.findings(field, timing, mix).sorted();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void anotherProductNeverClearsWhatIsBlocked(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -40, max = 90) int days,
      @ForAll long seed) {
    Random random = new Random(seed);
    Field field = field(place);
    PassTiming timing = timing(field, days);
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      doses.add(DemoFields.dose(random));
    }
    Set<String> before = blocked(field, timing, Mix.of(doses));
    doses.add(random.nextInt(doses.size() + 1), DemoFields.dose(random));

    assertThat(blocked(field, timing, Mix.of(doses))).containsAll(before);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theWordlessAnswerIsThatOfTheFindings(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -40, max = 90) int days,
      @ForAll long seed) {
    Field field = field(place);
    PassTiming timing = timing(field, days);
    Mix mix = Mix.of(List.of(DemoFields.dose(new Random(seed))));
    TraceSet traces = DemoFields.traces(field);

    for (UseFacts facts : UseJudge.facts(DemoFields.BOOK, traces, 0, timing, mix)) {
      assertThat(UseJudge.blocks(facts)).isEqualTo(UseJudge.judge(facts).isBlocked());
    }
  }

  /** One judge asked about many programs of a field says what a new one says of each. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void theWordlessAnswerOnPassesInOrderIsThatOfTheFindings(
      @ForAll @IntRange(min = 0, max = 11) int place, @ForAll long seed) {
    Random random = new Random(seed);
    Field field = field(place);
    SequenceJudge judge = SequenceJudge.of(DemoFields.BOOK, field);
    for (int program = 0; program < 3; program++) {
      List<DatedMix> passes = new ArrayList<>();
      Dose twice = DemoFields.dose(random);
      int days = -20;
      for (int p = 0; p < 3; p++) {
        days += random.nextInt(30);
        Dose dose = random.nextBoolean() ? twice : DemoFields.dose(random);
        passes.add(dated(field, p, timing(field, days), Mix.of(List.of(dose))));
      }

      boolean blocked = SequenceJudge.judge(DemoFields.BOOK, field, passes).isBlocked();
      assertThat(judge.blocks(passes)).isEqualTo(blocked);
    }
  }

  private static DatedMix dated(Field field, int pass, PassTiming timing, Mix mix) {
    return new DatedMix(
        pass,
        timing.medianDate(),
        timing.planned(),
        PassPositions.of(DemoFields.traces(field), timing),
        mix);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyWordIsWhole(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -40, max = 120) int days,
      @ForAll long seed) {
    Random random = new Random(seed);
    Field field = field(place);
    Mix mix = Mix.of(List.of(DemoFields.dose(random), DemoFields.dose(random)));

    Findings out = DemoFields.findings(field, timing(field, days), mix);

    for (Finding f : out.sorted()) {
      assertThat(f.message())
          .endsWith(".")
          .matches("(?s)[A-Z0-9].*")
          .doesNotContain("null", "{", "}", "Optional", "NaN", "  ", "..", "@");
      assertThat(f.source()).isNotBlank();
      assertThat(f.limit() + f.actual() + f.remedy()).doesNotContain("null", "Optional", "NaN");
    }
    for (Ask a : out.sortedAsks()) {
      assertThat(a.what() + a.where()).doesNotContain("null", "Optional", "{", "  ");
      assertThat(a.where()).isNotBlank();
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void findingsComeInTheirOrderEachOnceAndTheSameEveryTime(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -40, max = 90) int days,
      @ForAll long seed) {
    Field field = field(place);
    PassTiming timing = timing(field, days);
    Mix mix =
        Mix.of(List.of(DemoFields.dose(new Random(seed)), DemoFields.dose(new Random(~seed))));

    List<Finding> once = findings(field, timing, mix);

    assertThat(once).isSortedAccordingTo(Findings.ORDER).doesNotHaveDuplicates();
    assertThat(findings(field, timing, mix)).isEqualTo(once);
  }
}
