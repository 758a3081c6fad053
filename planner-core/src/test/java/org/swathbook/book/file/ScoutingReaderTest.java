package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.Book;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.growth.ScoutedField;

class ScoutingReaderTest {
  private static final String HEAD =
      "date,field,zone,weed,height,count,area,cropStage,irrigation,note\n";

  @TempDir Path dir;

  private Book book(String rows) {
    return new BookOnDisk(dir).with("scouting.csv", HEAD + rows).load();
  }

  private Scouting only(String row) {
    return book(row).scoutings().get(0);
  }

  @Test
  void readsARow() {
    Scouting s = only("2027-06-01,a-1,north,Palmer amaranth,2-5 in,23,10 ft2,v3,0.8 in,patchy\n");
    assertThat(s.date()).isEqualTo(LocalDate.of(2027, 6, 1));
    assertThat(s.field().value()).isEqualTo("A-1");
    assertThat(s.zone()).isEqualTo("north");
    assertThat(s.weed().orElseThrow().value()).isEqualTo("AMAPA");
    assertThat(s.height()).contains(new ScoutedHeight(2 * 2.54, 3.5 * 2.54, 5 * 2.54));
    assertThat(s.count().orElseThrow().perM2()).isCloseTo(23 / (10 * 0.09290304), within(1e-9));
    assertThat(s.cropStage()).contains("V3");
    assertThat(s.irrigationMm()).isCloseTo(20.32, within(1e-9));
  }

  @Test
  void readsHeightsCountsAndWaterInOtherUnits() {
    assertThat(only("2027-06-01,A-1,,AMAPA,10 cm,,,,,\n").height())
        .contains(new ScoutedHeight(10, 10, 10));
    assertThat(only("2027-06-01,A-1,,AMAPA,,3 /m2,,,,\n").count().orElseThrow().perM2())
        .isEqualTo(3);
    assertThat(only("2027-06-01,A-1,,AMAPA,,0,1 acre,,,\n").count().orElseThrow().perM2()).isZero();
    assertThat(only("2027-06-01,A-1,,,,,,,20 mm,\n").irrigationMm()).isEqualTo(20);
    assertThat(only("2027-06-01,A-1,,,,,,R1,,\n").weed()).isEmpty();
  }

  /** 23 on 10 ft² and 7 on 30 ft² are 30 on 40 ft²; of 2-5 in and 4 in the taller of each. */
  @Test
  void zonesArePutTogether() {
    Book book =
        book(
            """
            2027-06-01,A-1,north,AMAPA,2-5 in,23,10 ft2,V2,,
            2027-06-01,A-1,south,AMAPA,4 in,7,30 ft2,V3,,
            """);
    ScoutedField seen = ScoutedField.of(book, book.fields().get(0), LocalDate.of(2027, 6, 1));
    ScoutedField.WeedSeen palmer = seen.weeds().get(0);
    assertThat(seen.weeds()).hasSize(1);
    assertThat(palmer.perM2().orElseThrow()).isCloseTo(30 / (40 * 0.09290304), within(1e-9));
    ScoutedHeight h = palmer.height().orElseThrow();
    assertThat(h.lowCm()).isCloseTo(2 * 2.54, within(1e-9));
    assertThat(h.medianCm()).isCloseTo(4 * 2.54, within(1e-9));
    assertThat(h.highCm()).isCloseTo(5 * 2.54, within(1e-9));
    assertThat(seen.stages()).containsEntry(LocalDate.of(2027, 6, 1), "V3");
    assertThat(ScoutedField.of(book, book.fields().get(0), LocalDate.of(2027, 5, 31)).isEmpty())
        .isTrue();
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        Arguments.of(
            "2027-11-02,A-1,,AMAPA,4 in,,,,,",
            "2:1: '2027-11-02' is not in the season 2027; write a date from 2026-09-01 to"
                + " 2027-10-31"),
        Arguments.of(
            "2027-06-01,A-9,,AMAPA,4 in,,,,,",
            "2:12: 'A-9' is no field of fields.csv; did you mean 'A-1'?"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,4,,,,,",
            "2:23: '4' is no height; write for example '4 in', or '2-5 in' for a range"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,5-2 in,,,,,",
            "2:23: the range '5-2 in' runs downwards; write the lower value first"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,0 in,,,,,",
            "2:23: '0 in' is not above zero; write a height, or a count of 0 where no plant"
                + " stands"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,,23,,,,",
            "2:24: '23' counts plants on no area; name it in area, as 10 ft2, or write a density,"
                + " as '3 /m2'"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,,3 /m2,10 ft2,,,",
            "2:24: '3 /m2' is a density already; leave the area blank, or write the plants alone"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,,-3,10 ft2,,,",
            "2:24: '-3' is below zero; write 0 where no plant stands"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,,3,10 ft,,,",
            "2:26: '10 ft' has the wrong kind of unit; write for example '10 ft2'"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,4 in,,10 ft2,,,",
            "2:29: an area without a count; write in count how many plants stood on it"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,4 in,0,10 ft2,,,",
            "2:23: a height of plants of which 0 stand; leave the height or the count blank"),
        Arguments.of(
            "2027-06-01,A-1,,,4 in,,,,,",
            "2:17: a height or a count of no weed; name the weed by EPPO code, as AMAPA"),
        Arguments.of(
            "2027-06-01,A-1,,AMAPA,,,,,,",
            "2:17: neither height nor count of 'AMAPA'; write one of them, or a count of 0 on an"
                + " area where none stands"),
        Arguments.of(
            "2027-06-01,A-1,,,,,,,,seen nothing",
            "2:1: the row says nothing; write a weed and its height, a cropStage or irrigation"),
        Arguments.of(
            "2027-06-01,A-1,,SETFA,4 in,,,,,",
            "2:17: SETFA has no row in weeds.csv for A-1; write its row there first, with the"
                + " density you expect"),
        Arguments.of(
            "2027-05-01,A-1,,,,,,V1,,",
            "2:21: a stage of soybean before it is planted on 2027-05-11; mend the date here or"
                + " plantDate in fields.csv, or leave the stage blank"),
        Arguments.of(
            "2027-06-01,A-1,,,,,,,0 in,",
            "2:22: '0 in' is no water; write for example '0.8 in', or leave the cell blank"),
        Arguments.of(
            "2027-06-01,A-1,,,,,,V4,,\n2027-06-08,A-1,,,,,,V3,,",
            "3:21: 'V3' comes before V4, seen on 2027-06-01 already; mend the one that is wrong; a"
                + " crop does not go back"),
        Arguments.of(
            "2027-06-01,A-1,,,,,,,1 in,\n2027-06-01,A-1,,,,,,,1 in,",
            "3:22: line 2 has the irrigation of A-1 on that day already; write the water of a day"
                + " once, all of it"),
        Arguments.of(
            "2027-06-01,A-1,north,AMAPA,4 in,,,,,\n2027-06-01,A-1,North,AMAPA,5 in,,,,,",
            "3:16: line 2 tells of AMAPA in 'North' already; name another zone, or put both rows"
                + " together"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void saysWhatIsWrongAndWhatWouldBeRight(String rows, String problem) {
    assertThat(new BookOnDisk(dir).with("scouting.csv", HEAD + rows + "\n").problems())
        .containsExactly("scouting.csv:" + problem);
  }

  @Test
  void anUnknownStageNamesTheNearest() {
    List<String> problems =
        new BookOnDisk(dir).with("scouting.csv", HEAD + "2027-06-01,A-1,,,,,,V33,,\n").problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0))
        .startsWith("scouting.csv:2:21: 'V33' is no stage of soybean; did you mean 'V3'");
  }

  /** A mistake in weeds.csv does not make the weeds of the scouting look unknown. */
  @Test
  void aTableOfWeedsWithProblemsIsNotHeldAgainstARow() {
    assertThat(
            new BookOnDisk(dir)
                .with("weeds.csv", "field,weed,density,driver\nA-1,AMAPA,80,yes\n")
                .with("scouting.csv", HEAD + "2027-06-01,A-1,,SETFA,4 in,,,,,\n")
                .problems())
        .hasSize(1)
        .allMatch(p -> p.startsWith("weeds.csv"));
  }
}
