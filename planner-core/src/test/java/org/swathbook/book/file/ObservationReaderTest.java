package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.program.Observation;
import org.swathbook.program.SeenWeed;
import org.swathbook.program.SurvivorPattern;
import org.swathbook.source.ProblemsException;
import org.swathbook.testing.DemoBook;

/** Observations over the demo book. */
class ObservationReaderTest {
  private static final Path FOLDER = Path.of("../demo-data");
  private static final Book BOOK = DemoBook.BOOK;
  private static final BookPaths PATHS = new BookPaths(FOLDER);

  private static Observation read(String text) {
    return ObservationReader.read("seen.yaml", text.getBytes(StandardCharsets.UTF_8), PATHS, BOOK);
  }

  private static void refused(String text, String... messages) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            ProblemsException.class,
            e ->
                assertThat(e.problems().stream().map(Object::toString).toList().toString())
                    .contains(messages));
  }

  @Test
  void theDemoObservation() {
    Observation o =
        ObservationReader.read(PATHS.find(BookPaths.Kind.OBSERVATION, "nd-1-june"), PATHS, BOOK);
    assertThat(o.days()).isEqualTo(14);
    assertThat(o.seen()).isEqualTo(LocalDate.of(2027, 6, 22));
    assertThat(o.inJournal()).isFalse();
    assertThat(o.mix().actives()).hasSize(3);
    SeenWeed w = o.weeds().get(0);
    assertThat(w.plants().all()).isEqualTo(28);
    // 100 ft² of 0.3048² m² each: the international foot, NIST Special Publication 811.
    assertThat(w.plants().areaM2()).isEqualTo(9.290304);
    assertThat(w.pattern()).contains(SurvivorPattern.SCATTERED);
    assertThat(w.sameSpeciesDeadBeside()).contains(true);
  }

  @Test
  void aPassThatTheJournalHas() {
    Observation o =
        read(
            """
            format: swathbook.observation/1
            field: ND-1
            pass: {date: 2027-06-08, mix: nd-1-june}
            seen: 2027-06-22
            weeds: {Palmer amaranth: {plants: {area: 1 m2, stalled: 2}}}
            """);
    assertThat(o.weeds().get(0).weed().value()).isEqualTo("AMAPA");
    assertThat(o.weeds().get(0).newGrowthCm()).isEmpty();
    assertThat(o.conditions().soil()).isEmpty();
  }

  @Test
  void whatIsWrongIsSaidInPlainWords() {
    refused(
        """
        format: swathbook.observation/1
        field: ND-1
        pass: {date: 2027-06-08}
        seen: 2027-06-01
        weeds:
          AMBTR: {plants: {area: 10 ft2, dead: 1}}
          AMAPA: {plants: {area: 10 ft2}, pattern: striped}
          SETFA: {plants: {area: 0 ft2, dead: -1}}
        """,
        "the journal has no pass on ND-1 on 2027-06-08",
        "before the pass of 2027-06-08",
        "AMBTR has no row in weeds.csv for ND-1",
        "no plant was counted",
        "striped",
        "no ground to count on",
        "write a whole number from 0");
  }

  @Test
  void withoutPlantsThereIsNothingToJudge() {
    refused(
        """
        format: swathbook.observation/1
        field: ND-1
        pass: {date: 2027-06-08, mix: nd-1-june}
        seen: 2027-06-22
        weeds: {AMAPA: {newGrowth: 1 in}}
        """,
        "plants");
  }
}
