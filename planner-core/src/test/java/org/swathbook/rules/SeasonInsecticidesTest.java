package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.InsecticideClass;
import org.swathbook.book.SprayRecord;
import org.swathbook.testing.MixCase;

/**
 * Insecticides of the journal: terbufos at planting and what comes over the corn later (Diehl &
 * Stoller 1995, nicosulfuron; Jewett et al. 2008, mesotrione; topramezone's caution from memory).
 */
class SeasonInsecticidesTest {

  private static MixCase corn(int season, int day, String... insecticides) {
    return MixCase.in("corn", "glyphosate")
        .day(24, "V4", 9)
        .applied(
            day,
            "S-metolachlor 1.0 ai",
            "corn",
            season,
            SprayRecord.EMPTY.with(List.of(insecticides)));
  }

  private static List<Severity> of(MixCase job, String rule) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals(rule))
        .map(Finding::severity)
        .toList();
  }

  private static List<Severity> partner(MixCase job) {
    return of(job, "insecticide-partner");
  }

  @Test
  void namesOfOrganophosphatesStandForTheirClass() {
    assertThat(InsecticideClass.of("Terbufos ")).isEqualTo("organophosphate");
    assertThat(InsecticideClass.of("organophosphates")).isEqualTo("organophosphate");
    assertThat(InsecticideClass.of("pyrethroid")).isEqualTo("pyrethroid");
    assertThat(InsecticideClass.of("none")).isEqualTo("none");
  }

  @Test
  void anOrganophosphateOfTheSeasonsJournalBlocksWhatRefusesIt() {
    MixCase job = corn(2027, 0, "terbufos").tank("nicosulfuron 0.031 ai");

    assertThat(job.findings())
        .filteredOn(f -> f.rule().value().equals("insecticide-partner"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.BLOCK);
              assertThat(f.message()).contains("recorded on 8 May 2027");
            });
  }

  @Test
  void oneOfLastSeasonOrOfALaterDayIsNoMatterAndWhatIsMissingIsANote() {
    assertThat(partner(corn(2026, -300, "terbufos").tank("nicosulfuron 0.031 ai")))
        .containsExactly(Severity.NOTE);
    assertThat(partner(corn(2027, 25, "terbufos").tank("nicosulfuron 0.031 ai")))
        .containsExactly(Severity.NOTE);
    assertThat(partner(corn(2027, 0).tank("nicosulfuron 0.031 ai"))).containsExactly(Severity.NOTE);
  }

  /** Sprayed on 1 June, day 24; the wait of 7 days after one on leaves is from memory. */
  private static MixCase onLeaves(int day, String stage) {
    return MixCase.in("corn", "glyphosate")
        .day(24, "V4", 9)
        .sprayedOn(day, stage, "S-metolachlor 1.0 ai", List.of("dimethoate"));
  }

  @Test
  void oneOnLeavesHoldsForItsDaysAndOneInTheSoilAllSeason() {
    String tank = "mesotrione 0.094 ai";

    assertThat(onLeaves(18, "V2").tank(tank).findings())
        .filteredOn(f -> f.rule().value().equals("insecticide-partner"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.BLOCK);
              assertThat(f.message())
                  .contains("recorded on 26 May 2027 over the crop", "waits 7 days");
              assertThat(f.remedy()).startsWith("a pass on or after 2 Jun 2027");
            });
    assertThat(partner(onLeaves(17, "V2").tank(tank))).isEmpty();
    assertThat(partner(onLeaves(16, "V2").tank(tank))).isEmpty();
    assertThat(partner(onLeaves(0, "pre").tank(tank))).containsExactly(Severity.BLOCK);
    assertThat(partner(onLeaves(16, "").tank(tank))).containsExactly(Severity.BLOCK);
    assertThat(partner(onLeaves(10, "V2").tank("thifensulfuron-methyl 0.004 ai")))
        .containsExactly(Severity.BLOCK);
  }

  @Test
  void aWaitFromMemoryThatIsOnlyJustOverIsWarnedOf() {
    assertThat(close(onLeaves(17, "V2").tank("mesotrione 0.094 ai")))
        .containsExactly("7 days of 7 days");
    assertThat(close(onLeaves(16, "V2").tank("mesotrione 0.094 ai"))).isEmpty();
    assertThat(close(onLeaves(18, "V2").tank("mesotrione 0.094 ai"))).isEmpty();
  }

  private static List<String> close(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("value-from-memory"))
        .filter(f -> f.message().contains("insecticides on leaves"))
        .map(f -> f.actual() + " of " + f.limit())
        .toList();
  }

  @Test
  void aRecordOfNoneOrOfAnotherClassAsksNothingMore() {
    assertThat(partner(corn(2027, 0, "none").tank("nicosulfuron 0.031 ai"))).isEmpty();
    assertThat(partner(corn(2027, 0, "pyrethroid").tank("nicosulfuron 0.031 ai"))).isEmpty();
    assertThat(partner(corn(2027, 0).others("none").tank("nicosulfuron 0.031 ai"))).isEmpty();
  }

  @Test
  void site27OverTheCropBesideItIsAStackUnlessTheLabelForbidsIt() {
    String stack = "crop-injury-stack";

    assertThat(of(corn(2027, 0, "terbufos").tank("topramezone 0.016 ai"), stack))
        .containsExactly(Severity.WARN);
    assertThat(of(corn(2027, 0, "terbufos").tank("mesotrione 0.094 ai"), stack)).isEmpty();
    assertThat(of(corn(2027, 0, "pyrethroid").tank("topramezone 0.016 ai"), stack)).isEmpty();
    assertThat(of(corn(2027, 0).tank("topramezone 0.016 ai"), stack)).isEmpty();
  }
}
